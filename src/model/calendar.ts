/** Moments, dates and months, in the box's time zone and language. */
import { Temporal } from 'temporal-polyfill';
import { longDate, longMonth } from '../text/long-date.ts';
import { remembered } from '../text/remembered.ts';
import type { Cycle, Moment, PlainDate } from './box.ts';
import { type OpenBox, type OpenCycle, revealedAt } from './seal.ts';

/**
 * The moment of an ISO 8601 date-time, local in the zone unless it bears an offset. A time that a change of
 * clocks skips is taken an hour later, one that comes twice the first time (Temporal's "compatible").
 * Undefined for anything that is not such a date-time or does not exist.
 */
export const momentOf = (text: string, timeZone: string): Moment | undefined => {
  try {
    if (/(?:Z|[+-]\d{2}:?\d{2})$/.test(text)) return Temporal.Instant.from(text).epochMilliseconds;
    return Temporal.PlainDateTime.from(text, { overflow: 'reject' }).toZonedDateTime(timeZone)
      .epochMilliseconds;
  } catch {
    return undefined;
  }
};

/** The calendar date that a moment falls on in the zone. */
export const dateInZone = (moment: Moment, timeZone: string): PlainDate =>
  Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(timeZone).toPlainDate().toString();

/** "19 March 2026, 19:00" in the zone. */
export const longTime = (moment: Moment, timeZone: string, lang: string): string => {
  const time = new Intl.DateTimeFormat(lang, { timeStyle: 'short', hourCycle: 'h23', timeZone }).format(
    moment,
  );
  return `${longDate(dateInZone(moment, timeZone), lang)}, ${time}`;
};

/** The first moment of the day after a date, in the zone. */
export const endOfDay = (date: PlainDate, timeZone: string): Moment =>
  Temporal.PlainDate.from(date).add({ days: 1 }).toZonedDateTime(timeZone).epochMilliseconds;

/** The day of a reveal in the zone, "19 March 2026"; undefined while the cycle waits for its parcels. */
export const revealDay = (
  { reveal }: Pick<Cycle, 'reveal'>,
  timeZone: string,
  lang: string,
): string | undefined => (reveal === undefined ? undefined : longDate(dateInZone(reveal, timeZone), lang));

/** The month of a cycle, "March 2026"; `month` from 1 to 12. */
export const monthName = (
  { year, month }: { readonly year: number; readonly month: number },
  lang: string,
): string => longMonth(year, month, lang);

/** The month by itself, "March"; one past December is of the next year. */
export const monthAlone = (
  { year, month }: { readonly year: number; readonly month: number },
  lang: string,
): string =>
  new Intl.DateTimeFormat(lang, { month: 'long', timeZone: 'UTC' }).format(Date.UTC(year, month - 1, 1));

/** "Thursday 23 April", as a day is said, in the zone. */
export const spokenDay = (moment: Moment, timeZone: string, lang: string): string =>
  new Intl.DateTimeFormat(lang, { weekday: 'long', day: 'numeric', month: 'long', timeZone }).format(moment);

/** ISO 8601 in UTC: "2026-03-19T19:00:00Z". */
export const isoInstant = (moment: Moment): string =>
  Temporal.Instant.fromEpochMilliseconds(moment).toString();

/** A moment by the clocks of a zone, as a record has it: `2026-03-19T19:00`. */
export const localMinute = (moment: Moment, timeZone: string): string =>
  Temporal.Instant.fromEpochMilliseconds(moment)
    .toZonedDateTimeISO(timeZone)
    .toPlainDateTime()
    .toString({ smallestUnit: 'minute' });

/** The day a cycle's article last changed: its reveal, or a later day that its record states. */
export const changedOn = (cycle: OpenCycle, timeZone: string): PlainDate => {
  const { updated = '' } = cycle;
  const revealed = dateInZone(revealedAt(cycle), timeZone);
  // ISO 8601 dates sort as texts.
  return [updated, revealed].sort().at(-1) ?? revealed;
};

/** Each cycle's `changedOn` in the box's own zone, by its id: lists of items ask for the same few days again and again. */
const changedDays = remembered(
  ({ cycles, settings }: OpenBox): ReadonlyMap<string, PlainDate> =>
    new Map(cycles.map((cycle) => [cycle.id, changedOn(cycle, settings.timeZone)])),
);

/** The latest of some cycles' days in a box, by their ids; undefined for none. */
export const latestChange = (box: OpenBox, ids: readonly string[]): PlainDate | undefined => {
  const days = changedDays(box);
  return ids
    .map((id) => days.get(id) ?? '')
    .sort()
    .at(-1);
};

/** The moment a cycle's article last changed; a record states the day alone, which is taken at noon. */
export const changedAt = (cycle: OpenCycle, timeZone: string): Moment =>
  Math.max(revealedAt(cycle), (cycle.updated && momentOf(`${cycle.updated}T12:00`, timeZone)) || 0);

/**
 * When a cycle's article last changed, as ISO 8601: the day that its record states where that is after the reveal's,
 * else a moment that is never before the reveal.
 */
export const lastChanged = (cycle: OpenCycle, timeZone: string): string => {
  const { updated } = cycle;
  const later = updated !== undefined && updated > dateInZone(revealedAt(cycle), timeZone);
  return later ? updated : isoInstant(changedAt(cycle, timeZone));
};

/** The day that a cycle's record states as its article's last change; undefined where that is before the reveal. */
export const mendedOn = (cycle: OpenCycle, timeZone: string): PlainDate | undefined =>
  cycle.updated === changedOn(cycle, timeZone) ? cycle.updated : undefined;

/** RFC 5322 §3.3, in the zone's own time: "Thu, 19 Mar 2026 19:00:00 +0000". */
export const mailDate = (moment: Moment, timeZone: string): string => {
  const zoned = Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(timeZone);
  const part = (options: Intl.DateTimeFormatOptions): string =>
    new Intl.DateTimeFormat('en-US', { ...options, timeZone }).format(moment);
  const time = zoned.toPlainTime().toString({ smallestUnit: 'second' });
  // An offset has hours and minutes there; seconds are of the nineteenth century.
  const offset = zoned.offset.slice(0, 6).replace(':', '');
  return `${part({ weekday: 'short' })}, ${zoned.day} ${part({ month: 'short' })} ${zoned.year} ${time} ${offset}`;
};
