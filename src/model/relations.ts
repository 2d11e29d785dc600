/** Who stands beside whom: cycles before and after, items of one kind. */
import type { Box, Cycle, Item } from './box.ts';

const neighbour = (box: Box, cycle: Cycle, step: 1 | -1): Cycle | undefined => {
  const at = box.cycles.findIndex((other) => other.id === cycle.id);
  return at < 0 ? undefined : box.cycles[at + step];
};

export const previousCycle = (box: Box, cycle: Cycle): Cycle | undefined => neighbour(box, cycle, -1);
export const nextCycle = (box: Box, cycle: Cycle): Cycle | undefined => neighbour(box, cycle, 1);

/** The cycle an item came in. Throws when the box does not hold it. */
export const cycleOf = (box: Box, item: Item): Cycle => {
  const cycle = box.cycles.find((other) => other.id === item.cycle);
  if (!cycle) throw new Error(`Expected a cycle ${item.cycle} in the box`);
  return cycle;
};

export const findItem = (box: Box, cycleId: string, slug: string): Item | undefined =>
  box.cycles.find((cycle) => cycle.id === cycleId)?.items.find((item) => item.slug === slug);

const sameKind = (a: Item, b: Item): boolean => a.kind.toLowerCase() === b.kind.toLowerCase();

/** Items of the same kind from earlier cycles, newest first. */
export const earlierOfKind = (box: Box, item: Item): readonly Item[] =>
  box.cycles
    .filter((cycle) => cycle.id < item.cycle)
    .reverse()
    .flatMap((cycle) => cycle.items.filter((other) => sameKind(other, item)));

/** Every item under its kind: kinds in the language's order of letters, items oldest first. */
export const kindGroups = (
  box: Box,
): readonly { readonly kind: string; readonly items: readonly Item[] }[] => {
  const groups = new Map<string, Item[]>();
  for (const item of box.cycles.flatMap((cycle) => cycle.items)) {
    const key = item.kind.toLowerCase();
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  const order = new Intl.Collator(box.settings.lang).compare;
  return [...groups].map(([kind, items]) => ({ kind, items })).sort((a, b) => order(a.kind, b.kind));
};
