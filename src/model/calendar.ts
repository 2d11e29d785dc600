/** Moments, dates and months, in the box's time zone and language. */
import { Temporal } from 'temporal-polyfill';
import type { Cycle, Moment, PlainDate } from './box.ts';
import { type OpenCycle, revealedAt } from './seal.ts';

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

/** "19 March 2026" */
export const longDate = (date: PlainDate, lang: string): string =>
  new Intl.DateTimeFormat(lang, { dateStyle: 'long', timeZone: 'UTC' }).format(
    Temporal.PlainDate.from(date).toZonedDateTime('UTC').epochMilliseconds,
  );

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

/** What a cycle is sealed until, in English for the owner's papers: "19 March 2026", "its parcels have arrived". */
export const revealDay = ({ reveal }: Pick<Cycle, 'reveal'>, timeZone: string, lang: string): string =>
  reveal === undefined ? 'its parcels have arrived' : longDate(dateInZone(reveal, timeZone), lang);

/** "March 2026"; `month` from 1 to 12. */
export const monthName = (
  { year, month }: { readonly year: number; readonly month: number },
  lang: string,
): string =>
  new Intl.DateTimeFormat(lang, { month: 'long', year: 'numeric', timeZone: 'UTC' }).format(
    Date.UTC(year, month - 1, 1),
  );

/** ISO 8601 in UTC: "2026-03-19T19:00:00Z". */
export const isoInstant = (moment: Moment): string =>
  Temporal.Instant.fromEpochMilliseconds(moment).toString();

/** The day a cycle's article last changed: its reveal, or a later day that its record states. */
export const changedOn = (cycle: OpenCycle, timeZone: string): PlainDate => {
  const { updated = '' } = cycle;
  const revealed = dateInZone(revealedAt(cycle), timeZone);
  // ISO 8601 dates sort as texts.
  return [updated, revealed].sort().at(-1) ?? revealed;
};

/** The moment a cycle's article last changed; a record states the day alone, which is taken at noon. */
export const changedAt = (cycle: OpenCycle, timeZone: string): Moment =>
  Math.max(revealedAt(cycle), (cycle.updated && momentOf(`${cycle.updated}T12:00`, timeZone)) || 0);

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
