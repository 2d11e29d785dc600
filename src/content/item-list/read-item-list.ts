/**
 * A list of things as a spreadsheet saves it → what its rows say of each thing. Columns are known by their titles in
 * plain words, and where there are none by the shape of what is in them. Nothing is lost: what no field takes is a note.
 */
import { foldCase } from '../../text/fold.ts';
import { isGtin } from '../codes.ts';
import { DELIMITERS } from '../csv-scanner.ts';
import { type ListRow, type ListRows, rowsOf, widthOf } from '../list-rows.ts';
import { fieldOfTitle, type ListField } from './column-names.ts';
import { countryNamed } from './country.ts';
import { readPrice } from './money.ts';
import { isSum } from './sum-rows.ts';
import { type ColumnUse, columnUse, type ItemValues, readCell } from './values.ts';

/** A column of a list and what it was taken for. */
export interface ListColumn {
  /** As the list has it; empty where it has none. */
  readonly title: string;
  readonly field: ListField;
  /** Whether its title said so, or only the shape of what is in it. */
  readonly by: 'title' | 'shape' | 'owner';
}

/** A thing of a list. */
export interface ListedThing {
  readonly name: string;
  /** The row's line in the file. */
  readonly line: number;
  /** Fields of its record by their names; every value is one that the field takes. */
  readonly values: ItemValues;
  /** What readers may read. */
  readonly story: string;
  /** What only the owner may: other columns, and cells that their field does not take, each with its title. */
  readonly notes: readonly { readonly title: string; readonly text: string }[];
}

/** A row that is no thing, and why. */
export interface PassedRow {
  readonly line: number;
  readonly why: 'no name' | 'sum' | 'titles again' | 'above' | 'the same again';
  /** What stands in it, in short. */
  readonly text: string;
}

/** A cell that its column's field does not take. */
interface RefusedCell {
  readonly line: number;
  readonly title: string;
  readonly field: ListField;
  readonly text: string;
}

/** A list as it was read. */
export interface ItemList {
  readonly columns: readonly ListColumn[];
  readonly things: readonly ListedThing[];
  readonly passed: readonly PassedRow[];
  /** Rows that have nothing in them. */
  readonly blank: number;
  /** The line of a quote that nothing closes; undefined where there is none. */
  readonly unclosed: number | undefined;
  /** Columns that look like one cell over several rows, which is saved in the first of them alone. */
  readonly gaps: readonly { readonly title: string; readonly lines: readonly number[] }[];
  /** Cells that their field does not take, which are notes therefore. */
  readonly refused: readonly RefusedCell[];
}

/** What a caller knows better than the titles. */
export interface ListKnowledge {
  /** ISO 4217. */
  readonly currency: string;
  /** Fields by the titles of their columns, as the owner said. */
  readonly columns?: ReadonlyMap<string, ListField>;
}

/** A story in a cell is as long as a page; longer is a broken file. */
const ROOM = { mostCell: 20_000, mostQuotedLines: 400 };
/** Rows among which the titles are looked for. */
const MOST_ABOVE = 30;
/** Of a column without a title so many cells must have its shape. A choice of ours, no source. */
const SHARE_OF_SHAPE = 0.7;
/** Sentences are no titles. In signs, and a choice of ours, no source. */
const MOST_OF_TITLE = 40;
/** A name has no more words than this. A choice of ours, no source. */
const MOST_WORDS = 14;

const shownRow = ({ cells }: ListRow): string =>
  cells
    .filter((cell) => cell !== '')
    .join(' · ')
    .replace(/\s+/g, ' ')
    .slice(0, 80);

/** The titles that a row would be, by column. */
const titlesIn = (
  { cells }: ListRow,
  known: ListKnowledge['columns'],
): ReadonlyMap<number, NonNullable<ReturnType<typeof fieldOfTitle>>> =>
  new Map(
    cells.flatMap((cell, i) => {
      const owned = known?.get(foldCase(cell));
      // Sentences and figures are no titles.
      const found = owned
        ? { field: owned, isWhole: true }
        : cell.length <= MOST_OF_TITLE && !/^[\d.,\s]+$/.test(cell)
          ? fieldOfTitle(cell)
          : undefined;
      return found ? [[i, found] as const] : [];
    }),
  );

interface Table extends ListRows {
  readonly head: { readonly at: number; readonly fields: ReturnType<typeof titlesIn> } | undefined;
}

/** How surely a row is one of titles: whole names count twice; a row with a whole name for the name of things counts as a list's. */
const strength = (fields: ReturnType<typeof titlesIn>): number =>
  [...fields.values()].reduce(
    (sum, { isWhole, field }) => sum + (isWhole ? 2 : 1) + (field === 'name' ? 1 : 0),
    0,
  );

/** Of a row of titles so many columns have one, where the words of none are known. A choice of ours, no source. */
const SHARE_OF_TITLES = 0.6;
const FIGURE = /^[^\p{L}\d]{0,3}\d/u;

/**
 * The row of titles where their words are not known: the first that has a short text in most columns and no figure, above
 * a column of figures. -1 where there is none. Taken for a thing, the titles would be published as one.
 */
const headByShape = (rows: readonly ListRow[]): number => {
  const widest = Math.max(0, ...rows.map(widthOf));
  return rows.slice(0, MOST_ABOVE).findIndex((row, at) => {
    const filled = row.cells.filter((cell) => cell !== '');
    const below = rows.slice(at + 1);
    return (
      widest >= 3 &&
      below.length >= 2 &&
      filled.length >= Math.max(3, widest * SHARE_OF_TITLES) &&
      filled.every((cell) => cell.length <= MOST_OF_TITLE && !FIGURE.test(cell)) &&
      new Set(filled.map(foldCase)).size === filled.length &&
      row.cells.some(
        (cell, i) =>
          cell !== '' &&
          isMostly(
            below.map(({ cells }) => cells[i] ?? ''),
            (one) => FIGURE.test(one),
          ),
      )
    );
  });
};

const tableWith = (text: string, delimiter: string, known: ListKnowledge): Table => {
  const list = rowsOf(text, delimiter, ROOM);
  let head: Table['head'];
  for (const [at, row] of list.rows.slice(0, MOST_ABOVE).entries()) {
    const fields = titlesIn(row, known.columns);
    const width = widthOf(row);
    // In a row of titles most cells are titles; a thing's own row has a word or two that happen to be one.
    const filled = row.cells.filter((cell) => cell !== '').length;
    const isOne =
      width === 1
        ? [...fields.values()].some(({ isWhole, field }) => isWhole && field === 'name') && at === 0
        : fields.size >= 2 && fields.size >= filled / 2;
    if (isOne && (!head || strength(fields) > strength(head.fields))) head = { at, fields };
  }
  const at = head ? -1 : headByShape(list.rows);
  const row = list.rows[at];
  return { ...list, head: row ? { at, fields: titlesIn(row, known.columns) } : head };
};

const SHAPES: readonly (readonly [ListField, (cell: string) => boolean])[] = [
  ['gtin', (cell) => isGtin(cell.replace(/[\s-]/g, ''))],
  ['image', (cell) => /\.(?:jpe?g|png|webp|avif|hei[cf]|tiff?|gif)$/i.test(cell)],
  [
    'size',
    (cell) =>
      /^(?:[ØøH⌀]?\s*\d+(?:[.,]\d+)?\s*(?:mm|cm|m|in|")?\s*[x×*]\s*)+\d+(?:[.,]\d+)?\s*(?:mm|cm|m|in|")?$/i.test(
        cell,
      ) || /^\d+(?:[.,]\d+)?\s*(?:mm|cm|ml|cl|l|litres?|liters?)$/i.test(cell),
  ],
  ['weight', (cell) => /^\d+(?:[.,]\d+)?\s*(?:g|kg|oz|lbs?|grams?)$/i.test(cell)],
  [
    'price',
    (cell) =>
      /\d[.,]\d{2}(?!\d)|[£$€¥]|\b(?:GBP|EUR|USD|CHF)\b/.test(cell) &&
      readPrice(cell, { own: 'GBP' }) !== undefined,
  ],
  ['countryOfOrigin', (cell) => countryNamed(cell) !== undefined],
];

const isMostly = (cells: readonly string[], is: (cell: string) => boolean): boolean => {
  const filled = cells.filter((cell) => cell !== '');
  return filled.length > 0 && filled.filter(is).length >= filled.length * SHARE_OF_SHAPE;
};

const isNameLike = (cell: string): boolean =>
  /\p{L}{2}/u.test(cell) && !/^\S+:\/\/|@/.test(cell) && cell.split(/\s+/).length <= MOST_WORDS;

/** The column of names where no title says it: the first in which nearly all cells are short texts, each another. */
const nameByShape = (columns: readonly (readonly string[])[], isFree: (i: number) => boolean): number =>
  columns.findIndex((cells, i) => {
    const filled = cells.filter((cell) => cell !== '');
    return (
      isFree(i) &&
      filled.length > cells.length / 2 &&
      isMostly(cells, isNameLike) &&
      new Set(filled.map(foldCase)).size >= filled.length * SHARE_OF_SHAPE
    );
  });

const columnsOf = ({ rows, head }: Table): readonly ListColumn[] => {
  const body = rows.slice(head ? head.at + 1 : 0);
  const titles = head ? (rows[head.at]?.cells ?? []) : [];
  const width = Math.max(0, ...rows.slice(head?.at ?? 0).map(widthOf));
  const cells = Array.from({ length: width }, (_, i) => body.map((row) => row.cells[i] ?? ''));
  const taken = new Set<ListField>();
  const found: (ListColumn | undefined)[] = Array.from({ length: width });
  const take = (i: number, field: ListField, by: ListColumn['by']): void => {
    if (found[i] || (taken.has(field) && field !== 'note' && field !== 'story')) return;
    taken.add(field);
    found[i] = { title: titles[i] ?? '', field, by };
  };
  // A title that is a whole name goes before one that has it among other words.
  const named = [...(head?.fields ?? [])].sort(([, a], [, b]) => Number(b.isWhole) - Number(a.isWhole));
  for (const [i, { field }] of named) take(i, field, 'title');
  // A list without a name's column has it under "Description", where that is short.
  if (!taken.has('name')) {
    const at = found.findIndex(
      (column, i) => column?.field === 'description' && isMostly(cells[i] ?? [], isNameLike),
    );
    if (at >= 0) {
      taken.delete('description');
      found[at] = undefined;
      take(at, 'name', 'title');
    }
  }
  for (const [i, column] of cells.entries()) {
    const shape = SHAPES.find(([field, is]) => !taken.has(field) && isMostly(column, is));
    if (!found[i] && shape && (titles[i] ?? '') === '') take(i, shape[0], 'shape');
  }
  if (!taken.has('name')) {
    const at = nameByShape(cells, (i) => !found[i]);
    if (at >= 0) take(at, 'name', 'shape');
  }
  return Array.from(
    { length: width },
    (_, i) => found[i] ?? { title: titles[i] ?? '', field: 'note', by: 'shape' },
  );
};

/** Of the readings of a text, one for each sign between cells, the one with most titles; else with most columns of a shape. */
const bestTable = (text: string, known: ListKnowledge): Table => {
  const told = /^\ufeff?\s*"?sep=(.)/i.exec(text)?.[1];
  const tables = (told === undefined ? DELIMITERS : [told]).map((delimiter) =>
    tableWith(text, delimiter, known),
  );
  const scored = tables.map((table) => {
    const columns = columnsOf(table);
    const shaped = columns.filter(({ by, field }) => by === 'shape' && field !== 'note').length;
    return { table, titles: table.head ? 1 + strength(table.head.fields) : 0, shaped, width: columns.length };
  });
  const [best] = [...scored].sort((a, b) => b.titles - a.titles || b.shaped - a.shaped || a.width - b.width);
  if (best && (best.titles > 0 || best.shaped > 1)) return best.table;
  // Without titles and shapes a line is a name, whatever signs are in it.
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
  const rows = lines.flatMap((line, i) => {
    const cell = line
      .trim()
      .replace(/^(?:[-*•–]|\d{1,2}[.)])\s+/, '')
      .replace(/^"(.*)"$/, '$1');
    return cell === '' ? [] : [{ cells: [cell], line: i + 1 }];
  });
  const fields = rows[0] && titlesIn(rows[0], known.columns);
  const isTitled = [...(fields?.values() ?? [])].some(({ field, isWhole }) => field === 'name' && isWhole);
  return {
    rows,
    unclosed: undefined,
    blank: [],
    head: fields && isTitled ? { at: 0, fields } : undefined,
  };
};

/**
 * Columns left of the names with a word in the first row and none in some below. Nothing is filled in: that a thing has no
 * maker, or another one, looks alike, and a wrong one would be published.
 */
const gapsIn = (
  columns: readonly ListColumn[],
  nameAt: number,
  things: readonly ListRow[],
): ItemList['gaps'] =>
  columns.slice(0, nameAt).flatMap(({ title, field }, i) => {
    const lines = things.filter(({ cells }) => (cells[i] ?? '') === '').map(({ line }) => line);
    const isLed = (things[0]?.cells[i] ?? '') !== '';
    return field !== 'note' && isLed && lines.length > 0 ? [{ title: title || field, lines }] : [];
  });

/** The list in a text. `columns` of what is known go before what titles and shapes say. */
export const readItemList = (text: string, known: ListKnowledge): ItemList => {
  const table = bestTable(text, known);
  const columns = columnsOf(table).map((column): ListColumn => {
    const owned = known.columns?.get(foldCase(column.title));
    return owned ? { ...column, field: owned, by: 'owner' } : column;
  });
  const { rows, head, blank, unclosed } = table;
  const nameAt = columns.findIndex(({ field }) => field === 'name');
  const above = head ? rows.slice(0, head.at) : [];
  const body = rows.slice(head ? head.at + 1 : 0);
  const uses: readonly ColumnUse[] = columns.map(({ field, title }, i) =>
    columnUse(
      field,
      title,
      body.map(({ cells }) => cells[i] ?? ''),
    ),
  );
  const passed: PassedRow[] = above.map((row) => ({ line: row.line, why: 'above', text: shownRow(row) }));
  const refused: RefusedCell[] = [];
  const things: ListedThing[] = [];
  const taken: ListRow[] = [];
  const seen = new Set<string>();
  for (const row of body) {
    const pass = (why: PassedRow['why']): void => {
      passed.push({ line: row.line, why, text: shownRow(row) });
    };
    const name = (row.cells[nameAt] ?? '').replace(/\s+/g, ' ').trim();
    const whole = JSON.stringify(row.cells.map(foldCase));
    if (head && whole === JSON.stringify(padded(rows[head.at]?.cells ?? [], row.cells.length).map(foldCase)))
      pass('titles again');
    else if (isSum(row, nameAt, taken)) pass('sum');
    else if (name === '') pass('no name');
    else if (seen.has(whole)) pass('the same again');
    else {
      const read = thingOf(row, name, { columns, uses, own: known.currency });
      things.push(read.thing);
      taken.push(row);
      refused.push(...read.refused);
    }
    seen.add(whole);
  }
  const gaps = gapsIn(columns, nameAt, taken);
  return { columns, things, passed, blank: blank.length, unclosed, gaps, refused };
};

const padded = (cells: readonly string[], length: number): readonly string[] =>
  Array.from({ length }, (_, i) => cells[i] ?? '');

const thingOf = (
  { cells, line }: ListRow,
  name: string,
  {
    columns,
    uses,
    own,
  }: { readonly columns: readonly ListColumn[]; readonly uses: readonly ColumnUse[]; readonly own: string },
): { readonly thing: ListedThing; readonly refused: ItemList['refused'] } => {
  let values: ItemValues = {};
  const notes: { title: string; text: string }[] = [];
  const refused: RefusedCell[] = [];
  const stories: string[] = [];
  for (const [i, { field, title }] of columns.entries()) {
    const cell = cells[i] ?? '';
    const use = uses[i];
    if (cell === '' || field === 'name' || !use) continue;
    if (field === 'story') stories.push(cell);
    else if (field === 'note') notes.push({ title, text: cell });
    else {
      const value = field === 'image' ? undefined : readCell(cell, use, own);
      if (value) values = { ...value, ...values };
      else {
        notes.push({ title, text: cell });
        if (field !== 'image') refused.push({ line, title: title || field, field, text: cell });
      }
    }
  }
  return { thing: { name, line, values, story: stories.join('\n\n'), notes }, refused };
};
