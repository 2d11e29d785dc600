/** Lines of most equal width, by dynamic programming over the places where they may end. */

/** A text in pieces that no line parts further; piece `i` ends at place `i`. */
export interface Breakable {
  readonly count: number;
  /** Ems of the line from one piece to another, both included, give or take what its ends change. */
  readonly widthOf: (first: number, last: number) => number;
  /** Whether that line with all its ink is no wider than that. */
  readonly isWithin: (first: number, last: number, width: number) => boolean;
  /** What ending a line with a piece is as bad as: 1 is a line that is a tenth of the width too short. */
  readonly costOf: (last: number) => number;
}

/** From this cost on a place parts what belongs together: a word, or a number and what it counts. */
export const PARTS_WORD = 4;

/** First and last piece of a line. */
export type LineSpan = readonly [first: number, last: number];

/** Fewest lines that hold the pieces, each within a width in ems; a piece wider than that has a line of its own. */
export const fewestLines = ({ count, isWithin }: Breakable, width: number): number => {
  let lines = 0;
  for (let first = 0; first < count; lines += 1) {
    let last = first;
    while (last + 1 < count && isWithin(first, last + 1, width)) last += 1;
    first = last + 1;
  }
  return lines;
};

/** Whether no piece is wider than that. */
export const allWithin = ({ count, isWithin }: Breakable, width: number): boolean => {
  for (let i = 0; i < count; i += 1) if (!isWithin(i, i, width)) return false;
  return true;
};

/**
 * As few lines as hold the pieces, of most equal width: the least sum of squares of what each differs from the mean,
 * and of what their ends cost.
 */
export const balancedLines = (pieces: Breakable, width: number): readonly LineSpan[] => {
  const { count, widthOf, isWithin, costOf } = pieces;
  if (count === 0) return [];
  const lines = fewestLines(pieces, width);
  const mean = widthOf(0, count - 1) / lines;
  const cost = (first: number, last: number): number => {
    if (last > first && !isWithin(first, last, width)) return Number.POSITIVE_INFINITY;
    return (((widthOf(first, last) - mean) / width) * 10) ** 2 + (last < count - 1 ? costOf(last) : 0);
  };
  // ways[n][i]: the cheapest n lines of the first i pieces, with where the last of them begins.
  let ways: readonly ({ readonly cost: number; readonly spans: readonly LineSpan[] } | undefined)[] = [
    { cost: 0, spans: [] },
  ];
  for (let n = 1; n <= lines; n += 1) {
    const more: ({ readonly cost: number; readonly spans: readonly LineSpan[] } | undefined)[] = [];
    for (let end = 1; end <= count; end += 1)
      for (let first = end - 1; first >= 0; first -= 1) {
        const own = cost(first, end - 1);
        const before = ways[first];
        // A line may be narrower than a part of it by a hair, but not by a fifth.
        if (own === Number.POSITIVE_INFINITY && widthOf(first, end - 1) > width * 1.2) break;
        if (!before || own === Number.POSITIVE_INFINITY) continue;
        const sum = before.cost + own;
        if (sum < (more[end]?.cost ?? Number.POSITIVE_INFINITY))
          more[end] = { cost: sum, spans: [...before.spans, [first, end - 1]] };
      }
    ways = more;
  }
  const best = ways[count];
  if (!best) throw new Error(`Expected ${lines} lines to hold ${count} pieces`);
  return best.spans;
};
