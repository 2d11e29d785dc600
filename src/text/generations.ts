/** What a process that works again and again need not make ready anew. */

/** Values by key, made where they are lacking. A value lives for as long as each run asks for it. */
export interface Generations<T> {
  /** The value of a key; `make` makes it where neither this run nor the one before it asked for it. */
  readonly get: (key: string, make: () => T) => T;
  /** Begins a run, and lets go what the last one did not ask for. */
  readonly turn: () => void;
}

/** Without a value. */
export const generations = <T>(): Generations<T> => {
  let before = new Map<string, T>();
  let now = new Map<string, T>();
  return {
    get: (key, make) => {
      const known = now.get(key) ?? before.get(key);
      const value = known === undefined ? make() : known;
      now.set(key, value);
      return value;
    },
    turn: () => {
      before = now;
      now = new Map();
    },
  };
};
