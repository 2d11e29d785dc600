/** The share arrived by a date, where parcels leave on several days. */

import type { ParcelCount } from '../../model/box.ts';
import { defined } from '../../text/defined.ts';
import { type Curve, type Limits, logLogLimits, type Step, stepAt } from './incidence.ts';
import { crossing, type Quantile } from './quantile.ts';

/** Parcels that left on one day, in days since 1970-01-01. */
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

/** ArrivedShare arrived, 0 to 1, with its 95 % limits where there are any. */
export interface ArrivedShare {
  readonly share: number;
  readonly lower?: number;
  readonly upper?: number;
}

const weighted = (
  sendings: readonly Sending[],
  curve: Curve,
  date: number,
  still: (step: Step) => number | undefined,
): number | undefined => {
  let [sum, parcels] = [0, 0];
  for (const { shipped, count } of sendings) {
    const step = stepAt(curve, date - shipped);
    const missing = step ? still(step) : 1;
    if (missing === undefined) return undefined;
    sum += count * (1 - missing);
    parcels += count;
  }
  return parcels === 0 ? undefined : sum / parcels;
};

/**
 * ArrivedShare of all sendings that has arrived by the end of a date (days since 1970-01-01): each arrives by the curve
 * from its own day on. With one sending the limits are those of the curve; with several they are the weighted
 * means of its limits, which is right where the sendings vary together and else too wide.
 */
export const shareByDate = (sendings: readonly Sending[], curve: Curve, date: number): ArrivedShare => {
  const of = (still: (step: Step) => number | undefined): number | undefined =>
    weighted(sendings, curve, date, still);
  const limit =
    (key: keyof Limits) =>
    (step: Step): number | undefined =>
      step.missing >= 1 ? 1 : logLogLimits(step)?.[key];
  const [lower, upper] = [of(limit('upper')), of(limit('lower'))];
  return defined({ share: of((step) => step.missing) ?? 0, lower, upper });
};

/**
 * The date (days since 1970-01-01, a half where the share is exactly met between two) by which `share` has
 * arrived, with its interval; as `quantileOf`, over dates.
 */
export const dateOfShare = (sendings: readonly Sending[], curve: Curve, share: number): Quantile => {
  const [first, last] = [sendings[0], sendings.at(-1)];
  if (!first || !last) return {};
  const dates = new Set(sendings.flatMap(({ shipped }) => curve.steps.map(({ day }) => shipped + day)));
  const shares = [...dates].sort((a, b) => a - b).map((at) => ({ at, ...shareByDate(sendings, curve, at) }));
  const found = (key: keyof ArrivedShare): number | undefined =>
    crossing(
      shares.flatMap(({ at, [key]: height }) => (height === undefined ? [] : [{ at, height }])),
      share,
      last.shipped + curve.last,
    );
  const [day, lower, upper] = [found('share'), found('upper'), found('lower')];
  return defined({ day, lower, upper });
};
