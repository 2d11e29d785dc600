/** The rows of a list as a spreadsheet saves it, with one sign taken for what stands between its cells. */
import { csvScanner } from './csv-scanner.ts';

/** One row, with the line it begins on. */
export interface ListRow {
  readonly cells: readonly string[];
  readonly line: number;
}

/** A list in rows. */
export interface ListRows {
  readonly rows: readonly ListRow[];
  /** The line of a quote that nothing closes: then quotes were read as any other sign. */
  readonly unclosed: number | undefined;
  /** Lines of rows below the first that have nothing in them. */
  readonly blank: readonly number[];
}

/** More columns than any list has that people look at. */
const MOST_COLUMNS = 60;

/** Columns of a row, but for empty ones at its end. */
export const widthOf = ({ cells }: ListRow): number => cells.findLastIndex((cell) => cell !== '') + 1;

/** The whole list, as it is with one sign between its cells; `mostCell` signs of each are kept. */
export const rowsOf = (
  text: string,
  delimiter: string,
  room: { readonly mostCell?: number; readonly mostQuotedLines?: number } = {},
): ListRows => {
  let unclosed: number | undefined;
  let blank: number[] = [];
  const read = (quotes: boolean): readonly ListRow[] | undefined => {
    const rows: ListRow[] = [];
    blank = [];
    const take = (cells: readonly string[], line: number): void => {
      // The line that tells the scanner of the sign is none of the file's.
      rows.push({ cells: [...cells], line: line - 1 });
    };
    const scanner = csvScanner(
      {
        header: (cells, line) => {
          take(cells, line);
          return Array.from({ length: MOST_COLUMNS }, (_, i) => i);
        },
        row: take,
        unclosed: (line) => {
          unclosed = line - 1;
        },
        blank: (line) => {
          blank.push(line - 1);
        },
      },
      { quotes, ...room },
    );
    scanner.write(`sep=${delimiter}\n${text.replace(/^\ufeff/, '')}`);
    scanner.end();
    return quotes && unclosed !== undefined ? undefined : rows;
  };
  const rows = (read(true) ?? read(false) ?? []).filter(({ cells }) => !/^"?sep=.?"?$/i.test(cells.join('')));
  return { rows, unclosed, blank };
};
