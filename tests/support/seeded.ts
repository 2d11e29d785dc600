/** Chance that comes the same each time for one seed: Mulberry32, public domain, from memory. */
export interface Chance {
  /** From 0 to 1, 1 left out. */
  readonly share: () => number;
  /** A whole number from 0 to `below`, which is left out. */
  readonly below: (below: number) => number;
  /** One of several; throws for none. */
  readonly one: <T>(some: readonly T[]) => T;
}

export const seeded = (seed: number): Chance => {
  let state = seed >>> 0;
  const share = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const below = (most: number): number => Math.floor(share() * most);
  return {
    share,
    below,
    one: (some) => {
      if (some.length === 0) throw new Error('Expected something to choose from');
      return some[below(some.length)] as (typeof some)[number];
    },
  };
};
