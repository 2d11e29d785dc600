/** The day by which a share of the parcels has arrived. */
import { defined } from '../../text/defined.ts';
import { type Curve, type Limits, logLogLimits, type Step } from './incidence.ts';

/** Days since the parcels left; a half where a curve is level at exactly the share. */
export interface Quantile {
  /** Absent where the curve does not come to the share. */
  readonly day?: number;
  /** 95 % interval of the day; a bound that the limits do not come to is absent. */
  readonly lower?: number;
  readonly upper?: number;
}

/** A step of any rising curve: its height from `at` on. */
interface Rise {
  readonly at: number;
  /** 0 to 1 */
  readonly height: number;
}

/** Two heights closer than this are one. R's survival: the square root of the machine's epsilon. */
const TOLERANCE = Math.sqrt(Number.EPSILON);

/**
 * Where a rising step curve comes to `height`: undefined where it never does. Level at exactly `height` it is the
 * middle of that level stretch, as the median of an even number is between two; the last stretch ends at `last`.
 * As `quantile.survfit` of R's survival 3 decides it.
 */
export const crossing = (rises: readonly Rise[], height: number, last: number): number | undefined => {
  const reached = rises.find((rise) => rise.height >= height - TOLERANCE);
  if (!reached) return undefined;
  if (reached.height > height + TOLERANCE) return reached.at;
  const above = rises.find((rise) => rise.height > height + TOLERANCE);
  return (reached.at + (above ? above.at : last)) / 2;
};

/** Share arrived after each step: the estimate, or one of its limits. */
const rises = (curve: Curve, waiting: (step: Step) => number | undefined): readonly Rise[] =>
  curve.steps.flatMap((step) => {
    const still = waiting(step);
    return still === undefined ? [] : [{ at: step.day, height: 1 - still }];
  });

/**
 * The day by which `share` (above 0, below 1) has arrived, with the interval of Brookmeyer & Crowley (1982): the
 * days on which the pointwise limits come to the share. The limits are log-log unless others are given.
 */
export const quantileOf = (
  curve: Curve,
  share: number,
  limits: (step: Step) => Limits | undefined = logLogLimits,
): Quantile => {
  const found = (waiting: (step: Step) => number | undefined): number | undefined =>
    crossing(rises(curve, waiting), share, curve.last);
  const day = found((step) => step.missing);
  const lower = found((step) => limits(step)?.lower);
  const upper = found((step) => limits(step)?.upper);
  return defined({ day, lower, upper });
};
