/** The days of a cycle that is begun, by the habit of those before it. Common practice where there is none, no source. */
import { evenings } from '../../analysis/parcels/reveal.ts';
import { WHEN_DELIVERED } from '../../content/schemas.ts';
import type { RevealHabit } from '../../model/box.ts';
import { dateInZone, momentOf, monthName } from '../../model/calendar.ts';
import { dateOfDay, dayOfDate, weekdayOf } from '../../text/days.ts';
import type { KnownBox, KnownCycle } from './known-box.ts';

/** Days from the parcels' leaving to the reveal where nobody has revealed yet. Common practice, no source. */
const DAYS_TO_REVEAL = 14;
const DEFAULT_TIME = '19:00';

/** The day in a zone at a moment (milliseconds since 1970), `YYYY-MM-DD`. */
export const todayIn = (timeZone: string, now: number): string => dateInZone(now, timeZone);

/** The month that comes so many after another, both as `2026-03`. */
export const laterMonth = (month: string, later: number): string => {
  const [year = 0, number = 1] = month.split('-').map(Number);
  const at = year * 12 + number - 1 + later;
  return `${String(Math.floor(at / 12)).padStart(4, '0')}-${String((at % 12) + 1).padStart(2, '0')}`;
};

/** The month that is next in a box: by its cadence after the last one that stands, or this month. `today` is `YYYY-MM-DD`. */
export const nextMonth = ({ months, everyMonths }: KnownBox, today: string): string => {
  const last = [...months].sort().at(-1);
  return last === undefined ? today.slice(0, 7) : laterMonth(last, everyMonths);
};

/** "November 2026" of `2026-11`, in the language of the questions. */
export const monthInWords = (month: string): string =>
  monthName({ year: Number(month.slice(0, 4)), month: Number(month.slice(5)) }, 'en-GB');

/** The nearest cycle before a month. */
export const cycleBefore = ({ cycles }: KnownBox, month: string): KnownCycle | undefined =>
  cycles.filter(({ id }) => id < month).at(-1);

const firstDayOf = (month: string): number => dayOfDate(`${month}-01`);

/** The day in a month that another has in its own: the first Tuesday after a first Tuesday. */
const sameDayIn = (month: string, before: KnownCycle): number => {
  const [first, day] = [firstDayOf(month), dayOfDate(before.shipped)];
  const offset = day - firstDayOf(before.id);
  const towards = (from: number): number => from + ((weekdayOf(day) - weekdayOf(from) + 7) % 7);
  // Within its month it is counted in weeks; a box that leaves before its month does so as near to it as the last one.
  return offset >= 0 ? towards(first) + 7 * Math.floor(offset / 7) : towards(first + offset - 3);
};

/** The first day of a month on which most post offices take parcels. */
const firstWorkday = (month: string): number => {
  const first = firstDayOf(month);
  const weekday = weekdayOf(first);
  return weekday > 5 ? first + 8 - weekday : first;
};

/** The day on which the parcels of a month leave, `YYYY-MM-DD`. */
export const proposeShipped = (box: KnownBox, month: string): string => {
  const before = cycleBefore(box, month);
  return dateOfDay(before ? sameDayIn(month, before) : firstWorkday(month));
};

const timeOf = (moment: number, timeZone: string): string =>
  new Intl.DateTimeFormat('en-GB', { timeStyle: 'short', hourCycle: 'h23', timeZone }).format(moment);

/** When a cycle may be shown that left on a day: `2026-03-19T19:00`, or that the parcels decide. */
export const proposeReveal = (box: KnownBox, month: string, shipped: string): string => {
  const before = cycleBefore(box, month);
  if (before?.isWhenDelivered) return WHEN_DELIVERED;
  const { timeZone } = box;
  const last = before?.reveal;
  const lastDay = last === undefined ? undefined : dayOfDate(dateInZone(last, timeZone));
  const time = box.habit.time ?? (last === undefined ? DEFAULT_TIME : timeOf(last, timeZone));
  const weekdays = box.habit.weekdays ?? (lastDay === undefined ? undefined : [weekdayOf(lastDay)]);
  const habit: RevealHabit = { time, ...(weekdays && { weekdays }) };
  const days = before && lastDay !== undefined ? lastDay - dayOfDate(before.shipped) : DAYS_TO_REVEAL;
  const from = dayOfDate(shipped) + Math.max(0, days);
  const midnight = momentOf(`${dateOfDay(from)}T00:00`, timeZone);
  const [evening] = midnight === undefined ? [] : evenings(from, midnight - 1, habit, timeZone, 1);
  return `${evening === undefined ? dateOfDay(from) : dateInZone(evening, timeZone)}T${time}`;
};
