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
 * Lists do not say when a parcel was given up. `histogramOf` takes it as settled on the day it left: from then on it
 * is none of those that wait, and F cannot rise above the share of parcels that may still come. What will be lost of
 * those on their way nobody knows yet, so that of a young list F is an estimate from above.
 */
import { type Histogram, sizeOf } from './histogram.ts';

/** The estimate from a day of arrivals on. */
export interface Step {
  readonly day: number;
  /** Parcels that had neither arrived nor been given up before this day, and were watched until it. */
  readonly atRisk: number;
  readonly delivered: number;
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
const Z = 1.959963984540054;

/** A day on which parcels arrived or were given up. */
interface Ending {
  readonly day: number;
  readonly atRisk: number;
  readonly delivered: number;
  readonly ended: number;
  /** S before and F after this day. */
  readonly waiting: number;
  readonly arrived: number;
}

const endingsOf = (histogram: Histogram): readonly Ending[] => {
  let atRisk = sizeOf(histogram);
  let [waiting, arrived] = [1, 0];
  const endings: Ending[] = [];
  for (const { day, delivered, travelling, lost, returned } of histogram) {
    const ended = delivered + lost + returned;
    if (ended > 0) {
      arrived += (waiting * delivered) / atRisk;
      endings.push({ day, atRisk, delivered, ended, waiting, arrived });
      waiting *= 1 - ended / atRisk;
    }
    atRisk -= ended + travelling;
  }
  return endings;
};

/**
 * Variance of F after an ending, by the delta method: Gaynor et al. (1993), "On the use of cause-specific failure and
 * conditional failure probabilities", as Marubini & Valsecchi (1995) print it in 10.3 (from memory). Where nothing is
 * given up it is Greenwood's (1926).
 */
const varianceAt = (endings: readonly Ending[], at: number): number => {
  const now = endings[at]?.arrived ?? 0;
  let sum = 0;
  for (const { atRisk, delivered, ended, waiting, arrived } of endings.slice(0, at + 1)) {
    const rest = now - arrived;
    if (rest > 0) sum += (rest * rest * ended) / (atRisk * (atRisk - ended));
    sum += (waiting * waiting * delivered * (atRisk - delivered)) / atRisk ** 3;
    sum -= (2 * rest * waiting * delivered) / (atRisk * atRisk);
  }
  return Math.max(0, sum);
};

/** What is left of a whole; rounding leaves a hair of what is nothing. */
const rest = (arrived: number): number => (arrived > 1 - 1e-12 ? 0 : 1 - arrived);

/** The curve of a histogram. */
export const curveOf = (histogram: Histogram): Curve => {
  const endings = endingsOf(histogram);
  const steps = endings.flatMap(({ day, atRisk, delivered, arrived }, at): readonly Step[] =>
    delivered === 0
      ? []
      : [{ day, atRisk, delivered, missing: rest(arrived), variance: varianceAt(endings, at) }],
  );
  return { steps, last: histogram.at(-1)?.day ?? 0 };
};

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

/** Share that has arrived by the end of a day, 0 to 1. */
export const arrivedBy = (curve: Curve, day: number): number => 1 - (stepAt(curve, day)?.missing ?? 1);
