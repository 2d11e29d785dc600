/**
 * A carrier's list nobody has described yet: which column is which, by what its head says and by what is in it. A proposal,
 * to be shown and said yes to. Only words of the trade are known here, and no carrier's own.
 */
import { foldCase } from '../text/fold.ts';
import { csvScanner } from './csv-scanner.ts';
import { dateReader, formsFitting } from './parcel-dates.ts';
import { PARCEL_COLUMNS, type ParcelColumn, type ParcelFormat } from './parcel-row.ts';

/** A list's columns, and which of them is proposed for what. */
export interface ParcelShape {
  /** Heads of all columns, in their order. */
  readonly heads: readonly string[];
  /** A few rows as they stand. */
  readonly rows: readonly (readonly string[])[];
  /** Head of the column for each; absent where none seems to be it. */
  readonly columns: { readonly [column in ParcelColumn]?: string };
  /** Form of its dates, where they are not as 2026-03-19; several where nothing in the list shows which is the month. */
  readonly dates: readonly string[];
}

/** Rows looked at: enough that a day beyond the twelfth shows which number is the month. */
const SAMPLE = 2_000;
const SHOWN = 4;
/** Share of a column's cells that must be dates. Some carriers write a word for what has not arrived. */
const MOSTLY = 0.8;

/** What heads of columns say. Common practice, no source. */
const HEADS: Readonly<Record<ParcelColumn, RegExp>> = {
  delivered: /deliver|arriv|received|zugestellt|livr/,
  shipped: /ship|sent|dispatch|despatch|post|collect|left|created|versand|exp[ée]d/,
  status: /status|state$|^state\b|outcome|result|progress/,
  carrier: /carrier|courier|service|delivered by|carried/,
  region: /region|county|country|state|province|area|zone|destination|city|town/,
  parcel: /tracking|parcel|consignment|shipment (?:no|number|id)|reference|barcode|number|\bid\b/,
};

interface Column {
  readonly at: number;
  readonly head: string;
  readonly cells: readonly string[];
  readonly filled: number;
  readonly distinct: number;
  readonly areDates: boolean;
}

const WORDED = ['DD MMM YYYY', 'D MMM YYYY', 'MMM D YYYY', 'DD-MMM-YYYY', 'YYYY/MM/DD', 'YYYYMMDD'];

const isIso = (cell: string): boolean => /^\d{4}-\d{2}-\d{2}/.test(cell);
const looksLikeDate = (cell: string): boolean =>
  isIso(cell) ||
  formsFitting(cell).length > 0 ||
  WORDED.some((form) => 'day' in dateReader(form, 'UTC')(cell));

const columnOf = (head: string, at: number, rows: readonly (readonly string[])[]): Column => {
  const cells = rows.map((row) => row[at] ?? '').filter(Boolean);
  const sample = cells.slice(0, 200);
  return {
    at,
    head,
    cells,
    filled: cells.length,
    distinct: new Set(cells).size,
    areDates: sample.length > 0 && sample.filter(looksLikeDate).length >= sample.length * MOSTLY,
  };
};

/** Every form that all cells of the date columns have. */
const formsOf = (cells: readonly string[]): readonly string[] => {
  const dated = cells.filter((cell) => looksLikeDate(cell) && !isIso(cell));
  const [first] = dated;
  if (first === undefined) return [];
  const forms = [...formsFitting(first), ...WORDED];
  return forms.filter((form) => {
    const read = dateReader(form, 'UTC');
    return dated.every((cell) => 'day' in read(cell));
  });
};

const chosen = (columns: readonly Column[], rows: number): Partial<Record<ParcelColumn, Column>> => {
  const found: Partial<Record<ParcelColumn, Column>> = {};
  const free = (column: Column): boolean => !Object.values(found).includes(column);
  const byHead = (key: ParcelColumn, may: (column: Column) => boolean): Column | undefined =>
    columns.find((column) => free(column) && foldCase(column.head) === key && may(column)) ??
    columns.find((column) => free(column) && HEADS[key].test(foldCase(column.head)) && may(column));
  const put = (key: ParcelColumn, column: Column | undefined): void => {
    if (column) found[key] = column;
  };
  const dated = columns.filter(({ areDates }) => areDates);
  put(
    'delivered',
    byHead('delivered', ({ areDates }) => areDates),
  );
  put(
    'shipped',
    byHead('shipped', ({ areDates }) => areDates),
  );
  // What left is dated in every row; what has not arrived has no date yet.
  const rest = dated.filter(free).sort((a, b) => b.filled - a.filled);
  if (!found.shipped) put('shipped', rest[0]);
  if (!found.delivered) put('delivered', rest.find(free));
  const isWord = ({ areDates, distinct }: Column): boolean => !areDates && distinct <= Math.max(30, rows / 4);
  put('status', byHead('status', isWord));
  put('carrier', byHead('carrier', isWord));
  put('region', byHead('region', isWord));
  put(
    'parcel',
    byHead('parcel', ({ areDates, distinct, filled }) => !areDates && distinct >= filled * 0.9),
  );
  return found;
};

/** What a list seems to hold; undefined for a text that is no list. */
export const parcelShapeOf = (text: string): ParcelShape | undefined => {
  let heads: readonly string[] = [];
  const rows: string[][] = [];
  const scanner = csvScanner({
    header: (cells) => {
      heads = [...cells];
      return cells.map((_, i) => i);
    },
    row: (cells) => {
      if (rows.length < SAMPLE) rows.push([...cells]);
    },
    unclosed: () => undefined,
  });
  scanner.write(text);
  scanner.end();
  if (heads.length < 2) return undefined;
  const columns = chosen(
    heads.map((head, at) => columnOf(head, at, rows)),
    rows.length,
  );
  const dates = formsOf([...(columns.shipped?.cells ?? []), ...(columns.delivered?.cells ?? [])]);
  return {
    heads,
    rows: rows.slice(0, SHOWN),
    columns: Object.fromEntries(
      PARCEL_COLUMNS.flatMap((key) => {
        const column = columns[key];
        return column ? [[key, column.head]] : [];
      }),
    ),
    dates,
  };
};

/** How a list is described in box.md: what differs from what is expected without a word. */
export const formatOf = (columns: ParcelShape['columns'], dates: string | undefined): ParcelFormat => ({
  ...Object.fromEntries(
    PARCEL_COLUMNS.flatMap((key) => {
      const head = columns[key];
      return head !== undefined && foldCase(head) !== key ? [[key, head]] : [];
    }),
  ),
  ...(dates !== undefined && { dates }),
});
