/** Whether one group of parcels arrives as fast as the others. */
import { dayTotal, type Histogram, sizeOf } from './histogram.ts';

/** Whether two groups arrive alike. */
interface LogRank {
  /** Parcels of the group that arrived. */
  readonly observed: number;
  /** Those that would have arrived, had the group been as fast as all together. */
  readonly expected: number;
  /** (observed − expected) / standard deviation: below 0 is slower. Its square is the usual χ² on one degree. */
  readonly z: number;
}

/**
 * The log-rank test of Mantel (1966) of a group against the rest, with the hypergeometric variance: as `survdiff`
 * of R's survival. z is 0 where nothing can be told.
 */
export const logRank = (group: Histogram, rest: Histogram): LogRank => {
  const days = [...new Set([...group, ...rest].map(({ day }) => day))].sort((a, b) => a - b);
  const [mine, theirs] = [group, rest].map((one) => new Map(one.map((entry) => [entry.day, entry])));
  let [n1, n2] = [sizeOf(group), sizeOf(rest)];
  let [observed, expected, variance] = [0, 0, 0];
  for (const day of days) {
    const [a, b] = [mine?.get(day), theirs?.get(day)];
    const [n, d] = [n1 + n2, (a?.delivered ?? 0) + (b?.delivered ?? 0)];
    observed += a?.delivered ?? 0;
    expected += (d * n1) / n;
    if (n > 1) variance += (d * (n1 / n) * (n2 / n) * (n - d)) / (n - 1);
    n1 -= a ? dayTotal(a) : 0;
    n2 -= b ? dayTotal(b) : 0;
  }
  return { observed, expected, z: variance > 0 ? (observed - expected) / Math.sqrt(variance) : 0 };
};
