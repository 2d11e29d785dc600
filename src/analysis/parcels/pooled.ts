/** What earlier cycles say of a cycle that is too young to say it by itself. */
import type { ParcelCount } from '../../model/box.ts';
import { after, type Histogram, parcelTallyOf, sizeOf } from './histogram.ts';
import { type Curve, curveOf, type Step } from './incidence.ts';

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
 * A cycle's curve up to `horizon`, and from there on that of earlier cycles: what is on its way after the horizon
 * arrives as those did that had not arrived after as many days, some of which never came. With F(h) and T(h) what had
 * arrived and what was on its way by the horizon, and G the curve of the earlier ones from there on, it is
 * F(h) + T(h) · G; its variance is that of a product, the two being independent: (1 − G)² Var F(h) + T(h)² Var G. How
 * much cycles differ from one another is not in it: limits that come from the pool are narrower than they should be.
 */
export const continued = (own: Histogram, pool: Histogram, horizon: number): Curve => {
  const curve = curveOf(own);
  const steps = curve.steps.filter(({ day }) => day <= horizon);
  const known = steps.at(-1);
  const { lost, returned } = parcelTallyOf(own);
  const all = sizeOf(own);
  const never = all === 0 ? 0 : (lost + returned) / all;
  const travelling = Math.max(0, (known?.missing ?? 1) - never);
  const coming = curveOf(after(pool, horizon));
  return {
    steps: [
      ...steps,
      ...coming.steps.map(
        (step): Step => ({
          ...step,
          missing: (known?.missing ?? 1) - travelling * (1 - step.missing),
          variance: step.missing ** 2 * (known?.variance ?? 0) + travelling ** 2 * step.variance,
        }),
      ),
    ],
    last: Math.max(horizon, pool.at(-1)?.day ?? 0),
  };
};
