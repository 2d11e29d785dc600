/** What the clocks of a zone do around a moment: the rules a calendar file has to bring along. */
import { Temporal } from 'temporal-polyfill';
import type { Moment } from '../../model/box.ts';

/** A time during which a zone's offset stays the same. */
export interface Observance {
  /** Local date and time at which it begins, by the clock that held before: `20260329T010000` (RFC 5545 §3.3.5). */
  readonly onset: string;
  /** Offsets from UTC before and from its beginning on, in seconds. */
  readonly from: number;
  readonly to: number;
}

const SECOND = 1e9;

/** `20260329T010000` */
const basicLocal = (local: Temporal.PlainDateTime): string =>
  local.toString({ smallestUnit: 'second' }).replace(/[-:]/g, '');

/** Begins every zone whose clocks have not moved of late; only the moment's own surroundings are meant. */
const LONG_AGO = '19700101T000000';

/** A clock changes at most twice a year, and one that has not for a year does so by a new law. */
const YEAR_OF_DAYS = { days: 366 };

/**
 * The observances of a zone from a year before a moment to a year after it, in order. Where the clock did not change
 * twice in the year before, the first stands for everything until then, and has no change in it. From the IANA rules
 * as the runtime has them.
 */
export const observancesAround = (moment: Moment, timeZone: string): readonly Observance[] => {
  const at = Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(timeZone);
  const begin = at.subtract(YEAR_OF_DAYS);
  const end = at.add(YEAR_OF_DAYS);
  const offset = begin.offsetNanoseconds / SECOND;
  let before = 0;
  const observances: Observance[] = [{ onset: LONG_AGO, from: offset, to: offset }];
  let change = begin.getTimeZoneTransition('next');
  while (change && Temporal.ZonedDateTime.compare(change, end) <= 0) {
    const from = observances.at(-1)?.to ?? offset;
    const to = change.offsetNanoseconds / SECOND;
    const clock = change.toInstant().toZonedDateTimeISO('UTC').toPlainDateTime().add({ seconds: from });
    // Some changes are of a name alone.
    if (from !== to) observances.push({ onset: basicLocal(clock), from, to });
    if (from !== to && change.epochMilliseconds <= moment) before += 1;
    change = change.getTimeZoneTransition('next');
  }
  return before < 2 ? observances : observances.slice(1);
};

/**
 * A moment as the zone's clock shows it, `20260423T190000`; undefined for a time that its clock shows twice. RFC 5545
 * §3.3.5 takes that for the first of them, but not every reader does.
 */
export const localTime = (moment: Moment, timeZone: string): string | undefined => {
  const local = Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(timeZone).toPlainDateTime();
  const read = (disambiguation: 'earlier' | 'later'): Moment =>
    local.toZonedDateTime(timeZone, { disambiguation }).epochMilliseconds;
  return read('earlier') === read('later') ? basicLocal(local) : undefined;
};

/** `20260423T180000Z` (RFC 5545 §3.3.5, form 2) */
export const utcTime = (moment: Moment): string =>
  `${basicLocal(Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO('UTC').toPlainDateTime())}Z`;
