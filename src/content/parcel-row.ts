/** One row of parcels.csv → one parcel, or why it is none. */

import { dateOfDay } from '../text/days.ts';
import { foldCase } from '../text/fold.ts';
import type { ParcelState } from './parcel-count.ts';
import { type DateReading, dateReader } from './parcel-dates.ts';

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

const LOST = ['lost', 'missing'];
const RETURNED = ['returned', 'return to sender', 'returned to sender'];
/** Words for a parcel that is on its way as it should be. Common practice, no source. */
const TRAVELLING = [
  ...[
    'in transit',
    'transit',
    'on its way',
    'on the way',
    'travelling',
    'shipped',
    'sent',
    'dispatched',
    'despatched',
  ],
  ...[
    'posted',
    'accepted',
    'collected',
    'picked up',
    'sorted',
    'processing',
    'processed',
    'pending',
    'label created',
  ],
  ...['label printed', 'pre transit', 'pre-transit', 'info received', 'information received', 'manifested'],
  ...['arrived at depot', 'at depot', 'departed', 'out for delivery', 'with driver', 'customs cleared'],
];

/** No carrier takes longer, and a mistyped year does. Common practice, no source. */
const MOST_DAYS = 366;

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

const never = (status: string, lost: ReadonlySet<string>, returned: ReadonlySet<string>) =>
  lost.has(status) ? ('lost' as const) : returned.has(status) ? ('returned' as const) : undefined;

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
  const lost = new Set((format.lost ?? LOST).map(foldCase));
  const returned = new Set((format.returned ?? RETURNED).map(foldCase));
  const travelling = new Set([...TRAVELLING, ...(format.travelling ?? [])].map(foldCase));

  return (shippedCell, deliveredCell, statusCell) => {
    if (shippedCell === '')
      return fault(
        'Unexpected row without a shipped date, expected when the parcel left',
        'Write the date, or take the row out',
      );
    const shipped = readDate(shippedCell);
    if ('fault' in shipped) return dateFault('shipped', shippedCell, shipped.fault, form);
    const status = statusCell === '' ? '' : foldCase(statusCell);
    const given: DateReading | undefined = deliveredCell === '' ? undefined : readDate(deliveredCell);
    if (given && 'fault' in given) return dateFault('delivered', deliveredCell, given.fault, form);
    const delivered = given?.day;
    const neverComes = never(status, lost, returned);
    if (delivered !== undefined && delivered < shipped.day)
      return fault(
        `Unexpected delivered date ${dateOfDay(delivered)}, before it was shipped on ${dateOfDay(shipped.day)}`,
        'Mend one of the two dates',
      );
    if (delivered !== undefined && neverComes === 'lost')
      return fault(
        `Unexpected status \`${quoted(status)}\` with a delivered date, expected one or the other`,
        'Take one of the two out',
      );
    if (delivered === undefined && status === 'delivered')
      return fault(
        'Unexpected status `delivered` without a delivered date, expected when it arrived',
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
      ...(delivered === undefined &&
        neverComes === undefined &&
        status !== '' &&
        !travelling.has(status) && { unread: statusCell.trim() }),
    };
  };
};
