/**
 * Whether a carrier or region is behind all others together, beyond chance. Slow and stuck are two questions: what
 * arrives late still arrives; where things are stuck, nothing has arrived for a while in which the others would have
 * brought some of what is on its way.
 */
import type { ParcelCount } from '../../model/box.ts';
import { dayTotal, type Histogram, histogramOf, sizeOf } from './histogram.ts';
import { logRank } from './log-rank.ts';

/** `slow`: it arrives later than the others. `stuck`: nothing of it arrives any more. */
export type Pace = 'stuck' | 'slow' | 'usual';

/**
 * Chance of calling any of the groups of one list slow where all are alike, and of calling any stuck; shared out among
 * the groups (Bonferroni). One in a thousand, because lists are read every day of every month; a choice of ours.
 *
 * Measured in tests/analysis/parcels/pace.test.ts over lists of three carriers alike: slow or stuck in under 1 in 200
 * lists read on all their days. Of 60 parcels that take three days longer than four on the average it finds over nine
 * in ten slow on day 12; of 40 on their way that stopped moving, nine in ten stuck within six days.
 */
const CHANCE = 0.001;

/** Fewer parcels than this say nothing about a carrier. A choice of ours, no source. */
const LEAST_PARCELS = 5;

/** Φ(z) for z of 0 or less: Abramowitz & Stegun 26.2.17, to 7.5e-8. */
const lowerTail = (z: number): number => {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const tail =
    density *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
};

/**
 * The sum of d/n up to each day (Nelson 1972, Aalen 1978); after the last day on which one was at risk or arrived, it goes
 * on at the mean of all days, because nobody is left to tell and what has not come by then is owed all the more.
 */
const cumulativeHazard = (histogram: Histogram): ((day: number) => number) => {
  let atRisk = sizeOf(histogram);
  let [sum, arrived, exposure, last] = [0, 0, 0, 0];
  const sums: { readonly day: number; readonly sum: number }[] = [];
  for (const one of histogram) {
    if (one.delivered > 0) {
      sum += one.delivered / atRisk;
      sums.push({ day: one.day, sum });
    }
    atRisk -= dayTotal(one);
    arrived += one.delivered;
    exposure += one.day * (one.delivered + one.travelling);
    if (one.delivered + one.travelling > 0) last = one.day;
  }
  const mean = exposure > 0 ? arrived / exposure : 0;
  return (day) => (sums.findLast((one) => one.day <= day)?.sum ?? 0) + mean * Math.max(0, day - last);
};

/**
 * How many of a group's parcels should have arrived since its newest arrival, had they gone on as fast as the others.
 * None did; where they do, the number until the next arrival is exponential with mean 1 (the time transformation of a
 * counting process: Aalen 1978), so that one above x has a chance of e^−x.
 */
const owedSince = (own: readonly ParcelCount[], rest: Histogram): number => {
  const hazard = cumulativeHazard(rest);
  const newest = own
    .filter(({ state }) => state === 'delivered')
    .reduce((day, { shipped, days }) => Math.max(day, shipped + days), Number.NEGATIVE_INFINITY);
  return own
    .filter(({ state }) => state === 'travelling')
    .reduce((sum, { shipped, days, count }) => {
      // What arrives on the newest day itself has been counted by then.
      const from = Math.min(days, Math.max(-1, newest - shipped));
      return sum + count * (hazard(days) - (from < 0 ? 0 : hazard(from)));
    }, 0);
};

/**
 * The pace of a group beside the rest, one of `groups` that are looked at. Days are those on which parcels come, as
 * `inDeliveryDays` has them.
 */
export const paceOf = (own: readonly ParcelCount[], rest: readonly ParcelCount[], groups: number): Pace => {
  const [mine, theirs] = [histogramOf(own), histogramOf(rest)];
  if (sizeOf(mine) < LEAST_PARCELS) return 'usual';
  const chance = CHANCE / groups;
  if (Math.exp(-owedSince(own, theirs)) <= chance) return 'stuck';
  return lowerTail(logRank(mine, theirs).z) <= chance ? 'slow' : 'usual';
};
