/** Carriers and regions side by side, and which of them is behind. */

import type { ParcelCount } from '../../model/box.ts';
import { defined } from '../../text/defined.ts';
import { histogramOf, type ParcelTally, parcelsIn, parcelTallyOf } from './histogram.ts';
import { arrivedBy, curveOf } from './incidence.ts';
import { type Pace, paceOf } from './pace.ts';
import { type Quantile, quantileOf } from './quantile.ts';

/** The parcels of one carrier or region beside all others. */
export interface Group extends ParcelTally {
  /** As the file names it; empty for rows that do not say. */
  readonly name: string;
  readonly parcels: number;
  /** Share that has arrived, 0 to 1, as its curve has it on its last day. */
  readonly share: number;
  /** Day by which half has arrived, and the wanted share. */
  readonly half: Quantile;
  readonly wanted: Quantile;
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
  share: number,
  late: number | undefined,
): readonly Group[] => {
  const byName = new Map<string, ParcelCount[]>();
  for (const one of counts) {
    const own = byName.get(one[key]);
    if (own) own.push(one);
    else byName.set(one[key], [one]);
  }
  if ([...byName.keys()].filter((name) => name !== '').length < 2) return [];
  return [...byName]
    .map(([name, own]): Group => {
      const histogram = histogramOf(own);
      const rest = counts.filter((one) => one[key] !== name);
      const tally = parcelTallyOf(histogram);
      const parcels = parcelsIn(tally);
      const curve = curveOf(histogram);
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
        share: arrivedBy(curve, curve.last),
        half: quantileOf(curve, 0.5),
        wanted: quantileOf(curve, share),
        newest: arrivals.length > 0 ? arrivals.reduce((a, b) => Math.max(a, b)) : undefined,
        overdue,
        pace: paceOf(own, rest, byName.size),
      });
    })
    .sort((a, b) => b.parcels - a.parcels || (a.name < b.name ? -1 : 1));
};
