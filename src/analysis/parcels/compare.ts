/** Carriers and regions side by side, and which of them is behind. */

import type { ParcelCount } from '../../model/box.ts';
import { defined } from '../../text/defined.ts';
import { inDeliveryDays } from './delivery-days.ts';
import { histogramOf, type ParcelTally, parcelsIn, tallyOf } from './histogram.ts';
import { curveOf, dayOfShare } from './incidence.ts';
import { type Pace, paceOf } from './pace.ts';

/** The parcels of one carrier or region beside all others. */
export interface Group extends ParcelTally {
  /** As the file names it; empty for rows that do not say. */
  readonly name: string;
  readonly parcels: number;
  /** Share that has arrived, 0 to 1, counted. */
  readonly share: number;
  /** Days since they left by which half of them arrive, by its curve; absent where it does not come to it. */
  readonly half?: number;
  /** Day of its newest arrival, in days since 1970-01-01. */
  readonly newest?: number;
  readonly overdue: number;
  readonly pace: Pace;
}

/**
 * Groups by carrier or by region, the largest first. Empty where the file names fewer than two. `late` is the
 * number of days after which a parcel is overdue.
 */
export const compareBy = (
  key: 'carrier' | 'region',
  counts: readonly ParcelCount[],
  late: number | undefined,
): readonly Group[] => {
  const byName = new Map<string, ParcelCount[]>();
  for (const one of counts) {
    const own = byName.get(one[key]);
    if (own) own.push(one);
    else byName.set(one[key], [one]);
  }
  if ([...byName.keys()].filter((name) => name !== '').length < 2) return [];
  const worked = inDeliveryDays(counts);
  return [...byName]
    .map(([name, own]): Group => {
      const tally = tallyOf(own);
      const parcels = parcelsIn(tally);
      const mine = worked.filter((one) => one[key] === name);
      const theirs = worked.filter((one) => one[key] !== name);
      const arrivals = own
        .filter(({ state }) => state === 'delivered')
        .map(({ shipped, days }) => shipped + days);
      const overdue = own
        .filter(({ state, days }) => state === 'travelling' && late !== undefined && days > late)
        .reduce((sum, { count }) => sum + count, 0);
      return defined({
        name,
        parcels,
        ...tally,
        share: tally.delivered / parcels,
        half: dayOfShare(curveOf(histogramOf(own)), 0.5),
        newest: arrivals.length > 0 ? arrivals.reduce((a, b) => Math.max(a, b)) : undefined,
        overdue,
        pace: paceOf(mine, theirs, byName.size),
      });
    })
    .sort((a, b) => b.parcels - a.parcels || (a.name < b.name ? -1 : 1));
};
