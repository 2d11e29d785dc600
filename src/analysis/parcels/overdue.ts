/** Parcels that are on their way for longer than nearly all that have arrived: to be chased. */
import type { ParcelCount } from '../../model/box.ts';
import type { Histogram } from './histogram.ts';

/** Share of what has arrived that took no longer than what is not yet overdue. Common practice, no source. */
const NEARLY_ALL = 0.99;

/** Lines of the file that are named for one sending. */
const MOST_LINES = 10;

/** Parcels of one sending that are overdue. */
interface OverdueDay {
  /** Day they left, in days since 1970-01-01. */
  readonly shipped: number;
  /** Days on their way so far. */
  readonly days: number;
  readonly count: number;
  /** Lines of the file where the first of them stand, ascending. */
  readonly lines: readonly number[];
}

/** Parcels that are on their way longer than nearly all the others were. */
export interface Overdue {
  /** Days within which 99 % of what has arrived did; longer than this is overdue. */
  readonly limit: number;
  readonly count: number;
  /** By how long they have been on their way, the longest first. */
  readonly days: readonly OverdueDay[];
}

/**
 * Days by which a share of what arrived had done so: the inverse of the empirical distribution (Hyndman & Fan
 * 1996, definition 1). Undefined where nothing has arrived.
 */
const arrivedWithin = (arrived: Histogram, share: number): number | undefined => {
  const all = arrived.reduce((sum, { delivered }) => sum + delivered, 0);
  let seen = 0;
  for (const { day, delivered } of arrived) {
    seen += delivered;
    if (delivered > 0 && seen >= share * all - 1e-9) return day;
  }
  return undefined;
};

/** What is overdue among `counts`, by the days that `arrived` took; undefined where nothing has arrived. */
export const overdueOf = (counts: readonly ParcelCount[], arrived: Histogram): Overdue | undefined => {
  const limit = arrivedWithin(arrived, NEARLY_ALL);
  if (limit === undefined) return undefined;
  const bySending = new Map<number, OverdueDay>();
  for (const { shipped, days, state, count, lines } of counts) {
    if (state !== 'travelling' || days <= limit) continue;
    const there = bySending.get(shipped);
    bySending.set(shipped, {
      shipped,
      days,
      count: (there?.count ?? 0) + count,
      lines: [...(there?.lines ?? []), ...lines].sort((a, b) => a - b).slice(0, MOST_LINES),
    });
  }
  const days = [...bySending.values()].sort((a, b) => b.days - a.days);
  return { limit, count: days.reduce((sum, { count }) => sum + count, 0), days };
};
