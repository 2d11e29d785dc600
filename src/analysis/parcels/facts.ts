/** Everything the report on one cycle's parcels is made from. */

import type { Moment, ParcelCount, Parcels, PlainDate, RevealHabit } from '../../model/box.ts';
import { dateInZone } from '../../model/calendar.ts';
import { dateOfDay, dayOfDate } from '../../text/days.ts';
import { defined } from '../../text/defined.ts';
import { compareBy, type Group } from './compare.ts';
import { DEFAULT_SHARE } from './default-share.ts';
import { deliveredOf } from './delivered.ts';
import { type ArrivedShare, type ExpectedDate, forecastOf } from './expected.ts';
import { histogramOf, type ParcelTally, pooledHistogram, sizeOf, tallyOf } from './histogram.ts';
import { type Curve, curveBy, curveOf, dayOfShare, endingsOf } from './incidence.ts';
import { type Overdue, overdueOf } from './overdue.ts';
import { continued, horizonOf } from './pooled.ts';
import { type JudgedReveal, judgeReveal } from './reveal.ts';
import { middleSending, type Sending, sendingsOf } from './sendings.ts';

/** Whose parcels tell when the wanted share arrives: this cycle's, this and earlier ones', earlier ones' or none. */
type OutlookSource = 'own' | 'both' | 'earlier' | 'none';

/** When the wanted share arrives, and whose parcels tell it. */
interface Outlook {
  readonly source: OutlookSource;
  /** The curve that tells: with `both` this cycle's up to `horizon` and the earlier ones' from there on. */
  readonly curve: Curve;
  /** Days up to which this cycle's own parcels tell; −1 where there are none. */
  readonly horizon: number;
  /** Cycles that were pooled, oldest first; empty where none was needed. */
  readonly cycles: readonly string[];
  /** Days since a parcel left by which `aim` has arrived, where all left on one day. */
  readonly days?: number;
  /** The date by whose end `aim` has arrived: counted where it has, and then without limits. */
  readonly dates: ExpectedDate;
  /** Whether that date is over. */
  readonly past: boolean;
  /** Share of these parcels that is ever expected to arrive, 0 to 1. */
  readonly atMost: number;
  /** The date from which this cycle tells by itself, where it does not yet. */
  readonly oldEnough?: PlainDate;
}

/** All that is known of one cycle’s parcels. */
export interface ParcelsFacts {
  /** `2026-03`, or the name of a file that is no cycle's. */
  readonly cycle: string;
  readonly theme?: string;
  /** The file they come from; absent where the cycle has none yet. */
  readonly file?: string;
  readonly asOf: Moment;
  readonly asOfDate: PlainDate;
  readonly timeZone: string;
  readonly wanted: number;
  /**
   * The share of all parcels that is waited for: the wanted one, or, where so many are gone that it can no longer
   * arrive, the wanted share of those that can.
   */
  readonly aim: number;
  /** The wanted share can no longer arrive. */
  readonly isOutOfReach: boolean;
  /** Every parcel of the list, those among them that have yet to leave. */
  readonly parcels: number;
  readonly tally: ParcelTally;
  /** `aim` of these very parcels has arrived. */
  readonly reached: boolean;
  /** By the day they left or are to leave. */
  readonly sendings: readonly Sending[];
  /** Of this cycle's own parcels. */
  readonly curve: Curve;
  readonly outlook: Outlook;
  /** Absent where too little has arrived to say what is overdue. */
  readonly overdue?: Overdue;
  readonly carriers: readonly Group[];
  readonly regions: readonly Group[];
  readonly reveal: JudgedReveal;
  /** The evenings that `reveal` proposes, with the share expected by the end of the day before. */
  readonly evenings: readonly { readonly moment: Moment; readonly share: number }[];
  /** Share arrived by the end of the day before the planned reveal: counted where that is past, else expected. */
  readonly atReveal?: ArrivedShare & { readonly isCounted: boolean };
}

/** What the facts are found from. */
export interface ParcelsFactsInput {
  readonly cycle: string;
  readonly theme?: string;
  /** Day the parcels leave, for a cycle without a file: a day number. */
  readonly leaves?: number;
  readonly planned?: Moment;
  readonly parcels?: Parcels;
  /** Earlier cycles with their parcels, oldest first, read as of the same day. */
  readonly earlier: readonly { readonly cycle: string; readonly parcels: Parcels }[];
  readonly asOf: Moment;
  /** Day number of `asOf` in the box's zone. */
  readonly asOfDay: number;
  readonly timeZone: string;
  readonly habit: RevealHabit;
  /** Instead of the habit's share. */
  readonly share?: number;
}

/** The facts of one cycle, with or without parcels of its own. */
export const parcelsFacts = (input: ParcelsFactsInput): ParcelsFacts => {
  const { cycle, theme, parcels, planned, asOf, asOfDay, timeZone, habit } = input;
  const wanted = input.share ?? habit.share ?? DEFAULT_SHARE;
  const counts = parcels?.counts ?? [];
  const histogram = histogramOf(counts);
  const tally = tallyOf(counts);
  const { most, isOutOfReach } = deliveredOf(counts, wanted);
  const aim = isOutOfReach ? wanted * most : wanted;
  const arrived = deliveredOf(counts, aim);
  const reached = arrived.day !== undefined;
  const own = curveOf(histogram);
  const horizon = horizonOf(counts, asOfDay);
  const ownDay = dayOfShare(own, aim);
  const enough = reached || (ownDay !== undefined && ownDay <= horizon);

  const earlier = input.earlier
    .map(({ cycle: id, parcels: list }) => ({ id, histogram: histogramOf(list.counts) }))
    .filter((one) => one.histogram.length > 0);
  const pool = pooledHistogram(earlier.map((one) => one.histogram));
  const pooled = !enough && earlier.length > 0;
  const source: OutlookSource = enough ? 'own' : pooled ? (horizon < 0 ? 'earlier' : 'both') : 'none';
  const endings = pooled ? continued(histogram, pool, horizon) : endingsOf(histogram);
  const curve = pooled ? curveBy(endings, Math.max(horizon, pool.at(-1)?.day ?? 0)) : own;
  // A cycle without a list is taken to be as large as the earlier ones in the mean.
  const count = Math.max(1, Math.round(sizeOf(pool) / Math.max(1, earlier.length)));
  const expected: readonly ParcelCount[] =
    counts.length > 0 || input.leaves === undefined
      ? counts
      : [{ shipped: input.leaves, days: 0, state: 'toLeave', carrier: '', region: '', count, lines: [] }];
  const sendings = sendingsOf(expected);
  // Without a source the estimate would rest on a few early parcels, so that nothing is expected.
  const told = source !== 'none';
  const forecast = forecastOf(expected, told ? endings : []);
  const dates = forecast.dateOf(aim);
  const [first, second] = sendings;
  const outlook: Outlook = defined({
    source,
    curve,
    horizon,
    cycles: pooled ? earlier.map(({ id }) => id) : [],
    days: first && !second && dates.day !== undefined ? dates.day - first.shipped : undefined,
    dates,
    past: dates.day !== undefined && dates.day <= asOfDay,
    atMost: forecast.by(Number.POSITIVE_INFINITY).share,
    oldEnough:
      pooled && dates.day !== undefined
        ? dateOfDay(middleSending(sendings) + (dayOfShare(curve, aim) ?? horizon))
        : undefined,
  });

  const overdue =
    enough || earlier.length > 0 ? overdueOf(counts, pooledHistogram([pool, histogram])) : undefined;
  const eve = planned === undefined ? undefined : dayOfDate(dateInZone(planned, timeZone)) - 1;
  const isCounted = eve !== undefined && eve <= asOfDay && counts.length > 0;
  const atReveal = eve !== undefined && (told || isCounted) ? { ...forecast.by(eve), isCounted } : undefined;
  const reveal = judgeReveal(
    defined({
      planned,
      asOf,
      habit,
      timeZone,
      expected: dates,
      before: isCounted ? atReveal?.share : undefined,
      share: aim,
    }),
  );
  return defined({
    cycle,
    theme,
    file: parcels?.file,
    asOf,
    asOfDate: dateOfDay(asOfDay),
    timeZone,
    wanted,
    aim,
    isOutOfReach,
    parcels: arrived.parcels,
    tally,
    reached,
    sendings: counts.length > 0 ? sendings : [],
    curve: own,
    outlook,
    overdue,
    carriers: compareBy('carrier', counts, overdue?.limit),
    regions: compareBy('region', counts, overdue?.limit),
    reveal,
    evenings: reveal.proposed.map((moment) => ({
      moment,
      share: forecast.by(dayOfDate(dateInZone(moment, timeZone)) - 1).share,
    })),
    atReveal,
  });
};
