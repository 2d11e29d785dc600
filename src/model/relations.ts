/** Who stands beside whom: cycles before and after, items of one kind. */
import type { Box, Cycle, Item } from './box.ts';
import { kindGroupOf } from './kinds.ts';

const neighbour = (box: Box, cycle: Cycle, step: 1 | -1): Cycle | undefined => {
  const at = box.cycles.findIndex((other) => other.id === cycle.id);
  return at < 0 ? undefined : box.cycles[at + step];
};

export const previousCycle = (box: Box, cycle: Cycle): Cycle | undefined => neighbour(box, cycle, -1);
export const nextCycle = (box: Box, cycle: Cycle): Cycle | undefined => neighbour(box, cycle, 1);

/** The cycle an item came in, an open one of an open box. Throws when the box does not hold it. */
export const cycleOf = <C extends Cycle>({ cycles }: { readonly cycles: readonly C[] }, item: Item): C => {
  const cycle = cycles.find((other) => other.id === item.cycle);
  if (!cycle) throw new Error(`Expected a cycle ${item.cycle} in the box`);
  return cycle;
};

export const findItem = (box: Box, cycleId: string, slug: string): Item | undefined =>
  box.cycles.find((cycle) => cycle.id === cycleId)?.items.find((item) => item.slug === slug);

/** More than a line or two would be a list, and that is what the kind's own page is. */
const MOST_EARLIER = 3;

/** The latest items of the same kind from earlier cycles, newest first, at most three; the kind's page has them all. */
export const earlierOfKind = (box: Box, item: Item): readonly Item[] => {
  const earlier = (kindGroupOf(box, item.kind)?.items ?? []).filter((other) => other.cycle < item.cycle);
  const cycles = [...new Set(earlier.map((other) => other.cycle))].reverse();
  return cycles.flatMap((cycle) => earlier.filter((other) => other.cycle === cycle)).slice(0, MOST_EARLIER);
};
