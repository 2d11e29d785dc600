/**
 * A carrier's list nobody has described yet: which column is which, by what its head says and by what is in it. A proposal,
 * to be shown and said yes to. Only words of the trade are known here, and no carrier's own.
 */
import { foldCase, foldWords } from '../text/fold.ts';
import { csvScanner } from './csv-scanner.ts';
import { dateReader, formsFitting, numberedDay } from './parcel-dates.ts';
import { PARCEL_COLUMNS, type ParcelColumn, type ParcelFormat } from './parcel-row.ts';

/** A list's columns, and which of them is proposed for what. */
export interface ParcelShape {
  /** Heads of all columns, in their order. */
  readonly heads: readonly string[];
  /** A few rows as they stand. */
  readonly rows: readonly (readonly string[])[];
  /** Head of the column for each; absent where none seems to be it. */
  readonly columns: { readonly [column in ParcelColumn]?: string };
  /** Whether it has a row for each event on the way, and so several a parcel. */
  readonly isOfEvents: boolean;
  /** Form of its dates, where they are not as 2026-03-19; several where nothing in the list shows which is the month. */
  readonly dates: readonly string[];
}

/** Rows looked at: enough that a day beyond the twelfth shows which number is the month. */
const SAMPLE = 2_000;
const SHOWN = 4;
/** Share of a column's cells that must be dates. Some carriers write a word for what has not arrived. */
const MOSTLY = 0.8;

/** What heads of columns say, without accents and in small letters, in the languages that lists come in. Common practice, no source. */
const HEADS: Readonly<Record<ParcelColumn, RegExp>> = {
  delivered:
    /deliver|dlv|distribu|arriv|received|zugestellt|zustell|geliefert|livr|remis le|recu|entreg|llegada|consegn|arrivo|bezorg|afgelever|lever|ankom|mottag|dorecz|dostarcz|odbior|chegada|配達|到着|お届け/,
  shipped:
    /ship|pick ?up|pris en charge|afsend|sendt|fulfil|sent|dispatch|despatch|post|collect|left|created|manifest|versand|versendet|verschickt|abgang|aufgabe|exped|envoi|envoy|envio|salida|spedi|partenza|verzend|verzonden|verstuurd|skick|avsan|nadani|nadan|wysyl|wysl|saida|発送|出荷/,
  status:
    /status|\bevent\b|evenement|ereignis|evento|handelse|zdarzenie|state$|^state\b|outcome|result|progress|statut|etat|estado|stato|stand$|tillstand|situacao|状況|状態|ステータス/,
  carrier:
    /carrier|courier|service|delivered by|carried|dienstleister|spediteur|transporteur|transportista|corriere|vervoerder|transportor|przewoznik|kurier|transportadora|運送|配送業者/,
  region:
    /region|county|country|state|province|area|zone|destination|city|town|bundesland|\bland$|pays|pais|paese|provinc|provinz|kraj|woj|地域|都道府県/,
  parcel:
    /tracking|parcel|consignment|shipment|reference|\bref\b|barcode|number|\bid\b|sendung|paket|colis|suivi|envio|guia|spedizione|collo|zending|kolli|forsandelse|przesylk|paczk|encomenda|追跡|伝票/,
};
/** A day that was hoped for is no day on which anything happened. */
const HOPED =
  /expect|estimat|\beta\b|\bdue\b|promis|planned|schedul|target|latest|voraussicht|geplant|erwartet|prevu|estime|previst|estimad|stimat|verwacht|gepland|beraknad|forvantad|planowan|przewidywan|予定/;

const bareHead = (head: string): string => foldWords(head).replace(/_/g, ' ');

interface Column {
  readonly at: number;
  readonly head: string;
  readonly cells: readonly string[];
  readonly filled: number;
  readonly distinct: number;
  readonly areDates: boolean;
}

const WORDED = [
  ...[
    'DD MMM YYYY',
    'D MMM YYYY',
    'D. MMM YYYY',
    'MMM D YYYY',
    'MMM D, YYYY',
    'DD-MMM-YYYY',
    'DD-MMM-YY',
    'DD MMM YY',
  ],
  ...['YYYY/MM/DD', 'YYYY.MM.DD', 'YYYYMMDD'],
];

const isIso = (cell: string): boolean => /^\d{4}-\d{2}-\d{2}/.test(cell);
const looksLikeDate = (cell: string): boolean =>
  isIso(cell) ||
  formsFitting(cell).length > 0 ||
  (numberedDay(cell) === undefined && WORDED.some((form) => 'day' in dateReader(form, 'UTC')(cell)));

/** Days that are bare numbers lie within a year or so; post codes and numbers of parcels do not. */
const MOST_NUMBERED_DAYS = 400;
const areNumberedDays = (head: string, cells: readonly string[]): boolean => {
  const days = cells.flatMap((cell) => numberedDay(cell) ?? []);
  return (
    days.length === cells.length &&
    (HEADS.shipped.test(head) || HEADS.delivered.test(head)) &&
    !/code|plz|zip|leitzahl|postal/.test(head) &&
    Math.max(...days) - Math.min(...days) <= MOST_NUMBERED_DAYS
  );
};

const columnOf = (head: string, at: number, rows: readonly (readonly string[])[]): Column => {
  const cells = rows.map((row) => row[at] ?? '').filter(Boolean);
  // What has not arrived has a word instead of a date in some lists.
  const sample = cells.slice(0, 200).filter((cell) => /\d/.test(cell));
  const dated = sample.filter(looksLikeDate).length;
  return {
    at,
    head,
    cells,
    filled: cells.length,
    distinct: new Set(cells).size,
    areDates:
      sample.length > 0 && (dated >= sample.length * MOSTLY || areNumberedDays(bareHead(head), sample)),
  };
};

/** Every form that all cells of the date columns have. */
const formsOf = (cells: readonly string[]): readonly string[] => {
  const dated = cells.filter((cell) => looksLikeDate(cell) && !isIso(cell));
  const [first] = dated;
  if (first === undefined) return [];
  const readings = new Map<string, string>();
  for (const form of [...formsFitting(first), ...WORDED]) {
    const read = dateReader(form, 'UTC');
    const days = dated.map(read);
    // Of forms by which every cell is the same day one is enough: there is nothing to ask.
    const key = days.map((day) => ('day' in day ? day.day : '')).join();
    if (days.every((day) => 'day' in day) && !readings.has(key)) readings.set(key, form);
  }
  return [...readings.values()];
};

const chosen = (columns: readonly Column[], rows: number): Partial<Record<ParcelColumn, Column>> => {
  const found: Partial<Record<ParcelColumn, Column>> = {};
  const free = (column: Column): boolean => !Object.values(found).includes(column);
  const byHead = (key: ParcelColumn, may: (column: Column) => boolean): Column | undefined =>
    columns.find((column) => free(column) && foldCase(column.head) === key && may(column)) ??
    columns.find((column) => free(column) && HEADS[key].test(bareHead(column.head)) && may(column));
  const put = (key: ParcelColumn, column: Column | undefined): void => {
    if (column) found[key] = column;
  };
  const dated = columns.filter(({ areDates, head }) => areDates && !HOPED.test(bareHead(head)));
  const isDay = (column: Column): boolean => dated.includes(column);
  put('delivered', byHead('delivered', isDay));
  put('shipped', byHead('shipped', isDay));
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

/** Whether a column of parcels' numbers has most of them several times. */
const isRepeated = ({ head, areDates, filled, distinct }: Column, rows: number): boolean =>
  !areDates &&
  HEADS.parcel.test(bareHead(head)) &&
  filled > rows / 2 &&
  distinct > 1 &&
  distinct <= filled / 2;

/** What a list seems to hold; undefined for a text that is no list. */
export const parcelShapeOf = (text: string): ParcelShape | undefined => {
  let heads: readonly string[] = [];
  const rows: string[][] = [];
  const scanner = csvScanner({
    header: (cells) => {
      // Above the heads some lists have a line or two that say what they are.
      if (cells.filter(Boolean).length < 2) return 'next';
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
  const all = heads.map((head, at) => columnOf(head, at, rows));
  const columns = chosen(all, rows.length);
  const dates = formsOf([...(columns.shipped?.cells ?? []), ...(columns.delivered?.cells ?? [])]);
  return {
    heads,
    rows: rows.slice(0, SHOWN),
    isOfEvents: !columns.delivered && all.some((column) => isRepeated(column, rows.length)),
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
