/**
 * Parcels in days of delivery. At a weekend nobody's parcels come: in days of the calendar what left on a Thursday is
 * slower than what left on a Monday, and on a Sunday every carrier seems to stand still.
 */
import type { ParcelCount } from '../../model/box.ts';
import { weekdayOf } from '../../text/days.ts';

const [FRIDAY, SATURDAY, SUNDAY] = [5, 6, 7] as const;

/** A day with fewer of the arrivals than this is one of rest; a day like any other has one in seven. A choice of ours. */
const LEAST_SHARE = 1 / 20;

/**
 * The weekdays of rest by the arrivals of a list: Saturday and Sunday, or Friday and Saturday, or one of them. Of another
 * weekday few arrivals say only that none was due yet.
 */
const restDays = (counts: readonly ParcelCount[]): ReadonlySet<number> => {
  const arrivals = new Map<number, number>();
  let all = 0;
  for (const { state, shipped, days, count } of counts) {
    if (state !== 'delivered') continue;
    const weekday = weekdayOf(shipped + days);
    arrivals.set(weekday, (arrivals.get(weekday) ?? 0) + count);
    all += count;
  }
  const isQuiet = (weekday: number): boolean => (arrivals.get(weekday) ?? 0) < all * LEAST_SHARE;
  return new Set([isQuiet(SUNDAY) ? SUNDAY : FRIDAY, SATURDAY].filter(isQuiet));
};

/** The same parcels, their days counted without those of rest. */
export const inDeliveryDays = (counts: readonly ParcelCount[]): readonly ParcelCount[] => {
  const rest = restDays(counts);
  /** Days of delivery from 1970-01-02 up to the end of a day. */
  const upTo = (day: number): number => {
    const weeks = Math.floor(day / 7);
    let sum = weeks * (7 - rest.size);
    for (let one = weeks * 7 + 1; one <= day; one += 1) if (!rest.has(weekdayOf(one))) sum += 1;
    return sum;
  };
  return counts.map((one) => {
    const shipped = upTo(one.shipped);
    return { ...one, shipped, days: upTo(one.shipped + one.days) - shipped };
  });
};
