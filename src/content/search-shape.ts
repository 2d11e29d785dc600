/**
 * Which columns of a list hold what people typed and how often, by the shape of what is in them: exports have other
 * names for them in every language. Where it can be seen in more than one way, nothing is chosen.
 */
import { foldCase } from '../text/fold.ts';
import { DELIMITERS } from './csv-scanner.ts';
import { type ListRow, rowsOf, widthOf } from './list-rows.ts';
import { countOf } from './search-count.ts';

/** A list whose columns are known or asked for. */
export interface SearchShape {
  /** The columns’ names; empty ones where the list has none. */
  readonly titles: readonly string[];
  /** The line of the names, or of the first row. */
  readonly line: number;
  /** Rows above the names that have no part in the list. */
  readonly above: number;
  /** The line of a quote that nothing closes: then quotes were read as any other sign. */
  readonly unclosed?: number;
  readonly rows: readonly ListRow[];
  /** The columns that it may be: one each where it is sure. */
  readonly phrase: readonly number[];
  readonly count: readonly number[];
}

/** Columns that are known by their names. */
export interface KnownColumns {
  readonly phrase?: string | undefined;
  readonly count?: string | undefined;
}

/** Rows that show what a column holds. */
const MOST_SAMPLED = 500;
/** As many cells of a column may be of another sort: phrases that are numbers, rows that sum up. A choice of ours, no source. */
const [MOST_OTHER_TEXTS, MOST_OTHER_COUNTS] = [0.2, 0.1];
/** A column of words that come again and again is a country or a device, and none of phrases. A choice of ours, no source. */
const LEAST_DIFFERENT = 0.6;
/** Fewer rows do not show whether words come again. */
const LEAST_ROWS = 4;
/** Rows among which the columns' names are looked for. */
const MOST_ABOVE = 30;

const DATE =
  /^(?:\d{1,4}[-./]\d{1,2}[-./]\d{1,4}(?:[T ].*)?|(?:19|20)\d{2}[01]\d[0-3]\d|\d{1,2}\.? \p{L}{3,}\.?,? \d{4}|\p{L}{3,}\.? \d{1,2},? \d{4})$/u;
const ADDRESS = /^(?:\/|[a-z]+:\/\/|www\.)\S*$/i;

const isText = (cell: string): boolean => /\p{L}/u.test(cell) && !DATE.test(cell) && !ADDRESS.test(cell);
const isCount = (cell: string): boolean => countOf(cell) !== undefined && !DATE.test(cell);

/** Whether nearly all cells that are filled are of a sort. */
const areMost = (cells: readonly string[], isOne: (cell: string) => boolean, mostOthers: number): boolean => {
  const filled = cells.filter((cell) => cell !== '');
  const others = filled.filter((cell) => !isOne(cell)).length;
  return filled.length > cells.length / 2 && others <= filled.length * mostOthers;
};

/** Whether a column only numbers the rows. */
const numbersRows = (cells: readonly string[]): boolean =>
  cells.length > 2 && cells.every((cell, i) => i === 0 || Number(cell) === Number(cells[i - 1]) + 1);

const columnsIn = (rows: readonly ListRow[], width: number): Pick<SearchShape, 'phrase' | 'count'> => {
  const columns = Array.from({ length: width }, (_, i) => rows.map(({ cells }) => cells[i] ?? ''));
  const pick = (isOne: (cells: readonly string[]) => boolean): readonly number[] =>
    columns.flatMap((cells, i) => (isOne(cells) ? [i] : []));
  const texts = pick((cells) => areMost(cells, isText, MOST_OTHER_TEXTS));
  const different = texts.filter((i) => {
    const cells = columns[i] ?? [];
    return cells.length < LEAST_ROWS || new Set(cells.map(foldCase)).size >= cells.length * LEAST_DIFFERENT;
  });
  return {
    phrase: different.length > 0 ? different : texts,
    count: pick((cells) => areMost(cells, isCount, MOST_OTHER_COUNTS) && !numbersRows(cells)),
  };
};

/** The row of the columns' names that are known, and where each stands. */
const namedIn = (
  rows: readonly ListRow[],
  { phrase, count }: KnownColumns,
): { readonly at: number; readonly phrase: number; readonly count: number } | undefined => {
  let best: { readonly at: number; readonly phrase: number; readonly count: number } | undefined;
  for (const [at, { cells }] of rows.slice(0, MOST_ABOVE).entries()) {
    const find = (name: string | undefined): number =>
      name === undefined ? -1 : cells.findIndex((cell) => foldCase(cell) === foldCase(name));
    const found = { at, phrase: find(phrase), count: find(count) };
    if (found.phrase >= 0 && found.count >= 0) return found;
    if (found.phrase >= 0 || found.count >= 0) best ??= found;
  }
  return best;
};

/** The shape of a list that is read with one sign between its cells; undefined where there are no two columns. */
const shapeWith = (text: string, delimiter: string, known: KnownColumns): SearchShape | undefined => {
  const { rows, unclosed } = rowsOf(text, delimiter);
  const widths = new Map<number, number>();
  for (const row of rows.slice(0, MOST_SAMPLED))
    widths.set(widthOf(row), (widths.get(widthOf(row)) ?? 0) + 1);
  widths.delete(1);
  const [width] = [...widths].sort(([a, times], [b, others]) => others - times || b - a)[0] ?? [];
  if (width === undefined) return undefined;
  const named = namedIn(rows, known);
  const first = named?.at ?? rows.findIndex((row) => widthOf(row) === width);
  const sampled = rows.slice(first + 1, first + 1 + MOST_SAMPLED).filter((row) => widthOf(row) > 1);
  const head = rows[first];
  if (!head) return undefined;
  // A list of one row and no names is still a list.
  const { phrase, count } = columnsIn(sampled.length > 0 ? sampled : [head], width);
  const hasNames = named !== undefined || !count.some((i) => isCount(head.cells[i] ?? ''));
  const titles = Array.from({ length: width }, (_, i) => (hasNames ? (head.cells[i] ?? '') : ''));
  return {
    titles,
    line: head.line,
    above: first,
    ...(unclosed !== undefined && { unclosed }),
    rows: rows.slice(hasNames ? first + 1 : first),
    phrase: named && named.phrase >= 0 ? [named.phrase] : phrase.filter((i) => i !== named?.count),
    count: named && named.count >= 0 ? [named.count] : count.filter((i) => i !== named?.phrase),
  };
};

/** Rows that have both a text and a count. */
const fitting = ({ rows, phrase, count }: SearchShape): number => {
  const [at, many] = [phrase[0] ?? -1, count[0] ?? -1];
  return rows.filter(({ cells }) => isText(cells[at] ?? '') && isCount(cells[many] ?? '')).length;
};

/**
 * Whether the first of two shapes is the likelier: it has clearly more rows, or as many and more columns, because a
 * sign that cuts within numbers or texts leaves others uncut.
 */
const isBetter = (one: SearchShape, other: SearchShape): boolean => {
  const [rows, others] = [fitting(one), fitting(other)];
  const isAlike = Math.min(rows, others) >= Math.max(rows, others) * (1 - MOST_OTHER_COUNTS);
  return isAlike && rows > 0 ? one.titles.length > other.titles.length : rows > others;
};

/** The list in a text, with the columns that it may be; undefined where it has no two columns. */
export const searchShape = (text: string, known: KnownColumns): SearchShape | undefined => {
  const told = /^\ufeff?\s*"?sep=(.)/i.exec(text)?.[1];
  let best: SearchShape | undefined;
  for (const delimiter of told === undefined ? DELIMITERS : [told]) {
    const shape = shapeWith(text, delimiter, known);
    if (shape && (!best || isBetter(shape, best))) best = shape;
  }
  return best;
};
