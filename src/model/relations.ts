/** Who stands beside whom: cycles before and after, items of one kind. */
import { remembered } from '../text/remembered.ts';
import type { Box, Cycle, Item, Moment } from './box.ts';
import { type KindGroup, kindGroupOf } from './kinds.ts';

/** Each cycle’s position in the box, by its id. */
const positionsOf = remembered(
  ({ cycles }: Box): ReadonlyMap<string, number> => new Map(cycles.map(({ id }, position) => [id, position])),
);

const neighbour = (box: Box, { id }: Cycle, step: 1 | -1): Cycle | undefined => {
  const position = positionsOf(box).get(id);
  return position === undefined ? undefined : box.cycles[position + step];
};

/** The cycle sent before another; undefined for the first, and for one that the box does not hold. */
export const previousCycle = (box: Box, cycle: Cycle): Cycle | undefined => neighbour(box, cycle, -1);
/** The cycle sent after another; undefined for the newest, and for one that the box does not hold. */
export const nextCycle = (box: Box, cycle: Cycle): Cycle | undefined => neighbour(box, cycle, 1);

/** The box that follows another. */
export interface NextBox {
  readonly year: number;
  /** From 1; 13 is the January after. */
  readonly month: number;
  /** Where its record says it, and it is after the other's. */
  readonly reveal?: Moment;
}

/** The box that follows a cycle: the one that is recorded, else the month in which the next is due. */
export const boxAfter = (box: Box, cycle: Cycle): NextBox => {
  const next = nextCycle(box, cycle);
  if (!next) return { year: cycle.year, month: cycle.month + box.settings.everyMonths };
  const { year, month, reveal } = next;
  return {
    year,
    month,
    ...(reveal !== undefined && cycle.reveal !== undefined && reveal > cycle.reveal ? { reveal } : {}),
  };
};

/** The cycle of an id (`2026-03`); undefined where the box does not hold it. */
export const findCycle = (box: Box, id: string): Cycle | undefined => {
  const position = positionsOf(box).get(id);
  return position === undefined ? undefined : box.cycles[position];
};

/** The cycle an item came in. Throws when the box does not hold it. */
export const cycleOf = (box: Box, item: Item): Cycle => {
  const cycle = findCycle(box, item.cycle);
  if (!cycle) throw new Error(`Expected a cycle ${item.cycle} in the box`);
  return cycle;
};

/** The item of a cycle with a slug; undefined where the box does not hold it. */
export const findItem = (box: Box, cycleId: string, slug: string): Item | undefined =>
  findCycle(box, cycleId)?.items.find((item) => item.slug === slug);

/** More than a line or two would be a list, and that is what the kind's own page is. */
const MOST_EARLIER = 3;

/** For each cycle of a kind's items, the latest items of the cycles before it: one pass over the kind. */
const earlierByCycle = remembered(({ items }: KindGroup): ReadonlyMap<string, readonly Item[]> => {
  const earlier = new Map<string, readonly Item[]>();
  let latest: readonly Item[] = [];
  let at = 0;
  while (at < items.length) {
    const cycle = items[at]?.cycle ?? '';
    const from = at;
    while (items[at]?.cycle === cycle) at += 1;
    earlier.set(cycle, latest);
    latest = [...items.slice(from, at), ...latest].slice(0, MOST_EARLIER);
  }
  return earlier;
});

/**
 * The latest items of the same kind from earlier cycles, newest cycle first, at most three; the kind's page has them
 * all. None for an item whose cycle the box does not hold.
 */
export const earlierOfKind = (box: Box, item: Item): readonly Item[] => {
  const group = kindGroupOf(box, item.kind);
  return (group && earlierByCycle(group).get(item.cycle)) ?? [];
};
