/** What earlier cycles say of a cycle that is too young to say it by itself. */
import type { ParcelCount } from '../../model/box.ts';
import type { Curve } from './kaplan-meier.ts';
import { productLimit } from './kaplan-meier.ts';

/**
 * The number of days up to which a cycle is judged by its own parcels: the most that at least half of them have
 * been watched. Beyond it the curve would hang on the few that left early. −1 where there are no parcels. Half is
 * a choice of ours, no source.
 */
export const horizonOf = (counts: readonly ParcelCount[], asOf: number): number => {
  const watched = counts
    .filter(({ shipped }) => shipped <= asOf)
    .map(({ shipped, count }) => ({ age: asOf - shipped, count }))
    .sort((a, b) => b.age - a.age);
  const half = watched.reduce((sum, { count }) => sum + count, 0) / 2;
  let seen = 0;
  for (const { age, count } of watched) {
    seen += count;
    if (seen >= half) return age;
  }
  return -1;
};

/**
 * A cycle's curve up to `horizon`, and from there on the curve of earlier cycles, conditional on what has arrived
 * so far: what still waits after the horizon arrives as those did that still waited after as many days. That is
 * the product limit of the cycle's own days and then of the pool's, and Greenwood's sum goes on in the same way,
 * since the variance of a product of independent factors adds up in the logarithm. How much cycles differ from one
 * another is not in it: limits that come from the pool are narrower than they should be.
 */
export const continued = (own: Curve, pool: Curve, horizon: number): Curve =>
  productLimit(
    [...own.steps.filter(({ day }) => day <= horizon), ...pool.steps.filter(({ day }) => day > horizon)],
    Math.max(horizon, pool.last),
  );
