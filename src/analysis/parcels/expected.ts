/**
 * What share of a list's parcels will have arrived by a date. What has arrived is counted; what is on its way is
 * expected as those arrived that had waited as long; what was lost or sent back never comes.
 */
import type { ParcelCount } from '../../model/box.ts';
import { defined } from '../../text/defined.ts';
import { type Curve, curveBy, type Ending, type Step, stepAt, Z } from './incidence.ts';
import { ROUNDING } from './rounding.ts';

/** Share arrived, 0 to 1, with its 95 % limits where it is not counted. */
export interface ArrivedShare {
  readonly share: number;
  readonly lower?: number;
  readonly upper?: number;
}

/** A date in days since 1970-01-01, with its 95 % interval. */
export interface ExpectedDate {
  /** Absent where the share is not expected to arrive. */
  readonly day?: number;
  /** A bound that the limits do not come to is absent. */
  readonly lower?: number;
  readonly upper?: number;
}

/** What is expected of one list of parcels. */
export interface Forecast {
  /** The share arrived by the end of a date. */
  readonly by: (date: number) => ArrivedShare;
  /** The first date by whose end a share has arrived. */
  readonly dateOf: (share: number) => ExpectedDate;
}

/** Parcels that have yet to arrive: their day of leaving, and how long they have waited, −1 for not yet. */
interface Open {
  readonly shipped: number;
  readonly waited: number;
  readonly count: number;
}

/**
 * Variance of the chance that a parcel arrives: the curve's own, and never less than that of a share in which half a
 * parcel more arrived and half a parcel more did not (Jeffreys), because a curve on which all arrived has none.
 */
const chanceVariance = ({ missing, variance }: Step, watched: number): number => {
  const chance = (watched * (1 - missing) + 0.5) / (watched + 1);
  return Math.max(variance, (chance * (1 - chance)) / (watched + 1));
};

/** The forecast of parcels by the endings of those that tell it. */
export const forecastOf = (counts: readonly ParcelCount[], endings: readonly Ending[]): Forecast => {
  const arrivals = new Map<number, number>();
  const open = new Map<string, Open>();
  let parcels = 0;
  for (const { state, shipped, days, count } of counts) {
    parcels += count;
    if (state === 'delivered') arrivals.set(shipped + days, (arrivals.get(shipped + days) ?? 0) + count);
    if (state !== 'travelling' && state !== 'toLeave') continue;
    const waited = state === 'toLeave' ? -1 : days;
    const key = `${shipped} ${waited}`;
    open.set(key, { shipped, waited, count: count + (open.get(key)?.count ?? 0) });
  }
  /** The curve of what has waited so many days, made once. */
  const curves = new Map<number, { readonly curve: Curve; readonly watched: number }>();
  const curveAfter = (waited: number): { readonly curve: Curve; readonly watched: number } => {
    const known = curves.get(waited);
    if (known) return known;
    const later = endings.filter(({ day }) => day > waited);
    const made = { curve: curveBy(later, later.at(-1)?.day ?? 0), watched: later[0]?.atRisk ?? 0 };
    curves.set(waited, made);
    return made;
  };

  const by = (date: number): ArrivedShare => {
    if (parcels === 0) return { share: 0 };
    let [arrived, expected, noise, doubt] = [0, 0, 0, 0];
    for (const [day, count] of arrivals) if (day <= date) arrived += count;
    let waiting = 0;
    for (const { shipped, waited, count } of open.values()) {
      waiting += count;
      const { curve, watched } = curveAfter(waited);
      const step = stepAt(curve, date - shipped);
      if (!step) continue;
      const chance = 1 - step.missing;
      const variance = chanceVariance(step, watched);
      expected += count * chance;
      // Each parcel has its own luck; what the curve is wrong about it is wrong about for all of them.
      noise += count * Math.max(chance * step.missing, variance);
      doubt += count * Math.sqrt(variance);
    }
    const share = (arrived + expected) / parcels;
    if (expected === 0) return { share };
    const spread = Z * Math.sqrt(noise + doubt ** 2);
    return {
      share,
      lower: Math.max(arrived, arrived + expected - spread) / parcels,
      upper: Math.min(arrived + waiting, arrived + expected + spread) / parcels,
    };
  };

  const dateOf = (share: number): ExpectedDate => {
    const dates = new Set(arrivals.keys());
    for (const { shipped, waited } of open.values())
      for (const { day } of endings) if (day > waited) dates.add(shipped + day);
    const found: { day?: number; lower?: number; upper?: number } = {};
    for (const date of [...dates].sort((a, b) => a - b)) {
      const at = by(date);
      const enough = share - ROUNDING;
      if ((at.upper ?? at.share) >= enough) found.lower ??= date;
      if (at.share >= enough) found.day ??= date;
      if ((at.lower ?? at.share) >= enough) {
        found.upper = date;
        break;
      }
    }
    return defined(found);
  };
  return { by, dateOf };
};
