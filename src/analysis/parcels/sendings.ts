/** Parcels by the day they left. */
import type { ParcelCount } from '../../model/box.ts';

/** Parcels that left, or are to leave, on one day, in days since 1970-01-01. */
export interface Sending {
  readonly shipped: number;
  readonly count: number;
}

/** The parcels by the day they left, earliest first. */
export const sendingsOf = (counts: readonly ParcelCount[]): readonly Sending[] => {
  const byDay = new Map<number, number>();
  for (const { shipped, count } of counts) byDay.set(shipped, (byDay.get(shipped) ?? 0) + count);
  return [...byDay].map(([shipped, count]) => ({ shipped, count })).sort((a, b) => a.shipped - b.shipped);
};

/** A day on which half or more of the parcels had left, by sendings in the order they left. */
export const middleSending = (sendings: readonly Sending[]): number => {
  const half = sendings.reduce((sum, { count }) => sum + count, 0) / 2;
  let seen = 0;
  for (const { shipped, count } of sendings) {
    seen += count;
    if (seen >= half) return shipped;
  }
  return 0;
};
