/** Which things share a card. */

/** Words, in signs, that two things on one card may have to say at most; more could not be read. A choice of ours. */
const MOST_TOGETHER = 330;

/** Items of each card by their places, the lead item's first. */
type Groups = readonly (readonly number[])[];

/** Every way to part so many things in their order into groups of one or two, with so many of one. */
const ways = (from: number, end: number, singles: number): readonly Groups[] => {
  if (from === end) return singles === 0 ? [[]] : [];
  const one = singles > 0 ? ways(from + 1, end, singles - 1).map((rest) => [[from], ...rest]) : [];
  const two = from + 2 <= end ? ways(from + 2, end, singles).map((rest) => [[from, from + 1], ...rest]) : [];
  return [...one, ...two];
};

/**
 * Which of some items, by their places, stand on which card; the card of the whole box comes after these. The lead item is
 * alone. The others follow in their order, two to a card, but on two cards at least where there are two of them: that
 * gives three cards for three to five items, four for six and seven, five for eight. Where their number is odd, the one
 * that stands alone is the one whose cards would otherwise be fullest. `needs`: signs that each item has to say in any
 * case; two that have more to say than a card holds are parted.
 */
export const cardGroups = (needs: readonly number[]): Groups => {
  const count = needs.length;
  if (count === 0) return [];
  const others = count - 1;
  const cards = Math.max(Math.min(others, 2), Math.ceil(others / 2));
  const need = (group: readonly number[]): number =>
    group.reduce((sum, place) => sum + (needs[place] ?? 0), 0);
  const fullest = (groups: Groups): number => Math.max(0, ...groups.map(need));
  const [first, ...rest] = ways(1, count, 2 * cards - others);
  const best = rest.reduce((a, b) => (fullest(b) < fullest(a) ? b : a), first ?? []);
  const parted = best.flatMap((group) =>
    group.length === 2 && need(group) > MOST_TOGETHER ? group.map((place) => [place]) : [group],
  );
  return [[0], ...parted];
};
