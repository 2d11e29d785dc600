/** Everything the report on one cycle's parcels is made from. */

import type { Moment, ParcelCount, Parcels, PlainDate, RevealHabit } from '../../model/box.ts';
import { dateInZone } from '../../model/calendar.ts';
import { dateOfDay, dayOfDate } from '../../text/days.ts';
import { defined } from '../../text/defined.ts';
import { type ArrivedShare, dateOfShare, type Sending, sendingsOf, shareByDate } from './calendar-curve.ts';
import { compareBy, type Group } from './compare.ts';
import { DEFAULT_SHARE } from './default-share.ts';
import { histogramOf, type ParcelTally, parcelsIn, parcelTallyOf, pooledHistogram } from './histogram.ts';
import { arrivedBy, type Curve, curveOf } from './incidence.ts';
import { type Overdue, overdueOf } from './overdue.ts';
import { continued, horizonOf } from './pooled.ts';
import { type Quantile, quantileOf } from './quantile.ts';
import { type JudgedReveal, judgeReveal } from './reveal.ts';

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
  /** Days since a parcel left by which the wanted share has arrived. */
  readonly days: Quantile;
  /** The same as day numbers since 1970-01-01, over all sendings. */
  readonly dates: Quantile;
  /** Whether the day by which the wanted share has arrived is over. */
  readonly past: boolean;
  /** ArrivedShare of this cycle's own parcels that had arrived after `horizon` days, and the most that `curve` comes to; 0 to 1. */
  readonly atHorizon: number;
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
  readonly parcels: number;
  readonly tally: ParcelTally;
  /** The wanted share of these very parcels has arrived. */
  readonly reached: boolean;
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
  /** ArrivedShare arrived by the end of the day before the planned reveal: counted where that is past, else expected. */
  readonly atReveal?: ArrivedShare;
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

/** A day on which half or more of the parcels had left, by sendings in the order they left. */
const middleSending = (sendings: readonly Sending[]): number => {
  const half = sendings.reduce((sum, { count }) => sum + count, 0) / 2;
  let seen = 0;
  for (const { shipped, count } of sendings) {
    seen += count;
    if (seen >= half) return shipped;
  }
  return 0;
};

/** What had arrived by the end of a day gone by, among what has left since then too. */
const arrivedShare = (counts: readonly ParcelCount[], day: number): ArrivedShare | undefined => {
  const sum = (some: readonly ParcelCount[]): number => some.reduce((all, { count }) => all + count, 0);
  const arrived = counts.filter(({ state, shipped, days }) => state === 'delivered' && shipped + days <= day);
  return counts.length === 0 ? undefined : { share: sum(arrived) / sum(counts) };
};

/** The facts of one cycle, with or without parcels of its own. */
export const parcelsFacts = (input: ParcelsFactsInput): ParcelsFacts => {
  const { cycle, theme, parcels, planned, asOf, asOfDay, timeZone, habit } = input;
  const wanted = input.share ?? habit.share ?? DEFAULT_SHARE;
  const counts = parcels?.counts ?? [];
  const histogram = histogramOf(counts);
  const tally = parcelTallyOf(histogram);
  const own = curveOf(histogram);
  const horizon = horizonOf(counts, asOfDay);
  const ownDays = quantileOf(own, wanted);
  const reached = counts.length > 0 && tally.delivered >= wanted * parcelsIn(tally) - 1e-9;
  const settled = counts.length > 0 && tally.travelling === 0;
  const enough = settled || reached || (ownDays.day !== undefined && ownDays.day <= horizon);

  const earlier = input.earlier.filter((one) => one.parcels.counts.length > 0);
  const pool = pooledHistogram(earlier.map((one) => histogramOf(one.parcels.counts)));
  const pooled = !enough && earlier.length > 0;
  const source: OutlookSource = enough ? 'own' : pooled ? (horizon < 0 ? 'earlier' : 'both') : 'none';
  const curve = pooled ? continued(histogram, pool, horizon) : own;
  const leaving =
    counts.length > 0
      ? sendingsOf(counts)
      : input.leaves === undefined
        ? []
        : [{ shipped: input.leaves, count: 1 }];
  const days = quantileOf(curve, wanted);
  // Without a source the estimate would rest on a few early parcels, so neither days nor dates are given.
  const told = source !== 'none';
  const dates = told ? dateOfShare(leaving, curve, wanted) : {};
  const outlook: Outlook = {
    source,
    curve,
    horizon,
    cycles: pooled ? earlier.map((one) => one.cycle) : [],
    days: told ? days : {},
    dates,
    past: dates.day !== undefined && Math.ceil(dates.day) <= asOfDay,
    atHorizon: arrivedBy(own, horizon),
    atMost: arrivedBy(curve, curve.last),
    ...(pooled &&
      days.day !== undefined && {
        oldEnough: dateOfDay(middleSending(leaving) + Math.ceil(days.day)),
      }),
  };

  const arrived = pooledHistogram([pool, histogram]);
  const overdue = enough || earlier.length > 0 ? overdueOf(counts, arrived) : undefined;
  const eve = planned === undefined ? undefined : dayOfDate(dateInZone(planned, timeZone)) - 1;
  const atReveal =
    eve === undefined || leaving.length === 0
      ? undefined
      : planned !== undefined && planned <= asOf
        ? arrivedShare(counts, eve)
        : told
          ? shareByDate(leaving, curve, eve)
          : undefined;
  const reveal = judgeReveal(
    defined({
      planned,
      asOf,
      habit,
      timeZone,
      expected: dates,
      settled,
      reached,
      before: atReveal?.share,
      share: wanted,
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
    parcels: parcelsIn(tally),
    tally,
    reached,
    sendings: counts.length > 0 ? leaving : [],
    curve: own,
    outlook,
    overdue,
    carriers: compareBy('carrier', counts, wanted, overdue?.limit),
    regions: compareBy('region', counts, wanted, overdue?.limit),
    reveal,
    evenings: reveal.proposed.map((moment) => ({
      moment,
      share: shareByDate(leaving, curve, dayOfDate(dateInZone(moment, timeZone)) - 1).share,
    })),
    atReveal,
  });
};
