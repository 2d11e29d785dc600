/** When the wanted share of a cycle's own parcels had arrived: what a reveal waits for. No estimate enters. */
import type { Moment, Parcels, RevealHabit } from '../../model/box.ts';
import { MS_A_DAY } from '../../text/days.ts';
import { DEFAULT_SHARE } from './default-share.ts';
import { evenings } from './reveal.ts';

/** Rounding that a product of a share and a whole number may bring. */
const ROUNDING = 1e-9;

/** How much of a list has arrived. Counts are parcels, shares from 0 to 1. */
export interface Delivered {
  readonly wanted: number;
  /** Every parcel of the list, those that have yet to leave, were lost and were sent back among them. */
  readonly parcels: number;
  readonly delivered: number;
  /** The first day by whose end the wanted share had arrived, in days since 1970-01-01. */
  readonly day?: number;
  /** Nothing is to come any more. */
  readonly settled: boolean;
}

/** How far a list of shipments is, as of the day it was read. */
export const deliveredOf = ({ counts, toLeave = 0 }: Parcels, habit: RevealHabit): Delivered => {
  const wanted = habit.share ?? DEFAULT_SHARE;
  let [parcels, delivered, travelling] = [toLeave, 0, 0];
  const arrivals = new Map<number, number>();
  for (const { state, shipped, days, count } of counts) {
    parcels += count;
    if (state === 'travelling') travelling += count;
    if (state !== 'delivered') continue;
    delivered += count;
    arrivals.set(shipped + days, (arrivals.get(shipped + days) ?? 0) + count);
  }
  const enough = wanted * parcels - ROUNDING;
  let arrived = 0;
  const day = [...arrivals]
    .sort(([a], [b]) => a - b)
    .find(([, count]) => {
      arrived += count;
      return arrived >= enough;
    })?.[0];
  const settled = travelling + toLeave === 0;
  return { wanted, parcels, delivered, settled, ...(day !== undefined && { day }) };
};

/**
 * The moment a cycle is revealed whose share had arrived by the end of `day`: the first evening of the box's habit from
 * the next day on, and never before `notBefore`.
 */
export const deliveredReveal = (
  day: number,
  habit: RevealHabit,
  timeZone: string,
  notBefore: Moment = Number.NEGATIVE_INFINITY,
): Moment => {
  const midnight = day * MS_A_DAY;
  // `evenings` looks for what comes after a moment too; two days before is before the day in every zone.
  const [evening] = evenings(day + 1, midnight - 2 * MS_A_DAY, habit, timeZone, 1) as [Moment];
  return Math.max(evening, notBefore);
};
