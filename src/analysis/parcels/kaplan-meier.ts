/**
 * The share of parcels that have arrived after each day, when some are still on their way.
 *
 * Kaplan & Meier (1958), "Nonparametric estimation from incomplete observations": on every day on which a parcel
 * arrives, the share still waiting is multiplied by 1 − d/n, where n had waited so long and d of them arrived that
 * day. A parcel on its way counts among the n for as long as it has been watched, and then leaves them (it is
 * censored). On a day on which some arrive and others leave, arrivals come first.
 *
 * A parcel that was lost or sent back never arrives. To censor it on the day it was given up would say that it
 * arrives as the others do, only unseen, and so overstate the share. Never arriving is a competing risk
 * (Kalbfleisch & Prentice 2002, section 8.2), and what is wanted is the cumulative incidence of arriving: the day
 * of arrival of such a parcel is put at infinity, and it stays among those that wait for as long as it would have
 * been watched, to the day as of which the file is read. That day is known for every parcel (Fine & Gray 1999,
 * section 3.1, "censoring complete"), and so is all that is needed: no date of the loss. The curve then levels off
 * below 1 by the share that never comes. Greenwood's formula and the limits hold for it as they stand, since it is
 * the product limit of a time that may be infinite.
 */
import type { Histogram } from './histogram.ts';

/** A day on which parcels arrived. */
interface Arrivals {
  readonly day: number;
  /** Parcels that had not arrived before this day, and were watched until it. */
  readonly atRisk: number;
  readonly delivered: number;
}

/** The estimate from a day of arrivals on. */
export interface Step extends Arrivals {
  /** Share still waiting after this day, 0 to 1: the estimate of S. */
  readonly waiting: number;
  /** Greenwood's sum up to this day, Σ d / (n (n − d)): the variance of log S. Infinite where S is 0. */
  readonly logVariance: number;
}

/** A whole estimate, which falls in steps. */
export interface Curve {
  /** By day, ascending; only days on which something arrived. */
  readonly steps: readonly Step[];
  /** The longest that any parcel was watched, in days; 0 where there are none. */
  readonly last: number;
}

/** Limits of the share still waiting; absent where S is 0 and has no variance. */
export interface Limits {
  readonly lower: number;
  readonly upper: number;
}

/** 97.5 % point of the normal distribution: two-sided limits of 95 %. */
const Z = 1.959963984540054;

/** The product limit of days of arrival, given in ascending order. Greenwood (1926) for the variance. */
export const productLimit = (arrivals: readonly Arrivals[], last: number): Curve => {
  let waiting = 1;
  let logVariance = 0;
  const steps = arrivals.map(({ day, atRisk, delivered }): Step => {
    waiting *= 1 - delivered / atRisk;
    logVariance += delivered / (atRisk * (atRisk - delivered));
    return { day, atRisk, delivered, waiting, logVariance };
  });
  return { steps, last };
};

/** The curve of a histogram. */
export const curveOf = (histogram: Histogram): Curve => {
  let atRisk = histogram.reduce(
    (sum, { delivered, travelling, lost, returned }) => sum + delivered + travelling + lost + returned,
    0,
  );
  const arrivals: Arrivals[] = [];
  for (const { day, delivered, travelling, lost, returned } of histogram) {
    if (delivered > 0) arrivals.push({ day, atRisk, delivered });
    atRisk -= delivered + travelling + lost + returned;
  }
  return productLimit(arrivals, histogram.at(-1)?.day ?? 0);
};

/** Standard error of the share still waiting. Greenwood (1926). */
export const standardError = ({ waiting, logVariance }: Step): number => waiting * Math.sqrt(logVariance);

/**
 * Pointwise 95 % limits by log(−log S), which stay within 0 and 1. Borgan & Liestøl (1990); R's survival calls them
 * "log-log".
 */
export const logLogLimits = ({ waiting, logVariance }: Step): Limits | undefined => {
  if (waiting <= 0 || waiting >= 1) return undefined;
  const spread = (Z * Math.sqrt(logVariance)) / Math.abs(Math.log(waiting));
  return { lower: waiting ** Math.exp(spread), upper: waiting ** Math.exp(-spread) };
};

/** The step that holds on a day, undefined before the first arrival. */
export const stepAt = ({ steps }: Curve, day: number): Step | undefined =>
  steps.findLast((step) => step.day <= day);

/** Share that has arrived by the end of a day, 0 to 1. */
export const arrivedBy = (curve: Curve, day: number): number => 1 - (stepAt(curve, day)?.waiting ?? 1);
