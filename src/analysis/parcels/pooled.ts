/** What earlier cycles say of a cycle that is too young to say it by itself. */
import type { ParcelCount } from '../../model/box.ts';
import type { Histogram } from './histogram.ts';
import { type Ending, endingsOf } from './incidence.ts';

/**
 * The number of days up to which a cycle is judged by its own parcels: the most that at least half of them have
 * been watched. Beyond it the curve would hang on the few that left early. −1 where none has left. Half is a choice
 * of ours, no source.
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
 * A cycle's endings up to `horizon`, and from there on those of earlier cycles: what waits after the horizon ends as
 * those did that waited as long, some of which never came. How much cycles differ from one another is not in it: limits
 * that come from the pool are narrower than they should be.
 */
export const continued = (own: Histogram, pool: Histogram, horizon: number): readonly Ending[] => [
  ...endingsOf(own).filter(({ day }) => day <= horizon),
  ...endingsOf(pool).filter(({ day }) => day > horizon),
];
