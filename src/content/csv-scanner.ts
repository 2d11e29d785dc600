/**
 * Reads CSV in chunks of text, in constant memory: cells of columns that nobody wants are passed over and never
 * become strings. RFC 4180, and what spreadsheets make of it: comma, semicolon, tab or bar between cells, any line
 * end, a byte order mark, a first line `sep=;`.
 */

/** What is called as a file is read. */
interface CsvHandlers {
  /**
   * The first row with words in it; gives the columns to keep, `next` where the row below it is the header rather, or
   * undefined to read no further.
   */
  readonly header: (cells: readonly string[], line: number) => readonly number[] | 'next' | undefined;
  /** One row: the cells of the kept columns, trimmed, empty where the row is short. The array is used again. */
  readonly row: (cells: readonly string[], line: number) => void;
  /** A quote that opens on this line never closes: what was read after it is no row. */
  readonly unclosed: (line: number) => void;
  /** A row below the header without a word in it. */
  readonly blank?: (line: number) => void;
}

/** Takes a file’s text in chunks; `end` tells that there are no more. */
interface CsvScanner {
  readonly write: (text: string) => void;
  readonly end: () => void;
}

/** Signs that may stand between cells. */
export const DELIMITERS = [',', ';', '\t', '|'] as const;
const [QUOTE, CR, LF, SPACE] = [34, 13, 10, 32];

/** A cell is cut off here: none that is wanted is as long, and a broken file may hold one endless cell. */
const MOST_CELL = 500;

/** More lines in one pair of quotes than any address has: the quote was never closed. */
const MOST_QUOTED_LINES = 50;

/** A header longer than this is no header; it is taken as it is. */
const MOST_HEADER = 65_536;

/** The sign that a line has most of, outside quotes. */
export const delimiterOf = (line: string): string => {
  const bare = line.replace(/"[^"]*"/g, '');
  const times = (sign: string): number => bare.split(sign).length - 1;
  return DELIMITERS.reduce((best, sign) => (times(sign) > times(best) ? sign : best));
};

/** How the signs of a file are taken. */
interface CsvOptions {
  /** Without them a quote is a sign like any other; with them unless it is said otherwise. */
  readonly quotes?: boolean;
  /** As many signs of a cell are kept, and as many lines may stand between a pair of quotes. */
  readonly mostCell?: number;
  readonly mostQuotedLines?: number;
}

/** A reader that calls the handlers as rows come to their end. */
export const csvScanner = (
  { header, row, unclosed, blank }: CsvHandlers,
  { quotes = true, mostCell = MOST_CELL, mostQuotedLines = MOST_QUOTED_LINES }: CsvOptions = {},
): CsvScanner => {
  let held: string | undefined = '';
  let delimiter = 0;
  let stopped = false;
  /** Column → place among the kept cells; undefined before the header, when all are kept. */
  let places: readonly number[] | undefined;
  let cells: string[] = [];
  let line = 1;
  let [rowLine, quoteLine] = [1, 1];
  let column = 0;
  let cell = '';
  /** `begun`: the cell has a sign in it; `anything`: the row has. */
  let [quoted, closed, afterReturn, begun, anything] = [false, false, false, false, false];

  const kept = (): boolean => places === undefined || (places[column] ?? -1) >= 0;
  const take = (text: string, from: number, to: number): void => {
    if (to > from && cell.length < mostCell && kept())
      cell += text.slice(from, Math.min(to, from + mostCell));
  };
  const endCell = (): void => {
    const place = places === undefined ? column : places[column];
    if (place !== undefined && place >= 0) cells[place] = cell.trim();
    cell = '';
    [closed, begun] = [false, false];
    column += 1;
  };
  const endRow = (): void => {
    endCell();
    if (anything) {
      if (places === undefined) {
        const wanted = header(cells, rowLine);
        if (wanted === 'next') cells = [];
        else {
          if (wanted === undefined) stopped = true;
          const columns: number[] = new Array(cells.length).fill(-1);
          wanted?.forEach((at, i) => {
            columns[at] = i;
          });
          places = columns;
          cells = new Array(wanted?.length ?? 0).fill('');
        }
      } else {
        row(cells, rowLine);
        cells.fill('');
      }
    } else if (places === undefined) cells = [];
    else blank?.(rowLine);
    column = 0;
    anything = false;
  };
  const stop = (): void => {
    stopped = true;
    unclosed(quoteLine);
  };

  const scan = (text: string): void => {
    let from = 0;
    for (let at = 0; at < text.length && !stopped; at += 1) {
      const sign = text.charCodeAt(at);
      if (quoted) {
        if (sign === QUOTE) {
          take(text, from, at);
          [quoted, closed] = [false, true];
          from = at + 1;
        } else if (sign === LF || sign === CR) {
          if (sign === CR || !afterReturn) line += 1;
          if (line - quoteLine > mostQuotedLines) stop();
        } else if (sign > SPACE) anything = true;
        afterReturn = sign === CR;
        continue;
      }
      if (sign === delimiter) {
        take(text, from, at);
        endCell();
        from = at + 1;
      } else if (sign === CR || sign === LF) {
        const second = sign === LF && afterReturn;
        if (!second) {
          take(text, from, at);
          endRow();
          line += 1;
          rowLine = line;
        }
        from = at + 1;
      } else if (sign === QUOTE && quotes) {
        take(text, from, at);
        from = at + 1;
        // Two quotes are one in a quoted cell; one inside an unquoted cell is a sign like any other.
        if (closed || begun) {
          anything = true;
          if (kept()) cell += '"';
        }
        if (closed || !begun) {
          if (!closed) [cell, quoteLine] = ['', line];
          [quoted, closed, begun] = [true, false, true];
        }
      } else if (sign > SPACE) [anything, begun, closed] = [true, true, false];
      afterReturn = sign === CR;
    }
    if (!stopped) take(text, from, text.length);
  };

  const begin = (text: string): void => {
    const bare = text.replace(/^\ufeff/, '');
    const hint = /^\s*"?sep=(.)"?[^\S\r\n]*(?:\r\n|\r|\n)/i.exec(bare);
    const first = bare.split(/\r\n|\r|\n/).find((one) => one.trim() !== '') ?? '';
    delimiter = (hint?.[1] ?? delimiterOf(first)).charCodeAt(0);
    held = undefined;
    if (hint) [line, rowLine] = [2, 2];
    scan(hint ? bare.slice(hint[0].length) : bare);
  };

  return {
    write: (text) => {
      if (stopped) return;
      if (held === undefined) return scan(text);
      held += text;
      // The delimiter shows only once the first line is whole, and a `sep=` line needs the one after it.
      if (held.length > MOST_HEADER || /(?:^|[\r\n])[^\S\r\n]*\S[^\r\n]*(?:\r\n|[\r\n])./.test(held))
        begin(held);
    },
    end: () => {
      if (stopped) return;
      if (held !== undefined) begin(held);
      if (stopped) return;
      if (quoted) stop();
      else if (anything || column > 0) endRow();
    },
  };
};
