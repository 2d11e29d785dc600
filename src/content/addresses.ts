/**
 * addresses.csv: every address that a build has shown, with what stood there and the day it was first shown. A plain
 * table that the owner may open, sort and save with a spreadsheet; a build only adds to its end.
 */
import type { Checked, Location } from '../diagnostics/diagnostic.ts';
import { foldCase } from '../text/fold.ts';
import { isDate } from './codes.ts';
import { findingsIn, passedRows, type RowFinding, unclosedQuote } from './csv-findings.ts';
import { csvScanner, delimiterOf } from './csv-scanner.ts';
import type { TextSource } from './sources.ts';
import { ADDRESS_SORTS } from './vocabulary.ts';

/** Something that stands at an address of the site. */
export interface PublicAddress {
  /** Site path with its fragment, as `boxes/2026-03-first-sowings.html#hand-rake`, in no way encoded. */
  readonly address: string;
  readonly sort: (typeof ADDRESS_SORTS)[number];
  /** Id of the cycle that an article, or an item's section, tells of. */
  readonly cycle?: string;
}

/** An address that a build has shown. */
export interface ShownAddress extends PublicAddress {
  /** ISO 8601; absent where the line does not say it so. */
  readonly firstShown?: string;
  readonly location: Location;
}

const HEADER = ['address', 'what', 'first shown'] as const;
const EXAMPLE = '`boxes/2026-03-first-sowings.html,article 2026-03,2026-03-19`';
const MEND = 'Put the line back as it was, or take it out if nobody has ever seen that address';

const ADDRESS = /^[^\s#?:/][^\s#?:]*\.html(?:#[^\s#]+)?$/;
const WHAT = new RegExp(`^(${ADDRESS_SORTS.join('|')})(?: (\\d{4}-\\d{2}))?$`);

/** As the table has it: `article 2026-03`, `kind`. */
const whatOf = ({ sort, cycle }: PublicAddress): string => [sort, cycle].filter(Boolean).join(' ');

/** Someone may have copied it out of a browser, which writes letters that are not ASCII with `%`. */
const plainAddress = (cell: string): string => {
  try {
    return decodeURI(cell);
  } catch {
    return cell;
  }
};

const readCells = (addressCell: string, what: string): PublicAddress | undefined => {
  const address = plainAddress(addressCell);
  const [, word, cycle] = WHAT.exec(what) ?? [];
  const sort = ADDRESS_SORTS.find((one) => one === word);
  const tells = sort === 'article' || sort === 'item';
  if (!sort || !ADDRESS.test(address) || tells !== (cycle !== undefined)) return undefined;
  if (address.includes('#') !== (sort === 'item')) return undefined;
  return { address, sort, ...(cycle !== undefined && { cycle }) };
};

/** Whether a build was stopped within the first line, so that there is no table yet. */
const isBegun = (text: string): boolean => HEADER.join(',').startsWith(text);

/** Columns of the table, by the titles of its first row; undefined where it is another table. */
const columnsOf = (titles: readonly string[]): readonly number[] | undefined => {
  const [address = -1, what = -1, day = -1] = HEADER.map((column) =>
    titles.findIndex((title) => foldCase(title) === column),
  );
  return address < 0 || what < 0 ? undefined : day < 0 ? [address, what] : [address, what, day];
};

/**
 * The addresses of the table, each once, as its first line has it. A line that says no address is a must fix, because
 * nobody would see that address go; one that a stopped build left half written at the end is not, since the next build
 * writes the rest.
 */
export const readAddresses = (source: TextSource | undefined): Checked<readonly ShownAddress[]> => {
  if (!source || isBegun(source.text)) return { value: [], diagnostics: [] };
  const { path: file, text } = source;
  const findings: RowFinding[] = [];
  const faulty = passedRows('addresses', findings, 'must fix');
  const undated = passedRows('addresses', findings);
  const found = new Map<string, ShownAddress>();
  const halfLine = /[\r\n]$/.test(text) ? undefined : text.split('\n').length;
  const scanner = csvScanner({
    header: (titles, line) => {
      const columns = columnsOf(titles);
      if (!columns)
        findings.push({
          weight: 'must fix',
          rule: 'addresses-column',
          line,
          message: `Unexpected columns \`${titles.join('`, `')}\`, expected \`${HEADER.join('`, `')}\``,
          fix: `Write \`${HEADER.join(',')}\` as the first line`,
        });
      return columns;
    },
    row: ([addressCell = '', what = '', day = ''], line) => {
      const read = readCells(addressCell, what);
      if (read && found.has(read.address)) return;
      if (read) {
        const isDay = isDate(day);
        const location = { file, line, column: 1 };
        found.set(read.address, { ...read, ...(isDay && { firstShown: day }), location });
        if (!isDay)
          undated.passOver(
            line,
            `Unexpected day \`${day}\`, expected one as 2026-03-19; the address is taken for one that was shown before`,
            'Write the day as 2026-03-19',
          );
      } else if (line === halfLine)
        findings.push({
          weight: 'look at',
          rule: 'addresses-row',
          line,
          message: `Unexpected end of \`${addressCell}\`, expected a whole line, as ${EXAMPLE}`,
          fix: 'Build again: where a build was stopped, the next one writes the rest. Else take the line out',
        });
      else
        faulty.passOver(
          line,
          `Unexpected line \`${[addressCell, what].filter(Boolean).join(' ')}\`, expected an address, what it is and a day, as ${EXAMPLE}`,
          MEND,
        );
    },
    unclosed: (line) => findings.push(unclosedQuote('addresses', line, 'must fix')),
  });
  scanner.write(text);
  scanner.end();
  findings.push(...faulty.unnamed(`an address, as ${EXAMPLE}`, MEND));
  findings.push(...undated.unnamed('a day as 2026-03-19', 'Write the days as 2026-03-19'));
  return { value: [...found.values()], diagnostics: findingsIn(file, findings) };
};

interface TableForm {
  readonly titles: readonly string[];
  readonly delimiter: string;
}

/** How the table is written; undefined where no line stands in it. */
const formOf = (text: string): TableForm | undefined => {
  let form: TableForm | undefined;
  const scanner = csvScanner({
    header: (titles, line) => {
      form = { titles: [...titles], delimiter: delimiterOf(text.split(/\r\n|\r|\n/)[line - 1] ?? '') };
      return undefined;
    },
    row: () => {},
    unclosed: () => {},
  });
  scanner.write(text);
  scanner.end();
  return form;
};

/** What is to be added to a table, and how many addresses that are. */
export interface ToAdd {
  readonly count: number;
  readonly text: string;
}

/**
 * What has to be added to the end of a table for these addresses to be in it, first shown on a day (ISO 8601). `text` is the file as it was written, empty where there is none; columns, delimiter and line ends are
 * kept. A last line that a stopped build left half written is completed where that can be done.
 */
export const addressesToAdd = (text: string, shown: readonly PublicAddress[], day: string): ToAdd => {
  const eol = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
  const lines = text.split(/\r\n|\r|\n/);
  const half = lines.at(-1) ?? '';
  const lacking = new Map(shown.map((one) => [one.address, one]));
  for (const { address, firstShown, location } of readAddresses({ path: '', text }).value) {
    const isHalf = half !== '' && location.line === lines.length && firstShown === undefined;
    if (!isHalf) lacking.delete(address);
  }
  if (lacking.size === 0) return { count: 0, text: '' };
  const form = isBegun(text) ? undefined : formOf(text);
  const { titles, delimiter } = form ?? { titles: HEADER, delimiter: ',' };
  const rows = [...lacking.values()].map((one) => {
    const cells = new Map<string, string>([
      ['address', one.address],
      ['what', whatOf(one)],
      ['first shown', day],
    ]);
    return titles.map((title) => cells.get(foldCase(title)) ?? '').join(delimiter);
  });
  if (!form) rows.unshift(HEADER.join(delimiter));
  const begun = half === '' ? -1 : rows.findIndex((row) => row.startsWith(half));
  if (begun >= 0) rows.unshift(...rows.splice(begun, 1).map((row) => row.slice(half.length)));
  const before = half !== '' && begun < 0 ? eol : '';
  return { count: lacking.size, text: `${before}${rows.join(eol)}${eol}` };
};
