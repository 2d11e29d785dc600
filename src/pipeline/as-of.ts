/** What `--as-of` may say. */
import type { Moment } from '../model/box.ts';
import { momentOf } from '../model/calendar.ts';

/** A moment that may depend on the box's time zone, which is known only once box.md is read. */
export type AsOf = Moment | ((timeZone: string) => Moment);

/** The moment that is meant, once the box's time zone is known. */
export const momentFor = (asOf: AsOf, timeZone: string): Moment =>
  typeof asOf === 'number' ? asOf : asOf(timeZone);

const DATE = /^\d{4}-\d{2}-\d{2}$/;
const LOCAL = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/;
const WITH_OFFSET = /^(\d{4}-\d{2}-\d{2})T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/;

const inZone = (local: string): AsOf | undefined => {
  if (momentOf(local, 'UTC') === undefined) return undefined;
  return (timeZone) => {
    const moment = momentOf(local, timeZone) ?? momentOf(local, 'UTC');
    if (moment === undefined) throw new Error(`A checked date-time must give a moment, found ${local}`);
    return moment;
  };
};

/**
 * The moment an ISO 8601 text names; undefined when it names none. A date alone is the last second of that
 * day, so that what was revealed on it counts as revealed. Without an offset it is local in the box's zone.
 */
export const readAsOf = (text: string): AsOf | undefined => {
  if (DATE.test(text)) return inZone(`${text}T23:59:59`);
  if (LOCAL.test(text)) return inZone(text);
  const day = WITH_OFFSET.exec(text)?.[1];
  // Date.parse takes 31 February for 3 March.
  if (day === undefined || momentOf(`${day}T00:00`, 'UTC') === undefined) return undefined;
  const moment = Date.parse(text);
  return Number.isNaN(moment) ? undefined : moment;
};
