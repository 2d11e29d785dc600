/** How evenly something is spread over the parts of a text. */

/** Occurrences in a part, and the part's size in words. */
export interface TextPart {
  readonly occurrences: number;
  readonly size: number;
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/**
 * Deviation of proportions, DP, of Gries (2008), "Dispersions and adjusted frequencies in corpora": half the sum
 * of the differences between each part's share of the text and its share of the occurrences. From 0 (spread as
 * the text is) to just under 1 (all in a part that is a sliver of the text). 0 where nothing occurs, because then
 * nothing is spread unevenly.
 */
export const deviationOfProportions = (parts: readonly TextPart[]): number => {
  const words = sumOf(parts.map(({ size }) => size));
  const occurrences = sumOf(parts.map((part) => part.occurrences));
  if (words === 0 || occurrences === 0) return 0;
  const differences = parts.map((part) => Math.abs(part.size / words - part.occurrences / occurrences));
  return Math.min(1, sumOf(differences) / 2);
};

/**
 * DPnorm of Lijffijt and Gries (2012), their correction to the former: DP divided by the most it could be, which is
 * 1 less the share of the smallest part; so that 1 is reached whatever the parts. 0 where there is but one part.
 */
export const normalDeviation = (parts: readonly TextPart[]): number => {
  const filled = parts.filter(({ size }) => size > 0);
  const words = sumOf(filled.map(({ size }) => size));
  if (filled.length < 2) return 0;
  const most = 1 - Math.min(...filled.map(({ size }) => size)) / words;
  return Math.min(1, deviationOfProportions(filled) / most);
};
