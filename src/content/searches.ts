/** searches.csv: what people typed, as statistics of a site or a shop export it. */
import type { Checked, Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import { foldCase } from '../text/fold.ts';
import {
  findingsIn,
  missingColumn,
  passedRows,
  type RowFinding,
  unclosedQuote,
  unreadableColumns,
} from './csv-findings.ts';
import { csvScanner } from './csv-scanner.ts';
import { countOf } from './search-count.ts';
import { searchShape } from './search-shape.ts';
import type { TextSource } from './sources.ts';
import { blockLines } from './write-yaml.ts';

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

/** What becomes of quotes where one is not closed. */
const AS_SIGNS = '; they were read as any other sign';

const COLUMNS = ['phrase', 'count'] as const;

const columnIn = (titles: readonly string[], name: string): number =>
  titles.findIndex((title) => foldCase(title) === foldCase(name));

/** The lines of box.md that name two columns of a list. */
const linesFor = (titles: readonly string[], phrase: number, count: number): string =>
  blockLines({ phrase: titles[phrase] ?? '', count: titles[count] ?? '' })
    .map((line) => `\`${line}\``)
    .join(' and ');

/** Rows of a list whose names say nothing: by what is in its columns, where that can be seen in one way only. */
const byShape = (
  text: string,
  header: { readonly titles: readonly string[]; readonly line: number },
  columns: SearchColumns | undefined,
): { readonly rows: readonly SheetRow[]; readonly findings: readonly RowFinding[] } => {
  const shape = searchShape(text, { phrase: columns?.phrase ?? 'phrase', count: columns?.count ?? 'count' });
  const { titles, line } = shape ?? header;
  // A name that box.md gives is no guess: where the file has no such column, somebody has to look.
  const absent = COLUMNS.flatMap((column) => {
    const named = columns?.[column];
    if (named === undefined || columnIn(titles, named) >= 0) return [];
    return [
      missingColumn('searches', {
        column,
        named,
        titles,
        line,
        formatAt: columns?.location,
        weight: 'must fix',
      }),
    ];
  });
  if (absent.length > 0) return { rows: [], findings: absent };
  const finding = (weight: 'look at' | 'note', rule: string, message: string, fix: string): RowFinding => ({
    weight,
    rule,
    line,
    message,
    fix,
  });
  const there = titles.filter((title) => title !== '').join('`, `');
  const pairs = (shape?.phrase ?? []).flatMap((phrase) =>
    (shape?.count ?? []).map((count) => [phrase, count] as const),
  );
  const [first, ...others] = pairs;
  if (!shape || !first || others.length > 0) {
    const lines = pairs.map(([phrase, count]) => linesFor(titles, phrase, count));
    const expected = first
      ? 'one of texts and one of whole numbers'
      : 'a column of texts and one of whole numbers';
    const fix =
      there === ''
        ? 'Write the columns’ names above them, `phrase` and `count`'
        : first
          ? `Write into box.md under \`searches\` which of them are meant: ${lines.join(', or ')}`
          : 'Export what was typed and how often; where both are there, name them in box.md by `phrase: …` and `count: …` under `searches`';
    const found = there === '' ? 'without names' : `\`${there}\``;
    const message = `Unexpected columns ${found}, expected ${expected}; the file was not read`;
    return { rows: [], findings: [finding('look at', 'searches-column', message, fix)] };
  }
  const [phrase, count] = first;
  const name = (at: number): string => (titles[at] ? `\`${titles[at]}\`` : `column ${at + 1}`);
  const above = `${shape.above} ${shape.above === 1 ? 'line' : 'lines'}`;
  const findings: RowFinding[] = [];
  const areNamed = COLUMNS.every((column) => columnIn(titles, columns?.[column] ?? column) >= 0);
  if (!areNamed)
    findings.push(
      finding(
        'note',
        'searches-columns',
        `Unexpected columns without the names \`phrase\` and \`count\`, expected them; ${name(phrase)} was taken for what was typed and ${name(count)} for how often${shape.above > 0 ? `, and ${above} above them for no part of the list` : ''}`,
        there === ''
          ? 'Nothing, if that is right; to be sure, write `phrase` and `count` above the columns'
          : `Nothing, if that is right; to be sure, write ${linesFor(titles, phrase, count)} under \`searches\` in box.md`,
      ),
    );
  else if (shape.above > 0)
    findings.push(
      finding(
        'note',
        'searches-columns',
        `Unexpected ${above} above the columns’ names, expected these first; what stands there was passed over`,
        'Nothing, if that is right',
      ),
    );
  if (shape.unclosed !== undefined)
    findings.push(unclosedQuote('searches', shape.unclosed, 'look at', AS_SIGNS));
  const areQuoted = shape.unclosed === undefined;
  return {
    rows: shape.rows.map(({ cells, line: at }) => ({
      phrase: plainCell(cells[phrase] ?? '', areQuoted),
      count: plainCell(cells[count] ?? '', areQuoted),
      line: at,
    })),
    findings,
  };
};

/** Fewer rows may well come to the count of another by chance. */
const LEAST_SUMMED = 3;

/** The first or last row where its count is that of all others together: it sums them up. */
const totalIn = (rows: readonly SheetRow[]): SheetRow | undefined => {
  const counts = rows.map(({ count }) => countOf(count) ?? 0);
  const all = counts.reduce((sum, count) => sum + count, 0);
  const isTotal = (at: number): boolean =>
    rows.length > LEAST_SUMMED && (counts.at(at) ?? 0) * 2 === all && all > 0;
  return isTotal(-1) ? rows.at(-1) : isTotal(0) ? rows[0] : undefined;
};

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
  let unknown: { readonly titles: readonly string[]; readonly line: number } | undefined;
  const find = (titles: readonly string[], line: number): readonly [number, number] | undefined => {
    const unreadable = unreadableColumns('searches', titles, line, 'look at');
    findings.push(...unreadable);
    if (unreadable.length > 0) return undefined;
    const [phrase = -1, count = -1] = COLUMNS.map((column) => columnIn(titles, columns?.[column] ?? column));
    if (phrase >= 0 && count >= 0) return [phrase, count];
    unknown = { titles: [...titles], line };
    return undefined;
  };
  let rows = sheetRows(source.text, find, (line) => {
    findings.push(unclosedQuote('searches', line, 'look at', AS_SIGNS));
  });
  if (unknown) {
    const shaped = byShape(source.text, unknown, columns);
    rows = shaped.rows;
    findings.push(...shaped.findings);
  }

  const found = new Map<string, SearchRow>();
  const passed = passedRows('searches', findings);
  const total = totalIn(rows);
  if (total)
    findings.push({
      weight: 'note',
      rule: 'searches-total',
      line: total.line,
      message: `Unexpected row \`${total.phrase}\` whose count is that of all others together, expected phrases alone; it was passed over`,
      fix: 'Nothing, if it is the sum; else take the row out and write its count elsewhere',
    });
  for (const row of rows) {
    const { phrase, count: cell, line } = row;
    if ((phrase === '' && cell === '') || row === total) continue;
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
