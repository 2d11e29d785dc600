/** searches.csv: what people typed, as statistics of a site or a shop export it. */
import { CsvError, parse } from 'csv-parse/sync';
import type { Checked, Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import type { TextSource } from './sources.ts';

/** A phrase and how often it was typed. */
export interface SearchRow {
  readonly phrase: string;
  readonly count: number;
  readonly location: Location;
}

/** What box.md says of the columns' names, and where it says so. */
export interface SearchColumns {
  readonly phrase?: string | undefined;
  readonly count?: string | undefined;
  readonly location: Location;
}

/** What separates cells in the files that spreadsheets write, by language and by taste. */
const DELIMITERS = [',', ';', '\t'] as const;

/** Rows named one by one; an export with another idea of a number has thousands alike. */
const MOST_ROWS_NAMED = 10;

/** Longer than this is a paste, not something typed: no search page takes as much. Common practice, no source. */
const LONGEST_PHRASE = 200;

interface Row {
  readonly cells: readonly string[];
  readonly line: number;
}

/** The sign that the first line with words has most of, outside quotes. */
const delimiterOf = (text: string): string => {
  const first = text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? '';
  const bare = first.replace(/"[^"]*"/g, '');
  const times = (sign: string): number => bare.split(sign).length - 1;
  return DELIMITERS.reduce((best, sign) => (times(sign) > times(best) ? sign : best));
};

const rowsOf = (text: string, quoted: boolean): readonly Row[] => {
  const records = parse(text, {
    delimiter: delimiterOf(text),
    // An unclosed quote would swallow the rest: then quotes are only signs.
    quote: quoted ? '"' : false,
    record_delimiter: ['\r\n', '\n', '\r'],
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
    info: true,
  }) as unknown as readonly {
    readonly record: readonly string[];
    readonly info: { readonly lines: number };
  }[];
  return records.map(({ record, info }) => ({
    cells: record.map((cell) =>
      (quoted ? cell : cell.replace(/^\s*"|"\s*$/g, '')).replace(/\s+/g, ' ').trim(),
    ),
    // The parser counts to a record's last line; a phrase with a line break in it began before.
    line: Math.max(1, info.lines - record.join('').split(/\r\n|\r|\n/).length + 1),
  }));
};

/** "1,204", "1.204", "1 204" and "1'204" are all one thousand two hundred and four. */
const countOf = (cell: string): number | undefined => {
  if (/^\d{1,3}(?:([,.'’\s])\d{3})(?:\1\d{3})*$/.test(cell)) return Number(cell.replace(/\D/g, ''));
  return /^\d{1,15}(?:[.,]0+)?$/.test(cell) ? Number.parseInt(cell, 10) : undefined;
};

const sameName = (a: string, b: string): boolean =>
  a.normalize('NFKC').trim().toLowerCase() === b.normalize('NFKC').trim().toLowerCase();

/** One phrase whatever its case and Unicode normal form. */
const keyOf = (phrase: string): string => phrase.normalize('NFC').toLowerCase();

/**
 * The phrases of searches.csv with their counts, in the file's order; a phrase that stands twice is counted
 * together. Comma, semicolon and tab separate (RFC 4180 knows the comma alone; spreadsheets write all three);
 * rows typed 0 times are left out without a word, as exports hold thousands. Reports rows that are none, and
 * columns that are missing: must fix where box.md names them, look at where the file is merely of another shape.
 */
export const readSearches = (
  source: TextSource | undefined,
  columns?: SearchColumns,
): Checked<readonly SearchRow[]> => {
  const diagnostics: Diagnostic[] = [];
  if (!source) {
    if (columns)
      diagnostics.push({
        weight: 'look at',
        rule: 'searches-missing',
        location: columns.location,
        message: 'Unexpected `searches` without a file, expected `searches.csv` beside box.md',
        fix: 'Put the export there as searches.csv, or take the key out',
      });
    return { value: [], diagnostics };
  }
  const file = source.path;
  const text = source.text.replace(/^\ufeff/, '');
  const rows = readRows(text, file, diagnostics);
  const [header, ...body] = rows;
  if (!header) return { value: [], diagnostics };

  const find = (column: 'phrase' | 'count'): number => {
    const named = columns?.[column];
    const wanted = named ?? column;
    const at = header.cells.findIndex((cell) => sameName(cell, wanted));
    if (at >= 0) return at;
    const there = header.cells.filter((cell) => cell !== '').join('`, `');
    diagnostics.push({
      weight: named === undefined ? 'look at' : 'must fix',
      rule: 'searches-column',
      location: { file, line: header.line, column: 1 },
      message: `Unexpected columns \`${there}\`, expected \`${wanted}\` among them${named === undefined ? '; the file was not read' : ''}`,
      fix: named
        ? 'Write the column’s name in box.md as the file has it'
        : `Begin the file with the line \`phrase,count\`, or write in box.md \`searches: {phrase: …, count: …}\` with its own columns`,
      ...(named === undefined || !columns
        ? {}
        : { related: { location: columns.location, message: 'box.md names the column here' } }),
    });
    return -1;
  };
  const phraseAt = find('phrase');
  const countAt = find('count');
  if (phraseAt < 0 || countAt < 0) return { value: [], diagnostics };

  const found = new Map<string, SearchRow>();
  let faults = 0;
  const fault = (line: number, message: string, fix: string): void => {
    faults++;
    if (faults > MOST_ROWS_NAMED) return;
    diagnostics.push({
      weight: 'look at',
      rule: 'searches-row',
      location: { file, line, column: 1 },
      message,
      fix,
    });
  };
  for (const { cells, line } of body) {
    if (cells.every((cell) => cell === '')) continue;
    const phrase = cells[phraseAt] ?? '';
    const typed = cells[countAt] ?? '';
    const count = countOf(typed);
    if (count === 0) continue;
    if (phrase === '' || [...phrase].length > LONGEST_PHRASE)
      fault(
        line,
        phrase === ''
          ? 'Unexpected row without a phrase, expected what was typed'
          : `Unexpected phrase of ${[...phrase].length} characters, expected at most ${LONGEST_PHRASE}`,
        'Mend the row or take it out; it was passed over',
      );
    else if (count === undefined)
      fault(
        line,
        `Unexpected count \`${typed}\`, expected a whole number`,
        'Write how often it was typed, as 226; the row was passed over',
      );
    else {
      const key = keyOf(phrase);
      const before = found.get(key);
      found.set(
        key,
        before
          ? { ...before, count: before.count + count }
          : { phrase, count, location: { file, line, column: 1 } },
      );
    }
  }
  if (faults > MOST_ROWS_NAMED)
    diagnostics.push({
      weight: 'look at',
      rule: 'searches-row',
      location: { file, line: 1, column: 1 },
      message: `Unexpected rows, ${faults - MOST_ROWS_NAMED} more than were named, expected a phrase and a whole number in each`,
      fix: 'See whether box.md names the right columns',
    });
  return { value: [...found.values()], diagnostics };
};

/** The rows, or what can be read of them where a quote never closes. */
const readRows = (text: string, file: string, diagnostics: Diagnostic[]): readonly Row[] => {
  try {
    return rowsOf(text, true);
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    diagnostics.push({
      weight: 'look at',
      rule: 'searches-quote',
      location: { file, line: Math.max(1, Number(error.lines ?? 1)), column: 1 },
      message:
        'Unexpected `"` that no other closes, expected quotes in pairs; they were read as any other sign',
      fix: 'Close the quote, or take it out',
    });
    return rowsOf(text, false);
  }
};
