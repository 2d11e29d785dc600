/** The parcels for a terminal: plain words and columns, no colour, made to be read aloud too. */
import { dateOfDay, type Group, logLogLimits, type ParcelsFacts, type Step } from '../pipeline/parcels.ts';
import { parcels as words } from '../wording/en/parcels.ts';
import { type Column, hanging, tableLines, wrappedInCells } from './cells.ts';
import { part } from './report.ts';
import { reportWidth } from './widths.ts';

const { report } = words;

/** Longer sentences than this are not read with ease. Common practice, no source. */
const WIDEST_TEXT = 100;

const figure = (share: number): string => share.toFixed(3);

const limitsText = (step: Step): string => {
  const limits = logLogLimits(step);
  return limits ? report.range(figure(1 - limits.upper), figure(1 - limits.lower)) : '';
};

const curveLines = (steps: readonly Step[], width: number): string[] =>
  steps.length === 0
    ? []
    : tableLines(
        [
          { head: report.columns.day, align: 'end', cells: steps.map(({ day }) => String(day)) },
          { head: report.columns.waiting, align: 'end', cells: steps.map(({ atRisk }) => String(atRisk)) },
          {
            head: report.columns.arrived,
            align: 'end',
            cells: steps.map(({ delivered }) => String(delivered)),
          },
          {
            head: report.columns.share,
            align: 'end',
            cells: steps.map(({ missing }) => figure(1 - missing)),
          },
          { head: report.columns.limits, cells: steps.map(limitsText) },
        ],
        width,
      );

const wholeDay = (day: number | undefined): string => (day === undefined ? '' : report.halfBy(day));

const groupLines = (by: 'carrier' | 'region', groups: readonly Group[], width: number): string[] => {
  const numbers = (head: string, of: (group: Group) => number): Column => ({
    head,
    align: 'end',
    cells: groups.map((group) => String(of(group))),
  });
  return groups.length === 0
    ? []
    : tableLines(
        [
          {
            head: report.columns.group[by],
            wraps: true,
            cells: groups.map(({ name }) => name || words.unnamed),
          },
          numbers(report.columns.parcels, ({ parcels }) => parcels),
          numbers(report.columns.arrived, ({ delivered }) => delivered),
          numbers(report.columns.travelling, ({ travelling }) => travelling),
          numbers(report.columns.overdue, ({ overdue }) => overdue),
          {
            head: report.columns.share,
            align: 'end',
            cells: groups.map(({ share }) => words.percent(share)),
          },
          { head: report.columns.half, align: 'end', cells: groups.map(({ half }) => wholeDay(half)) },
          { head: '', cells: groups.map(({ pace }) => words.paces[pace]) },
        ],
        width,
      );
};

/** The whole report, ending in a line break. `columns` are cells of a line; `showFile` makes a file a path to open. */
export const parcelsReport = (
  facts: ParcelsFacts,
  options: { readonly columns: number; readonly showFile: (file: string) => string; readonly lang: string },
): string => {
  const { lang } = options;
  const width = reportWidth(options.columns);
  const text = (sentences: readonly string[]): string[] =>
    sentences.filter(Boolean).flatMap((sentence) => wrappedInCells(sentence, Math.min(width, WIDEST_TEXT)));
  const { cycle, theme, asOfDate, curve, overdue, carriers, regions, file } = facts;
  const continuing =
    facts.outlook.source === 'both'
      ? facts.outlook.curve.steps.filter(({ day }) => day > facts.outlook.horizon)
      : facts.outlook.source === 'earlier'
        ? facts.outlook.curve.steps
        : [];
  const lines = [
    ...wrappedInCells(report.title(cycle, theme, asOfDate), width),
    ...text([words.state(facts)]),
    '',
    ...text(words.outlook(facts, lang)),
    ...text([words.never(facts)]),
    ...part(report.reveal, [
      ...text(words.reveal(facts, lang)),
      ...facts.evenings.map(
        ({ moment, share }) =>
          `  ${report.evening(words.evening(moment, facts.timeZone, lang), words.percent(share, facts.aim))}`,
      ),
    ]),
    ...(file === undefined || facts.parcels === 0
      ? []
      : part(report.overdue, [
          ...text([words.overdue(facts)]),
          ...(overdue?.days ?? []).flatMap(({ shipped, days, count, lines: where }) =>
            hanging(
              '  ',
              report.overdueDay({
                count,
                shipped: dateOfDay(shipped),
                days,
                file: options.showFile(file),
                lines: where,
              }),
              width,
            ),
          ),
        ])),
    ...part(report.by.carrier, [
      ...text(words.pace(carriers, 'carrier', lang)),
      ...groupLines('carrier', carriers, width),
    ]),
    ...part(report.by.region, [
      ...text(words.pace(regions, 'region', lang)),
      ...groupLines('region', regions, width),
    ]),
    ...part(report.curve, curveLines(curve.steps, width)),
    ...part(
      facts.outlook.source === 'both' ? report.continuing : report.earlier,
      curveLines(continuing, width),
    ),
  ];
  return `${lines.join('\n')}\n`;
};
