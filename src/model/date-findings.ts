/** Dates of a cycle that do not fit together. */
import type { Usable } from '../content/read.ts';
import type { CycleRecord } from '../content/schemas.ts';
import type { ReportFinding } from '../diagnostics/diagnostic.ts';
import { dayNumber, dayOfDate } from '../text/days.ts';
import type { Moment } from './box.ts';
import { dateInZone } from './calendar.ts';

/**
 * Days before its month begins, and after its months end, in which a box still goes out for them. Common practice, no
 * source: April's box is packed in the last days of March, and a late one leaves in the first of May.
 */
const LEEWAY = 14;

interface CycleDates {
  /** The name of its folder. */
  readonly id: string;
  readonly year: number;
  /** From 1 to 12. */
  readonly month: number;
  /** Absent while the parcels have not decided. */
  readonly reveal: Moment | undefined;
}

/** The first day of a month that comes so many after another. */
const firstDayOf = (year: number, month: number, later: number): number => {
  const at = year * 12 + (month - 1) + later;
  return dayNumber(Math.floor(at / 12), (at % 12) + 1, 1) ?? Number.NaN;
};

/**
 * A reveal before the box has left would show it to everybody who waits for it. A folder whose month is not the one in
 * which its box went out is mostly a copy of another whose dates were left.
 */
export const dateFindings = (
  { value: { shipped }, locationOf }: Usable<CycleRecord>,
  { id, year, month, reveal }: CycleDates,
  { timeZone, everyMonths }: { readonly timeZone: string; readonly everyMonths: number },
  report: ReportFinding,
): void => {
  const shippedDay = dayOfDate(shipped);
  const revealed = reveal === undefined ? undefined : dateInZone(reveal, timeZone);
  if (revealed !== undefined && dayOfDate(revealed) < shippedDay)
    report({
      weight: 'must fix',
      rule: 'reveal-before-shipped',
      location: locationOf(['reveal']),
      message: `Unexpected reveal on ${revealed}, expected a day on or after ${shipped}, when the parcels left`,
      fix: 'Mend `reveal` or `shipped`; `reveal: when-delivered` waits for the parcels by itself',
      related: { location: locationOf(['shipped']), message: 'the parcels left here' },
    });
  const from = firstDayOf(year, month, 0) - LEEWAY;
  const to = firstDayOf(year, month, everyMonths) + LEEWAY;
  if (shippedDay >= from && shippedDay < to) return;
  report({
    weight: 'look at',
    rule: 'month-shipped',
    location: locationOf(['shipped']),
    message: `Unexpected day of shipping ${shipped} in the folder ${id}, expected one within ${LEEWAY} days of that month`,
    fix: 'Mend `shipped`, or rename the folder to the month its box went out',
  });
};
