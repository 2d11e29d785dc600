/** The parcels for a terminal: plain words and columns, no colour, made to be read aloud too. */

import {
  dateOfDay,
  eveningWords,
  type Group,
  logLogLimits,
  neverWords,
  outlookWords,
  overdueWords,
  type ParcelsFacts,
  paceWords,
  percent,
  revealWords,
  type Step,
  stateWords,
} from '../pipeline/parcels.ts';
import { counted } from '../text/counting-words.ts';
import { type Column, hanging, tableLines, wrapped } from './cells.ts';

const NARROWEST = 60;
const WIDEST = 140;
/** Longer sentences than this are not read with ease. Common practice, no source. */
const WIDEST_TEXT = 100;

/** A heading and what stands under it; nothing where there is nothing. */
const part = (heading: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', heading, ...lines];

const figure = (share: number): string => share.toFixed(3);

const limitsText = (step: Step): string => {
  const limits = logLogLimits(step);
  return limits ? `${figure(1 - limits.upper)} to ${figure(1 - limits.lower)}` : '';
};

const curveLines = (steps: readonly Step[], width: number): string[] =>
  steps.length === 0
    ? []
    : tableLines(
        [
          { head: 'Day', align: 'end', cells: steps.map(({ day }) => String(day)) },
          { head: 'Waiting', align: 'end', cells: steps.map(({ atRisk }) => String(atRisk)) },
          { head: 'Arrived', align: 'end', cells: steps.map(({ delivered }) => String(delivered)) },
          { head: 'Share', align: 'end', cells: steps.map(({ waiting }) => figure(1 - waiting)) },
          { head: '95% limits', cells: steps.map(limitsText) },
        ],
        width,
      );

const wholeDay = (day: number | undefined): string => (day === undefined ? '' : `day ${day}`);

const groupLines = (kind: string, groups: readonly Group[], width: number): string[] => {
  const numbers = (head: string, of: (group: Group) => number): Column => ({
    head,
    align: 'end',
    cells: groups.map((group) => String(of(group))),
  });
  return groups.length === 0
    ? []
    : tableLines(
        [
          { head: kind, wraps: true, cells: groups.map(({ name }) => name || 'not named') },
          numbers('Parcels', ({ parcels }) => parcels),
          numbers('Arrived', ({ delivered }) => delivered),
          numbers('On way', ({ travelling }) => travelling),
          numbers('Overdue', ({ overdue }) => overdue),
          { head: 'Share', align: 'end', cells: groups.map(({ share }) => percent(share)) },
          { head: 'Half by', align: 'end', cells: groups.map(({ half }) => wholeDay(half.day)) },
          { head: '', cells: groups.map(({ pace }) => (pace === 'usual' ? '' : pace)) },
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
  const width = Math.min(WIDEST, Math.max(NARROWEST, options.columns));
  const text = (sentences: readonly string[]): string[] =>
    sentences.filter(Boolean).flatMap((sentence) => wrapped(sentence, Math.min(width, WIDEST_TEXT)));
  const { cycle, theme, asOfDate, curve, overdue, carriers, regions, file } = facts;
  const continuing =
    facts.outlook.source === 'both'
      ? facts.outlook.curve.steps.filter(({ day }) => day > facts.outlook.horizon)
      : facts.outlook.source === 'earlier'
        ? facts.outlook.curve.steps
        : [];
  const lines = [
    ...wrapped(`Parcels of ${cycle}${theme ? `, ${theme}` : ''}, as of ${asOfDate}`, width),
    ...text([stateWords(facts)]),
    '',
    ...text(outlookWords(facts, lang)),
    ...text([neverWords(facts)]),
    ...part('Reveal', [
      ...text(revealWords(facts, lang)),
      ...facts.evenings.map(
        ({ moment, share }) =>
          `  ${eveningWords(moment, facts.timeZone, lang)}: ${percent(share, facts.wanted)} expected by the day before`,
      ),
    ]),
    ...(file === undefined || facts.parcels === 0
      ? []
      : part('Overdue', [
          ...text([overdueWords(facts)]),
          ...(overdue?.days ?? []).flatMap(({ shipped, days, count, lines: where }) =>
            hanging(
              '  ',
              `${counted(count, 'parcel')} that left on ${dateOfDay(shipped)}, ${counted(days, 'day')} ago: ${options.showFile(file)}, ${where.length === 1 ? 'line' : 'lines'} ${where.join(', ')}${count > where.length ? ' and more' : ''}`,
              width,
            ),
          ),
        ])),
    ...part('By carrier', [
      ...text(paceWords(carriers, 'carrier', lang)),
      ...groupLines('Carrier', carriers, width),
    ]),
    ...part('By region', [
      ...text(paceWords(regions, 'region', lang)),
      ...groupLines('Region', regions, width),
    ]),
    ...part('Share arrived by days since they left (Kaplan-Meier)', curveLines(curve.steps, width)),
    ...part(
      facts.outlook.source === 'both'
        ? 'And from there on, by the earlier cycles'
        : 'Share arrived by days since they left, in earlier cycles (Kaplan-Meier)',
      curveLines(continuing, width),
    ),
  ];
  return `${lines.join('\n')}\n`;
};
