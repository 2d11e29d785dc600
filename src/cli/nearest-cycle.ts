/** The cycle that somebody meant who named one that is not there. */
import { editDistance } from '../text/edit-distance.ts';

/** Months between two: whoever names one that is further off meant no cycle that is there. */
const NEAR = 2;

const monthNumber = (month: string): number => {
  const [, year, of] = /^(\d{4})-(0[1-9]|1[0-2])$/.exec(month) ?? [];
  return year === undefined ? Number.NaN : Number(year) * 12 + Number(of);
};

/**
 * The cycle whose month (`2026-03`) is one slip of a key away, of several the newest; else the one nearest in time, two months
 * away at most. Undefined where there is none: digits that are alike do not make months neighbours.
 */
export const nearestCycle = (typed: string, cycles: readonly string[]): string | undefined => {
  const newest = [...cycles].sort().reverse();
  const slip = newest.find((cycle) => editDistance(typed, cycle) <= 1);
  if (slip !== undefined) return slip;
  const away = (cycle: string): number => Math.abs(monthNumber(cycle) - monthNumber(typed));
  return newest.filter((cycle) => away(cycle) <= NEAR).sort((a, b) => away(a) - away(b))[0];
};
