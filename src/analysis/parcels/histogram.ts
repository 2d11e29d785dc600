/** How many parcels arrived, were given up or were left waiting after each whole number of days. */
import type { ParcelCount, ParcelState } from '../../model/box.ts';

/** Parcels by what they came to. */
export type ParcelTally = Readonly<Record<ParcelState, number>>;

/** One day of waiting: what became of the parcels that were watched for just so many days after they left. */
interface DayCount {
  /** Whole days since it left, from 0. */
  readonly day: number;
  readonly delivered: number;
  /** Still on their way when the list was read. */
  readonly travelling: number;
  /** Lost or sent back. */
  readonly givenUp: number;
}

/** By day, ascending, each day once; days on which nothing happened are left out. */
export type Histogram = readonly DayCount[];

const collected = (entries: Iterable<DayCount>): Histogram => {
  const byDay = new Map<number, DayCount>();
  for (const { day, ...one } of entries) {
    const there = byDay.get(day) ?? { delivered: 0, travelling: 0, givenUp: 0 };
    byDay.set(day, {
      day,
      delivered: there.delivered + one.delivered,
      travelling: there.travelling + one.travelling,
      givenUp: there.givenUp + one.givenUp,
    });
  }
  return [...byDay.values()].sort((a, b) => a.day - b.day);
};

/** The histogram of the parcels that have left, whatever their order. */
export const histogramOf = (counts: readonly ParcelCount[]): Histogram =>
  collected(
    counts
      .filter(({ state }) => state !== 'toLeave')
      .map(({ days, state, count }) => ({
        day: days,
        delivered: state === 'delivered' ? count : 0,
        travelling: state === 'travelling' ? count : 0,
        givenUp: state === 'lost' || state === 'returned' ? count : 0,
      })),
  );

/** Several histograms as one, as if their parcels had left together. */
export const pooledHistogram = (histograms: readonly Histogram[]): Histogram => collected(histograms.flat());

/** What became of parcels. */
export const tallyOf = (counts: readonly ParcelCount[]): ParcelTally => {
  const tally = { delivered: 0, travelling: 0, lost: 0, returned: 0, toLeave: 0 };
  for (const { state, count } of counts) tally[state] += count;
  return tally;
};

/** Parcels in a tally. */
export const parcelsIn = (tally: ParcelTally): number =>
  Object.values(tally).reduce((sum, count) => sum + count, 0);

/** Parcels of one day. */
export const dayTotal = ({ delivered, travelling, givenUp }: DayCount): number =>
  delivered + travelling + givenUp;

/** Parcels in a histogram. */
export const sizeOf = (histogram: Histogram): number =>
  histogram.reduce((sum, day) => sum + dayTotal(day), 0);
