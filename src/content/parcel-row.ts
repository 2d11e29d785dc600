/** One row of parcels.csv → one parcel, or why it is none. */

import { dateOfDay } from '../text/days.ts';
import { foldCase } from '../text/fold.ts';
import type { ParcelState } from './parcel-count.ts';
import { type DateReading, dateReader } from './parcel-dates.ts';
import { type StatusSense, senseOfStatus } from './parcel-statuses.ts';

/** Columns of parcels.csv by the names they have unless box.md gives others. */
export const PARCEL_COLUMNS = ['shipped', 'delivered', 'status', 'carrier', 'region', 'parcel'] as const;
/** One of them. */
export type ParcelColumn = (typeof PARCEL_COLUMNS)[number];

/** What box.md says of the files, each where it differs from what is expected. */
export type ParcelFormat = { readonly [column in ParcelColumn]?: string | undefined } & {
  /** Form of the dates, `DD/MM/YYYY`; ISO 8601 without it. */
  readonly dates?: string | undefined;
  /** Words of the status column that say so. */
  readonly lost?: readonly string[] | undefined;
  readonly returned?: readonly string[] | undefined;
  readonly travelling?: readonly string[] | undefined;
};

/** What a row says. */
type RowReading =
  | {
      readonly kind: 'parcel';
      /** Days since 1970-01-01. */
      readonly shipped: number;
      readonly days: number;
      readonly state: ParcelState;
      /** Its status, where that is a word that no rule reads and nothing else says what became of it. */
      readonly unread?: string;
      /** Its status says that it is on its way, beside a date of arrival. */
      readonly contradicted?: boolean;
      /** It left or arrived after the day as of which the file is read, and has yet to as of that day. */
      readonly later: boolean;
    }
  | {
      readonly kind: 'fault';
      readonly message: string;
      readonly fix: string;
      /** The cell that is no date, and why. */
      readonly date?: { readonly cell: string; readonly why: 'shape' | 'none' | 'swapped' };
    };

/** No carrier takes longer, and a mistyped year does. Common practice, no source. */
const MOST_DAYS = 366;

/** Statuses remembered. Beyond, all are forgotten and read anew. */
const MOST_STATUSES = 500;

/** A word where a date of arrival would be says that there is none: "not yet", "—". It is read as a status. */
const isWord = (cell: string): boolean => cell !== '' && cell.length <= 40 && !/\d/.test(cell);
const SAYS_NOTHING = /^(?:[-–—.?*\s]+|n\/?a|none|null|nil|tbc|tbd|unknown|no date)$/i;

const fault = (message: string, fix: string): RowReading => ({ kind: 'fault', message, fix });

/** A cell as a message may quote it: what is no date may be anything. */
const quoted = (cell: string): string => (cell.length > 40 ? `${cell.slice(0, 39)}…` : cell);

const dateFault = (
  which: string,
  cell: string,
  why: 'shape' | 'none' | 'swapped',
  form: string,
): RowReading => ({
  kind: 'fault',
  message: `Unexpected ${which} date \`${quoted(cell)}\`, expected ${why === 'shape' ? form : `a date that exists, as ${form}`}`,
  fix: why === 'shape' ? `Write it as ${form}` : 'Mend the date',
  date: { cell, why },
});

/** Statuses by what box.md says of them, and else by their words. Few are different: each is read once. */
const statusReader = ({ lost, returned, travelling }: ParcelFormat) => {
  const told = new Map<string, StatusSense>([
    ...(travelling ?? []).map((word) => [foldCase(word), 'travelling'] as const),
    ...(returned ?? []).map((word) => [foldCase(word), 'returned'] as const),
    ...(lost ?? []).map((word) => [foldCase(word), 'lost'] as const),
  ]);
  const read = new Map<string, StatusSense | undefined>();
  return (status: string): StatusSense | undefined => {
    if (status === '') return undefined;
    if (!read.has(status)) {
      const sense = told.get(foldCase(status)) ?? senseOfStatus(status);
      // Where box.md says which words mean that it is lost or sent back, no others do.
      const isOverruled =
        (sense === 'lost' && lost !== undefined) || (sense === 'returned' && returned !== undefined);
      if (read.size >= MOST_STATUSES) read.clear();
      read.set(status, isOverruled && !told.has(foldCase(status)) ? undefined : sense);
    }
    return read.get(status);
  };
};

/**
 * Reads rows. `asOf` is a day number: what is dated after it has not happened yet. A parcel that was sent back
 * never arrived, whatever its dates say, since carriers date its way home as delivered.
 */
export const rowReader = (
  format: ParcelFormat,
  timeZone: string,
  asOf: number,
): ((shippedCell: string, deliveredCell: string, statusCell: string) => RowReading) => {
  const readDate = dateReader(format.dates, timeZone);
  const form = format.dates ?? 'YYYY-MM-DD';
  const senseOf = statusReader(format);

  return (shippedCell, arrivedCell, ownStatus) => {
    const isEmpty = SAYS_NOTHING.test(arrivedCell);
    const isWorded = isEmpty || (isWord(arrivedCell) && senseOf(arrivedCell) !== undefined);
    const deliveredCell = isWorded ? '' : arrivedCell;
    const statusCell = ownStatus === '' && isWorded && !isEmpty ? arrivedCell : ownStatus;
    if (shippedCell === '')
      return fault(
        'Unexpected row without a shipped date, expected when the parcel left',
        'Write the date, or take the row out',
      );
    const shipped = readDate(shippedCell);
    if ('fault' in shipped) return dateFault('shipped', shippedCell, shipped.fault, form);
    const sense = senseOf(statusCell);
    const given: DateReading | undefined = deliveredCell === '' ? undefined : readDate(deliveredCell);
    if (given && 'fault' in given) return dateFault('delivered', deliveredCell, given.fault, form);
    const delivered = given?.day;
    const neverComes = sense === 'lost' || sense === 'returned' ? sense : undefined;
    if (delivered !== undefined && delivered < shipped.day)
      return fault(
        `Unexpected delivered date ${dateOfDay(delivered)}, before it was shipped on ${dateOfDay(shipped.day)}`,
        'Mend one of the two dates',
      );
    if (delivered !== undefined && neverComes === 'lost')
      return fault(
        `Unexpected status \`${quoted(foldCase(statusCell))}\` with a delivered date, expected one or the other`,
        'Take one of the two out',
      );
    if (delivered === undefined && sense === 'delivered')
      return fault(
        'Unexpected status that says it arrived, without a delivered date, expected when it arrived',
        'Write the date',
      );
    if (shipped.day > asOf)
      return { kind: 'parcel', shipped: shipped.day, days: 0, state: 'toLeave', later: true };
    const arrived = neverComes === undefined && delivered !== undefined && delivered <= asOf;
    const days = Math.min(delivered ?? asOf, asOf) - shipped.day;
    if (neverComes === undefined && days > MOST_DAYS)
      return arrived
        ? fault(
            `Unexpected ${days} days on its way, expected at most ${MOST_DAYS}`,
            'Mend the year of one of the dates',
          )
        : fault(
            `Unexpected parcel on its way since ${dateOfDay(shipped.day)}, expected at most ${MOST_DAYS} days`,
            'Mend the date, or write in the status that it is lost',
          );
    return {
      kind: 'parcel',
      shipped: shipped.day,
      days: Math.min(days, MOST_DAYS),
      state: arrived ? 'delivered' : (neverComes ?? 'travelling'),
      later: !arrived && neverComes === undefined && delivered !== undefined,
      ...(arrived && sense === 'travelling' && { contradicted: true }),
      ...(delivered === undefined &&
        neverComes === undefined &&
        statusCell !== '' &&
        sense === undefined && { unread: statusCell.trim() }),
    };
  };
};
