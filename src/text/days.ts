/** Calendar days as whole numbers, so that the days between two dates are a subtraction. */

/** Milliseconds of a day in UTC, which knows no change of clocks. */
export const MS_A_DAY = 86_400_000;

/**
 * Days since 1970-01-01 of a date in the proleptic Gregorian calendar (ISO 8601); undefined for one that does
 * not exist. `month` counts from 1; years from 1000 to 9999.
 */
export const dayNumber = (year: number, month: number, day: number): number | undefined => {
  if (!(year >= 1000 && year <= 9999 && month >= 1 && month <= 12 && day >= 1 && day <= 31)) return undefined;
  const at = Date.UTC(year, month - 1, day);
  // Date.UTC takes 30 February for 2 March.
  return new Date(at).getUTCDate() === day ? at / MS_A_DAY : undefined;
};

/** `YYYY-MM-DD` of a day number. */
export const dateOfDay = (day: number): string => new Date(day * MS_A_DAY).toISOString().slice(0, 10);

/** ISO 8601 weekday of a day number, Monday 1 to Sunday 7: 1970-01-01 was a Thursday. */
export const weekdayOf = (day: number): number => ((((day + 3) % 7) + 7) % 7) + 1;

/** Day number of a date `YYYY-MM-DD`. Throws for anything else: dates of records are checked before. */
export const dayOfDate = (date: string): number => {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  const number = dayNumber(year, month, day);
  if (number === undefined) throw new Error(`Expected a date, found ${date}`);
  return number;
};
