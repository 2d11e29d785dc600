/** What is wrong with a CSV file, worded alike whatever it holds. */
import type { Diagnostic, Location, Weight } from '../diagnostics/diagnostic.ts';
import { defined } from '../text/defined.ts';

/** A finding whose file is known to who reports it. */
export type RowFinding = Omit<Diagnostic, 'location'> & { readonly line: number };

/** Findings in their file, each at the beginning of its line. */
export const findingsIn = (file: string, findings: readonly RowFinding[]): readonly Diagnostic[] =>
  findings.map(({ line, ...rest }) => ({ ...rest, location: { file, line, column: 1 } }));

/** Which of the files it is: findings' rules begin with it, and box.md has a key of that name where it has columns to map. */
type CsvKind = 'parcels' | 'searches' | 'addresses';

/** Where box.md speaks of the file, if it does. */
export const relatedTo = (location: Location | undefined, message: string): Diagnostic['related'] =>
  location && { location, message };

interface MissingColumn {
  readonly column: string;
  /** The column's name by box.md, where it gives one. */
  readonly named: string | undefined;
  readonly titles: readonly string[];
  readonly line: number;
  readonly formatAt: Location | undefined;
  readonly weight: Weight;
}

/** A column is wanted that the header does not have. */
export const missingColumn = (
  kind: CsvKind,
  { column, named, titles, line, formatAt, weight }: MissingColumn,
): RowFinding => {
  const there = titles.filter((title) => title !== '').join('`, `');
  const related = named === undefined ? undefined : relatedTo(formatAt, 'box.md names the columns here');
  return {
    weight,
    rule: `${kind}-column`,
    line,
    message: `Unexpected columns \`${there}\`, expected \`${named ?? column}\` among them; the file was not read`,
    fix:
      named === undefined
        ? `Name the column in box.md, as \`${column}: …\` under \`${kind}\``
        : 'Write the column’s name in box.md as the file has it',
    ...defined({ related }),
  };
};

/** A quote opens on this line and never closes. `then` says what became of the rest, where it was read all the same. */
export const unclosedQuote = (kind: CsvKind, line: number, weight: Weight, then = ''): RowFinding => ({
  weight,
  rule: `${kind}-quote`,
  line,
  message: `Unexpected \`"\` that no other closes, expected quotes in pairs${then}`,
  fix: 'Close the quote, or take it out',
});

/** Rows named one by one; an export with another idea of a date or a number has thousands alike. */
const MOST_NAMED = 10;

/** Rows that were passed over, each named until there are too many. */
interface PassedRows {
  readonly passOver: (line: number, message: string, fix: string) => void;
  readonly count: () => number;
  /** The rest, counted together: nothing where every row was named. `expected` is what a row should hold. */
  readonly unnamed: (expected: string, fix: string) => readonly RowFinding[];
}

/** Collects faulty rows into `findings`. */
export const passedRows = (kind: CsvKind, findings: RowFinding[], weight: Weight = 'look at'): PassedRows => {
  const rule = `${kind}-row`;
  let count = 0;
  return {
    passOver: (line, message, fix) => {
      count += 1;
      if (count <= MOST_NAMED)
        findings.push({
          weight,
          rule,
          line,
          message,
          fix: weight === 'must fix' ? fix : `${fix}; the row was passed over`,
        });
    },
    count: () => count,
    unnamed: (expected, fix) => {
      const more = count - MOST_NAMED;
      const message = `Unexpected rows, ${more} more than were named, expected ${expected} in each`;
      return more > 0 ? [{ weight, rule, line: 1, message, fix }] : [];
    },
  };
};
