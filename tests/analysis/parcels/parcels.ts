/** Parcels for tests, written short. */
import { type Curve, type Limits, type Step, stepAt } from '../../../src/analysis/parcels/incidence.ts';
import type { ParcelCount, ParcelState } from '../../../src/model/box.ts';

/** One parcel that left on day `shipped` and has been `days` on its way. */
export const parcel = (
  days: number,
  state: ParcelState = 'delivered',
  more: Partial<ParcelCount> = {},
): ParcelCount => ({ shipped: 0, days, state, carrier: '', region: '', count: 1, lines: [], ...more });

/** Times as survival papers print them: `6 6+` is an event at 6 and one censored there. */
export const times = (text: string): readonly ParcelCount[] =>
  text
    .trim()
    .split(/\s+/)
    .map((time) => parcel(Number.parseInt(time, 10), time.endsWith('+') ? 'travelling' : 'delivered'));

/** Freireich et al. (1963), Blood 21: weeks of remission under 6-MP and under placebo; in R's KMsurv as drug6mp. */
export const SIX_MP = '6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+';
export const PLACEBO = '1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23';

/** Numbers from 0 to 1 that are the same in every run. Mulberry32, Tommy Ettinger (public domain). */
export const seeded = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** Pointwise 95 % limits by log S, cut off at 1: what R's survival gives unless told otherwise. */
export const logLimits = ({ missing, variance }: Step): Limits | undefined => {
  if (missing <= 1e-12) return undefined;
  const spread = (1.959963984540054 * Math.sqrt(variance)) / missing;
  return { lower: missing * Math.exp(-spread), upper: Math.min(1, missing * Math.exp(spread)) };
};

/** Share that has arrived by the end of a day, 0 to 1. */
export const arrivedBy = (curve: Curve, day: number): number => 1 - (stepAt(curve, day)?.missing ?? 1);
