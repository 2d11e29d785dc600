/**
 * The share of parcels that have arrived after each day, when some are still on their way and some never come.
 *
 * A parcel that was lost or sent back never arrives, and that competes with arriving: what is wanted is the cumulative
 * incidence of arriving. Aalen & Johansen (1978), "An empirical transition matrix for non-homogeneous Markov chains
 * based on censored observations": on every day on which something ends, F rises by S · d/n, and S, the share that is
 * still waiting, is multiplied by 1 − e/n, where n had waited so long, d of them arrived that day and e arrived or
 * were given up. A parcel on its way counts among the n for as long as it has been watched, and then leaves them (it is
 * censored). On a day on which some arrive and others leave, arrivals come first. Where nothing is lost, F is one less
 * Kaplan & Meier's (1958) estimate.
 *
 * Few lists say when a parcel was given up. It waits until the last day on which it can have been: the day it came back
 * where that is dated, else the day the list was read. An earlier day would promise more, because the parcels on their
 * way would then be likened to those alone that arrived.
 */
import { dayTotal, type Histogram, sizeOf } from './histogram.ts';
import { ROUNDING } from './rounding.ts';

/** A day of waiting on which parcels arrived or were given up. */
export interface Ending {
  /** Days since they left. */
  readonly day: number;
  /** Parcels that had neither arrived nor been given up before this day, and were watched until it. */
  readonly atRisk: number;
  readonly delivered: number;
  readonly givenUp: number;
}

/** The estimate from a day of arrivals on. */
export interface Step extends Omit<Ending, 'givenUp'> {
  /** Share that has not arrived after this day, 0 to 1: 1 − F. */
  readonly missing: number;
  /** Variance of F. */
  readonly variance: number;
}

/** A whole estimate, which rises in steps. */
export interface Curve {
  /** By day, ascending; only days on which something arrived. */
  readonly steps: readonly Step[];
  /** The longest that any parcel was watched, in days; 0 where there are none. */
  readonly last: number;
}

/** Limits of the share that has not arrived; absent where it is 0 or 1 and has no variance. */
export interface Limits {
  readonly lower: number;
  readonly upper: number;
}

/** 97.5 % point of the normal distribution: two-sided limits of 95 %. */
export const Z = 1.959963984540054;

/** The days of a histogram on which something ended. */
export const endingsOf = (histogram: Histogram): readonly Ending[] => {
  let atRisk = sizeOf(histogram);
  const endings: Ending[] = [];
  for (const one of histogram) {
    const { day, delivered, givenUp } = one;
    if (delivered + givenUp > 0) endings.push({ day, atRisk, delivered, givenUp });
    atRisk -= dayTotal(one);
  }
  return endings;
};

/** An ending with S before it, and S and F after it. */
interface Estimate extends Ending {
  readonly before: number;
  readonly waiting: number;
  readonly arrived: number;
}

const estimatesOf = (endings: readonly Ending[]): readonly Estimate[] => {
  let [waiting, arrived] = [1, 0];
  return endings.map((ending) => {
    const { atRisk, delivered, givenUp } = ending;
    const before = waiting;
    arrived += (before * delivered) / atRisk;
    waiting *= 1 - (delivered + givenUp) / atRisk;
    return { ...ending, before, waiting, arrived };
  });
};

/**
 * Variance of F after an ending: Greenwood's for an Aalen–Johansen estimate, the endings of a day being multinomial
 * (Andersen, Borgan, Gill & Keiding 1993, IV.4.1.3; from memory). With r the chance that what still waits after a day
 * arrives by then, S−² [(1−r)² d(n−d) + r² e(n−e) + 2 r(1−r) d e] / n³ is summed over the days, d arriving and e given
 * up of n. Where nothing is given up it is Greenwood's of Kaplan and Meier's estimate.
 */
const varianceAt = (estimates: readonly Estimate[], at: number): number => {
  const now = estimates[at]?.arrived ?? 0;
  let sum = 0;
  for (const { atRisk: n, delivered: d, givenUp: e, before, waiting, arrived } of estimates.slice(
    0,
    at + 1,
  )) {
    const later = waiting > 0 ? (now - arrived) / waiting : 0;
    const spread =
      (1 - later) ** 2 * d * (n - d) + later ** 2 * e * (n - e) + 2 * later * (1 - later) * d * e;
    sum += (before ** 2 * spread) / n ** 3;
  }
  return Math.max(0, sum);
};

/** What is left of a whole; rounding leaves a hair of what is nothing. */
const rest = (arrived: number): number => (arrived > 1 - 1e-12 ? 0 : 1 - arrived);

/** The curve by endings, in the order of their days. `last` is the longest that any parcel was watched. */
export const curveBy = (endings: readonly Ending[], last: number): Curve => {
  const estimates = estimatesOf(endings);
  const steps = estimates.flatMap(({ day, atRisk, delivered, arrived }, at): readonly Step[] =>
    delivered === 0
      ? []
      : [{ day, atRisk, delivered, missing: rest(arrived), variance: varianceAt(estimates, at) }],
  );
  return { steps, last };
};

/** The curve of a histogram. */
export const curveOf = (histogram: Histogram): Curve =>
  curveBy(endingsOf(histogram), histogram.at(-1)?.day ?? 0);

/** Standard error of the share that has arrived. */
export const standardError = ({ variance }: Step): number => Math.sqrt(variance);

/**
 * Pointwise 95 % limits by log(−log), which stay within 0 and 1. Borgan & Liestøl (1990); R's survival calls them
 * "log-log".
 */
export const logLogLimits = ({ missing, variance }: Step): Limits | undefined => {
  if (missing <= 0 || missing >= 1) return undefined;
  const spread = (Z * Math.sqrt(variance)) / (missing * Math.abs(Math.log(missing)));
  return { lower: missing ** Math.exp(spread), upper: missing ** Math.exp(-spread) };
};

/** The step that holds on a day, undefined before the first arrival. */
export const stepAt = ({ steps }: Curve, day: number): Step | undefined =>
  steps.findLast((step) => step.day <= day);

/** The first day by whose end a share, above 0, has arrived by a curve; undefined where it never comes to it. */
export const dayOfShare = ({ steps }: Curve, share: number): number | undefined =>
  steps.find(({ missing }) => 1 - missing >= share - ROUNDING)?.day;
