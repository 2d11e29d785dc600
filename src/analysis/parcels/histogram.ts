/** How many parcels arrived, or were left waiting, after each whole number of days. */
import type { ParcelCount, ParcelState } from '../../model/box.ts';

/** Parcels by what they came to. */
export interface ParcelTally {
  readonly delivered: number;
  readonly travelling: number;
  readonly lost: number;
  readonly returned: number;
}

/**
 * One day of waiting: what arrived after so many days, what was still on its way when the file was read, so many days
 * after it left, and what was given up then.
 */
interface DayCount extends ParcelTally {
  /** Whole days since it left, from 0. */
  readonly day: number;
}

/** By day, ascending, each day once; days on which nothing happened are left out. */
export type Histogram = readonly DayCount[];

type Writable = { -readonly [K in keyof DayCount]: DayCount[K] };

const collected = (entries: Iterable<DayCount>): Histogram => {
  const byDay = new Map<number, Writable>();
  for (const entry of entries) {
    const there = byDay.get(entry.day);
    if (!there) {
      byDay.set(entry.day, { ...entry });
      continue;
    }
    there.delivered += entry.delivered;
    there.travelling += entry.travelling;
    there.lost += entry.lost;
    there.returned += entry.returned;
  }
  return [...byDay.values()].sort((a, b) => a.day - b.day);
};

const NONE: ParcelTally = { delivered: 0, travelling: 0, lost: 0, returned: 0 };

const isGivenUp = (state: ParcelState): boolean => state === 'lost' || state === 'returned';

/**
 * The histogram of parcels, whatever their order. What was lost or sent back stands on day 0: no list says when it was
 * given up, and it was never one of those that would arrive.
 */
export const histogramOf = (counts: readonly ParcelCount[]): Histogram =>
  collected(
    counts.map(({ days, state, count }) => ({ ...NONE, day: isGivenUp(state) ? 0 : days, [state]: count })),
  );

/** A histogram from a day on: what was not over by its end, and what was given up, as if it had only then begun. */
export const after = (histogram: Histogram, day: number): Histogram =>
  collected(
    histogram.flatMap((one): readonly DayCount[] => {
      if (one.day > day) return [one];
      const { lost, returned } = one;
      return lost + returned > 0 ? [{ ...NONE, day: Math.max(0, day), lost, returned }] : [];
    }),
  );

/** Several histograms as one, as if their parcels had left together. */
export const pooledHistogram = (histograms: readonly Histogram[]): Histogram => collected(histograms.flat());

/** All days of a histogram together. */
export const parcelTallyOf = (histogram: Histogram): ParcelTally =>
  histogram.reduce(
    (sum, one) => ({
      delivered: sum.delivered + one.delivered,
      travelling: sum.travelling + one.travelling,
      lost: sum.lost + one.lost,
      returned: sum.returned + one.returned,
    }),
    NONE,
  );

/** Parcels in a tally. */
export const parcelsIn = ({ delivered, travelling, lost, returned }: ParcelTally): number =>
  delivered + travelling + lost + returned;

/** Parcels in a histogram. */
export const sizeOf = (histogram: Histogram): number => parcelsIn(parcelTallyOf(histogram));
