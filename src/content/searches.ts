/** searches.csv: what people typed, as statistics of a site or a shop export it. */
import type { Checked, Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import { foldCase } from '../text/fold.ts';
import { findingsIn, missingColumn, passedRows, type RowFinding, unclosedQuote } from './csv-findings.ts';
import { csvScanner } from './csv-scanner.ts';
import type { TextSource } from './sources.ts';

/** A phrase and how often it was typed. */
interface SearchRow {
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

/** Longer than this is a paste, not something typed: no search page takes as much. Common practice, no source. */
const LONGEST_PHRASE = 200;

const MEND = 'Mend the row or take it out';

/** "1,204", "1.204", "1 204" and "1'204" are all one thousand two hundred and four. */
const countOf = (cell: string): number | undefined => {
  if (/^\d{1,3}(?:([,.'’\s])\d{3})(?:\1\d{3})*$/.test(cell)) return Number(cell.replace(/\D/g, ''));
  return /^\d{1,15}(?:[.,]0+)?$/.test(cell) ? Number.parseInt(cell, 10) : undefined;
};

/** A row's two cells that count, and the line it begins on. */
interface SheetRow {
  readonly phrase: string;
  readonly count: string;
  readonly line: number;
}

/**
 * The file's rows with the two columns that `find` picks of the titles; without either, no rows. `unclosed` is told of a
 * quote that nothing closes: then the file is read again with quotes as any other sign, because people do type them.
 */
const sheetRows = (
  text: string,
  find: (titles: readonly string[], line: number) => readonly [phrase: number, count: number] | undefined,
  unclosed: (line: number) => void,
): readonly SheetRow[] => {
  const read = (quotes: boolean): readonly SheetRow[] | undefined => {
    const rows: SheetRow[] = [];
    let whole = true;
    const scanner = csvScanner(
      {
        header: find,
        row: ([phrase = '', count = ''], line) => {
          rows.push({ phrase: plainCell(phrase, quotes), count: plainCell(count, quotes), line });
        },
        unclosed: (line) => {
          whole = false;
          unclosed(line);
        },
      },
      { quotes },
    );
    scanner.write(text);
    scanner.end();
    return whole ? rows : undefined;
  };
  return read(true) ?? read(false) ?? [];
};

/** White space as single spaces; quotes that were read as signs are still no part of what was typed. */
const plainCell = (cell: string, quotes: boolean): string =>
  (quotes ? cell : cell.replace(/^\s*"|"\s*$/g, '')).replace(/\s+/g, ' ').trim();

/**
 * The phrases of searches.csv with their counts, in the file's order; a phrase that stands twice is counted
 * together. Rows typed 0 times are left out without a word, as exports hold thousands. Reports rows that are none, and
 * columns that are missing: must fix where box.md names them, look at where the file is merely of another shape,
 * because nothing that is published hangs on it.
 */
export const readSearches = (
  source: TextSource | undefined,
  columns?: SearchColumns,
): Checked<readonly SearchRow[]> => {
  if (!source) {
    const missing: Diagnostic[] = columns
      ? [
          {
            weight: 'look at',
            rule: 'searches-missing',
            location: columns.location,
            message: 'Unexpected `searches` without a file, expected `searches.csv` beside box.md',
            fix: 'Put the export there as searches.csv, or take the key out',
          },
        ]
      : [];
    return { value: [], diagnostics: missing };
  }
  const file = source.path;
  const findings: RowFinding[] = [];
  const find = (titles: readonly string[], line: number): readonly [number, number] | undefined => {
    const [phrase, count] = (['phrase', 'count'] as const).map((column) => {
      const named = columns?.[column];
      const wanted = foldCase(named ?? column);
      const at = titles.findIndex((title) => foldCase(title) === wanted);
      const weight = named === undefined ? 'look at' : 'must fix';
      const about = { column, named, titles, line, formatAt: columns?.location, weight } as const;
      if (at < 0) findings.push(missingColumn('searches', about));
      return at < 0 ? undefined : at;
    });
    return phrase === undefined || count === undefined ? undefined : [phrase, count];
  };
  const rows = sheetRows(source.text, find, (line) => {
    findings.push(unclosedQuote('searches', line, 'look at', '; they were read as any other sign'));
  });

  const found = new Map<string, SearchRow>();
  const passed = passedRows('searches', findings);
  for (const { phrase, count: cell, line } of rows) {
    if (phrase === '' && cell === '') continue;
    const count = countOf(cell);
    if (count === 0) continue;
    if (phrase === '')
      passed.passOver(line, 'Unexpected row without a phrase, expected what was typed', MEND);
    else if ([...phrase].length > LONGEST_PHRASE)
      passed.passOver(
        line,
        `Unexpected phrase of more than ${LONGEST_PHRASE} characters, expected what was typed`,
        MEND,
      );
    else if (count === undefined)
      passed.passOver(
        line,
        `Unexpected count \`${cell}\`, expected a whole number`,
        'Write how often it was typed, as 226',
      );
    else {
      const key = foldCase(phrase);
      const before = found.get(key);
      found.set(
        key,
        before
          ? { ...before, count: before.count + count }
          : { phrase, count, location: { file, line, column: 1 } },
      );
    }
  }
  findings.push(
    ...passed.unnamed('a phrase and a whole number', 'See whether box.md names the right columns'),
  );
  return { value: [...found.values()], diagnostics: findingsIn(file, findings) };
};
