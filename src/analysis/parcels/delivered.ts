/** When the wanted share of a cycle's own parcels had arrived: what a reveal waits for. No estimate enters. */
import type { Moment, ParcelCount, RevealHabit } from '../../model/box.ts';
import { MS_A_DAY } from '../../text/days.ts';
import { forecastOf } from './expected.ts';
import { parcelsIn, tallyOf } from './histogram.ts';
import { evenings } from './reveal.ts';
import { ROUNDING } from './rounding.ts';

/** How much of a list has arrived. Counts are parcels, shares from 0 to 1. */
export interface Delivered {
  /** Every parcel of the list, those that have yet to leave, were lost and were sent back among them. */
  readonly parcels: number;
  /** Those that were lost or sent back. */
  readonly gone: number;
  /** Those that may still arrive and those that have, as a share of all. */
  readonly most: number;
  /** So many are gone that the wanted share can no longer arrive. */
  readonly isOutOfReach: boolean;
  /** The first day by whose end the wanted share had arrived, in days since 1970-01-01. */
  readonly day?: number;
}

/** How far a list of shipments is, as of the day it was read. */
export const deliveredOf = (counts: readonly ParcelCount[], wanted: number): Delivered => {
  const tally = tallyOf(counts);
  const parcels = parcelsIn(tally);
  // By no endings of others nothing is expected, and all is counted.
  const { day } = forecastOf(counts, []).dateOf(wanted);
  const gone = tally.lost + tally.returned;
  return {
    parcels,
    gone,
    most: parcels === 0 ? 1 : (parcels - gone) / parcels,
    isOutOfReach: parcels > 0 && parcels - gone < wanted * parcels - ROUNDING,
    ...(day !== undefined && { day }),
  };
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
