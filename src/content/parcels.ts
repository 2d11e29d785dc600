/** parcels.csv: one row a parcel, as a carrier or a shop exports it → how many are alike, and what is wrong with it. */

import type { Checked, Location } from '../diagnostics/diagnostic.ts';
import { dateOfDay } from '../text/days.ts';
import { defined } from '../text/defined.ts';
import { foldCase } from '../text/fold.ts';
import { itemAt } from '../text/item-at.ts';
import {
  findingsIn,
  missingColumn,
  passedRows,
  type RowFinding,
  relatedTo,
  unclosedQuote,
  unreadableColumns,
} from './csv-findings.ts';
import { csvScanner } from './csv-scanner.ts';
import type { Parcels } from './parcel-count.ts';
import { MOST_NAMES, parcelCounter } from './parcel-counter.ts';
import { formsFitting } from './parcel-dates.ts';
import { PARCEL_COLUMNS, type ParcelColumn, type ParcelFormat, rowReader } from './parcel-row.ts';
import { formatOf, parcelShapeOf } from './parcel-shape.ts';
import { unreadStatuses } from './unread-statuses.ts';

export type { ParcelFormat } from './parcel-row.ts';

/** What has to be known to read a file of shipments. */
interface ParcelsInput {
  readonly file: string;
  readonly format: ParcelFormat;
  /** Where box.md says it. */
  readonly formatAt?: Location | undefined;
  readonly timeZone: string;
  /** Day as of which the file is read, in days since 1970-01-01. What is dated after it has not happened yet. */
  readonly asOf: number;
}

/** Takes a file's text in chunks. `end` gives the counts, undefined where the file cannot be relied on. */
export interface ParcelsReader {
  readonly write: (text: string) => void;
  readonly end: () => Checked<Parcels | undefined>;
}

/** Rows that may stand above the titles. A choice of ours, no source. */
const MOST_ABOVE = 10;
/** As much of a file as shows what its columns are, in UTF-16 units. */
const SAMPLE = 131_072;
/** Lines named together. */
const MOST_NAMED = 10;
/** Rows that may be passed over before the rest can no longer stand for all. A choice of ours, no source. */
const MOST_PASSED_OVER = 0.1;
/** Days since the newest date after which a file with parcels on their way looks old. A choice of ours, no source. */
const STALE_DAYS = 3;
/** Fewer on their way than this share are stragglers in a file that may well be new. A choice of ours, no source. */
const STALE_SHARE = 0.03;

/** Lines of rows that have the same to be said of them. */
interface Lines {
  readonly first: number[];
  count: number;
}
const meet = (lines: Lines, line: number): void => {
  lines.count += 1;
  if (lines.first.length < MOST_NAMED) lines.first.push(line);
};
const linesText = ({ first, count }: Lines): string =>
  `${count === 1 ? 'line' : 'lines'} ${first.join(', ')}${count > first.length ? ' and more' : ''}`;

/** Dates that were not of the expected form. */
interface Unformed {
  count: number;
  sample: string;
  /** Forms that every one of them has. */
  forms: readonly string[];
}

const formFinding = (unformed: Unformed, rows: number, dates: string | undefined): RowFinding => {
  const lines = unformed.forms.map((form) => `\`dates: ${form}\``);
  return {
    weight: 'must fix',
    rule: 'parcels-dates',
    line: 1,
    message: `Unexpected dates as \`${unformed.sample.slice(0, 40)}\` in ${unformed.count} of ${rows} rows, expected ${dates ?? 'year, month and day, as 2026-03-19'}`,
    fix:
      lines.length === 0
        ? 'Write in box.md the form they have, as `dates: DD/MM/YYYY` under `parcels`'
        : lines.length === 1
          ? `Write in box.md ${lines[0]} under \`parcels\``
          : `Write in box.md under \`parcels\` which number is the month: ${lines.join(' or ')}`,
  };
};

const swappedFinding = (line: number, { format, formatAt }: ParcelsInput): RowFinding => ({
  weight: 'must fix',
  rule: 'parcels-dates',
  line,
  message: `Unexpected date that is one only with day and month the other way round, expected ${format.dates} throughout`,
  fix: 'See which of the two the file means, in every row, and write it in box.md as `dates` under `parcels`',
  ...defined({ related: relatedTo(formatAt, 'box.md gives the form here') }),
});

/** Columns that are missing, with the lines for box.md that name those which seem to be they. */
const withColumns = (missing: readonly RowFinding[], sample: string): readonly RowFinding[] => {
  const [first, ...others] = missing;
  const shape = first && parcelShapeOf(sample);
  if (!shape) return missing;
  if (shape.isOfEvents)
    return [
      {
        ...first,
        message: `Unexpected list with several rows a parcel, expected one row a parcel, with the day it left and the day it arrived; the file was not read`,
        fix: 'Export the list of shipments instead of the list of events',
      },
    ];
  if (shape.columns.shipped === undefined || shape.columns.delivered === undefined) return missing;
  const form = shape.dates.length === 1 ? shape.dates[0] : undefined;
  const lines = Object.entries(formatOf(shape.columns, form)).map(
    ([key, value]) => `  ${key}: ${JSON.stringify(value)}`,
  );
  const unsure =
    shape.dates.length > 1
      ? `, and which number is the month: \`dates: ${shape.dates.join('` or `dates: ')}\``
      : '';
  return [
    {
      ...first,
      fix: `Write in box.md which column is which${unsure}`,
      written: { lines: ['parcels:', ...lines], invented: false },
    },
    ...others.map(({ fix: _, ...rest }) => rest),
  ];
};

/** Reads one file of shipments. Columns that are not wanted, names and addresses among them, are not read. */
export const parcelsReader = (input: ParcelsInput): ParcelsReader => {
  const { file, format, asOf } = input;
  const findings: RowFinding[] = [];
  const readRow = rowReader(format, input.timeZone, asOf);
  const counter = parcelCounter();
  let at: Partial<Record<ParcelColumn, number>> = {};
  let sample = '';
  const passed = passedRows('parcels', findings);
  let [rows, swappedAt, newest] = [0, 0, Number.NEGATIVE_INFINITY];
  const later: Lines = { first: [], count: 0 };
  const twice: Lines = { first: [], count: 0 };
  const contradicted: Lines = { first: [], count: 0 };
  const unformed: Unformed = { count: 0, sample: '', forms: [] };
  const statuses = unreadStatuses();

  /** What was missing in the first row that might have been the header. */
  let missing: readonly RowFinding[] = [];
  let above = 0;
  let isTitleAbove = false;
  const header = (titles: readonly string[], line: number): readonly number[] | 'next' | undefined => {
    findings.push(...unreadableColumns('parcels', titles, line, 'must fix'));
    if (findings.length > 0) return undefined;
    const places: number[] = [];
    const lacking: RowFinding[] = [];
    for (const column of PARCEL_COLUMNS) {
      const wanted = foldCase(format[column] ?? column);
      const location = titles.findIndex((title) => foldCase(title) === wanted);
      const needed = format[column] !== undefined || column === 'shipped' || column === 'delivered';
      if (location >= 0) at = { ...at, [column]: places.push(location) - 1 };
      else if (needed)
        lacking.push(
          missingColumn('parcels', {
            ...{ column, named: format[column], titles, line, formatAt: input.formatAt },
            weight: 'must fix',
          }),
        );
    }
    if (lacking.length === 0) {
      missing = [];
      return places;
    }
    // Above the titles some lists have a line or two that say what they are.
    const isTitle = titles.filter(Boolean).length < 2;
    if (missing.length === 0 || isTitleAbove) missing = lacking;
    isTitleAbove = isTitle;
    at = {};
    above += 1;
    return above < MOST_ABOVE ? 'next' : undefined;
  };

  const row = (values: readonly string[], line: number): void => {
    rows += 1;
    const cell = (column: ParcelColumn): string => values[at[column] ?? -1] ?? '';
    const reading = readRow(cell('shipped'), cell('delivered'), cell('status'));
    if (reading.kind === 'fault') {
      const { date } = reading;
      if (date?.why === 'swapped') swappedAt ||= line;
      if (date?.why === 'shape') {
        // Both dates of the row show which number is the month.
        for (const text of [cell('shipped'), cell('delivered')]) {
          const forms = formsFitting(text);
          if (unformed.sample === '') [unformed.sample, unformed.forms] = [date.cell, forms];
          else if (text !== '') unformed.forms = unformed.forms.filter((form) => forms.includes(form));
        }
        unformed.count += 1;
      }
      passed.passOver(line, reading.message, reading.fix);
      return;
    }
    if (reading.later) meet(later, line);
    if (reading.contradicted) meet(contradicted, line);
    if (reading.unread !== undefined) statuses.meet(reading.unread, line);
    const { shipped, days, state } = reading;
    if (state !== 'toLeave') newest = Math.max(newest, state === 'delivered' ? shipped + days : shipped);
    const [carrier, region, parcel] = [cell('carrier'), cell('region'), cell('parcel')];
    if (!counter.add({ shipped, days, state, carrier, region, parcel, line })) meet(twice, line);
  };

  const scanner = csvScanner({
    header,
    row,
    unclosed: (line) => {
      findings.push(unclosedQuote('parcels', line, 'must fix'));
    },
  });

  const judgeRows = (): void => {
    findings.push(
      ...passed.unnamed('two dates', 'See whether box.md names the right columns and the form of the dates'),
    );
    const passedOver = passed.count();
    const most = rows * MOST_PASSED_OVER;
    if (swappedAt > 0) findings.push(swappedFinding(swappedAt, input));
    else if (unformed.count > most) findings.push(formFinding(unformed, rows, format.dates));
    else if (passedOver > most)
      findings.push({
        weight: 'must fix',
        rule: 'parcels-rows',
        line: 1,
        message: `Unexpected ${passedOver} of ${rows} rows that could not be read, expected at most one in ten: the rest cannot stand for all`,
        fix: 'Mend the rows named here, or export the file anew',
      });
    if (rows === 0 && findings.length === 0)
      findings.push({
        weight: 'look at',
        rule: 'parcels-empty',
        line: 1,
        message: 'Unexpected file without a row, expected one a parcel',
        fix: 'Export the file anew, or take it out',
      });
  };

  const judgeFile = (): void => {
    if (later.count > 0)
      findings.push({
        weight: 'look at',
        rule: 'parcels-later',
        line: itemAt(later.first, 0),
        message: `Unexpected dates after ${dateOfDay(asOf)} in ${later.count} of ${rows} rows (${linesText(later)}); as of that day they had not happened`,
        fix: 'Mend the dates, unless an earlier day was asked for with --as-of',
      });
    if (twice.count > 0)
      findings.push({
        weight: 'note',
        rule: 'parcels-twice',
        line: itemAt(twice.first, 0),
        message: `Unexpected parcels named before in ${twice.count} of ${rows} rows (${linesText(twice)}); each was counted once`,
        fix: 'Nothing, if the export repeats parcels',
      });
    if (contradicted.count > 0)
      findings.push({
        weight: 'look at',
        rule: 'parcels-status',
        line: itemAt(contradicted.first, 0),
        message: `Unexpected date of arrival beside a status that says on its way, in ${contradicted.count} of ${rows} rows (${linesText(contradicted)}); they were counted as arrived`,
        fix: `See whether box.md names as \`delivered\` the day a parcel arrived, and not the day it was expected`,
      });
    findings.push(...statuses.findings(rows));
    for (const kind of counter.overNamed)
      findings.push({
        weight: 'look at',
        rule: 'parcels-names',
        line: 1,
        message: `Unexpected number of different values in the column \`${format[kind] ?? kind}\`, expected at most ${MOST_NAMES}; the others were counted without one`,
        fix: `See whether box.md names the right column as \`${kind}\``,
      });
    let [all, travelling] = [0, 0];
    for (const { count, state } of counter.counts()) {
      all += count;
      if (state === 'travelling') travelling += count;
    }
    if (later.count === 0 && travelling > all * STALE_SHARE && asOf - newest > STALE_DAYS)
      findings.push({
        weight: 'look at',
        rule: 'parcels-old',
        line: 1,
        message: `Unexpected newest date ${dateOfDay(newest)} in a file read as of ${dateOfDay(asOf)}, expected a newer one while ${travelling === 1 ? '1 parcel is' : `${travelling} parcels are`} on the way`,
        fix: 'Export the file anew; or give the day it was made with --as-of, or say in its status what is lost',
      });
  };

  return {
    write: (text) => {
      if (sample.length < SAMPLE) sample += text.slice(0, SAMPLE - sample.length);
      scanner.write(text);
    },
    end: () => {
      scanner.end();
      findings.push(...withColumns(missing, sample));
      judgeRows();
      const usable = findings.every(({ weight }) => weight !== 'must fix');
      if (usable) judgeFile();
      return {
        value: usable ? { file, asOf, counts: counter.counts() } : undefined,
        diagnostics: findingsIn(file, findings),
      };
    },
  };
};
