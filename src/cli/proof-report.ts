/** The proof for a terminal: plain words in columns, no colour, made to be read aloud too. */
import { type Diagnostic, heaviestFirst, type Location, locationText } from '../diagnostics/diagnostic.ts';
import {
  broughtFigures,
  type Coverage,
  type Edit,
  type ItemCoverage,
  linkMarkdown,
  standingText,
  verdictOf,
  type Zone,
} from '../pipeline/proof.ts';
import { coverage as said } from '../wording/en/coverage.ts';
import { findings } from '../wording/en/findings.ts';
import { proof } from '../wording/en/proof.ts';
import { type Column, hanging, tableLines, wrappedInCells } from './cells.ts';
import { diagnosticsCount, linesToCopy, part } from './report.ts';
import { reportWidth } from './widths.ts';

const { report: words } = proof;

/** How the report is set. */
export interface ProofReportOptions {
  /** Cells of a line. Below 60 and above 140 it is set as for those. */
  readonly width: number;
  /** A finding's file as a path to open. */
  readonly showFile: (file: string) => string;
}

/** From this width on there is room for a column of phrases. */
const ROOMY = 80;
/** Of what may be many, this many are told here; the page has all. */
const MOST = 5;

/** What the parts of the report are told: the page, the width, and how a file is shown. */
interface Sheet {
  readonly coverage: Coverage;
  readonly width: number;
  readonly at: (location: Location) => string;
}

const weakestFirst = (items: readonly ItemCoverage[]): readonly ItemCoverage[] =>
  [...items].sort((a, b) => a.standing - b.standing || a.number - b.number);

const nameOf = ({ items }: Coverage, slug: string): string =>
  items.find((item) => item.slug === slug)?.shortName ?? slug;

/** Places of an item's own that give it nothing. */
const placesWithout = ({ places }: ItemCoverage): readonly Zone[] =>
  places.filter(({ isOwn, gives }) => isOwn && gives === 0).map(({ zone }) => zone);

const placesOf = (item: ItemCoverage): string => {
  const own = item.places.filter(({ isOwn }) => isOwn).length;
  return words.placesOf(own - placesWithout(item).length, own);
};

const itemTable = ({ coverage, width }: Sheet): string[] => {
  const { aim } = coverage;
  const items = weakestFirst(coverage.items);
  const shown = (standing: number): string => standingText(standing, aim);
  const advised = items.some(({ standing, promised }) => promised > standing);
  const columns: Column[] = [
    { head: words.columns.standing, align: 'end', cells: items.map(({ standing }) => shown(standing)) },
    ...(advised
      ? [
          {
            head: words.columns.advised,
            align: 'end' as const,
            cells: items.map(({ standing, promised }) => (promised > standing ? shown(promised) : '')),
          },
        ]
      : []),
    {
      head: words.columns.item,
      wraps: true,
      cells: items.map(({ number, shortName }) => `${number}. ${shortName}`),
    },
    {
      head: words.columns.places,
      align: 'end',
      cells: items.map(placesOf),
    },
  ];
  if (width >= ROOMY)
    columns.push({
      head: words.columns.lacking,
      wraps: true,
      cells: items.map((item) =>
        placesWithout(item)
          .map((zone) => said.zones[zone])
          .join(', '),
      ),
    });
  return tableLines(columns, width);
};

/** The first few, and how many more there are. */
const few = <T>(all: readonly T[], lines: (one: T, index: number) => readonly string[]): string[] => {
  const more = all.length - MOST;
  return [...all.slice(0, MOST).flatMap(lines), ...(more > 0 ? [`  ${words.more(more)}`] : [])];
};

const titleLines = ({ coverage, width }: Sheet): string[] =>
  coverage.titles.flatMap((title) => hanging('  ', title, width));

const reachLines = ({ coverage, width }: Sheet): string[] =>
  coverage.items.flatMap(({ shortName, reach: { unsaid } }) =>
    unsaid.length === 0 ? [] : hanging('  ', words.unsaid(shortName, unsaid), width),
  );

const typedLines = ({ coverage, width }: Sheet): string[] =>
  coverage.items.flatMap(({ shortName, typed }) =>
    typed ? hanging('  ', words.typedFor(shortName, said.typed(typed)), width) : [],
  );

const bringsWords = (coverage: Coverage, { brings }: Edit): string =>
  brings
    .flatMap((brought) => {
      const figures = broughtFigures(brought, coverage.aim);
      if (!figures) return [];
      const { before, after, there } = figures;
      return [words.brings(nameOf(coverage, brought.item), before, after, there)];
    })
    .join('; ');

const adviceLines = ({ coverage, width, at }: Sheet): string[] => {
  const digits = String(coverage.advice.length).length;
  return coverage.advice.flatMap((edit, i) => {
    const lead = `  ${String(i + 1).padStart(digits)}. `;
    const under = ' '.repeat(lead.length);
    return [
      ...hanging(lead, said.instruction(edit), width),
      ...hanging(`${under}${words.now} `, edit.before, width),
      ...hanging(`${under}${words.instead} `, edit.after, width),
      ...hanging(under, [bringsWords(coverage, edit), at(edit.at)].filter(Boolean).join('. '), width),
    ];
  });
};

const rivalLines = ({ coverage, width, at }: Sheet): string[] => {
  const rivals = coverage.items.flatMap(({ phrases }) =>
    phrases.flatMap(({ phrase, rival }) => (rival ? [{ phrase: phrase.text, rival }] : [])),
  );
  return few(rivals, ({ phrase, rival }) => {
    const { cycle, title, rank, reason, link } = rival;
    return [
      ...hanging('  ', words.rival(phrase, cycle, title, rank, said.rivalReason(reason)), width),
      ...hanging('    ', words.writeIn(at(link.at), linkMarkdown(link)), width),
    ];
  });
};

const crowdedLines = ({ coverage, width, at }: Sheet): string[] =>
  few(coverage.overRepeated, ({ phrase, mentions, rate, sentences }) => [
    ...hanging('  ', words.crowding(phrase, mentions, rate.toFixed(1)), width),
    ...sentences
      .slice(0, MOST)
      .flatMap((sentence) => hanging('    ', words.inIt(at(sentence.at), sentence.mentions), width)),
  ]);

const sharedLines = ({ coverage, width, at }: Sheet): string[] =>
  few(coverage.shared, (shared) =>
    hanging('  ', words.muchLike(at(shared.at), at(shared.other.at), shared.resemblance.toFixed(2)), width),
  );

const calledLines = ({ coverage, width }: Sheet): string[] =>
  coverage.items.flatMap(({ shortName, called }) =>
    called.flatMap(({ name, times }) => hanging('  ', words.calledSo(shortName, name, times), width)),
  );

const nameLines = ({ coverage, width }: Sheet): string[] =>
  coverage.items
    .filter(({ otherNames }) => otherNames.length > 0)
    .flatMap(({ shortName, otherNames }) => hanging('  ', words.namesOf(shortName, otherNames), width));

const findingLines = (
  { location: place, message, fix, rule, ...rest }: Diagnostic,
  { width, at }: Sheet,
): readonly string[] => [
  ...hanging('  ', `${at(place)}  ${message}  (${rule})`, width),
  ...(fix ? hanging('    ', findings.fix(fix), width) : []),
  ...linesToCopy(rest),
];

/** Every finding that must be fixed. */
const mustFixLines = (diagnostics: readonly Diagnostic[], sheet: Sheet): string[] =>
  diagnostics
    .filter(({ weight }) => weight === 'must fix')
    .flatMap((diagnostic) => findingLines(diagnostic, sheet));

/** The others, the heavier first: as many as are read. */
const otherLines = (diagnostics: readonly Diagnostic[], sheet: Sheet): string[] =>
  few(heaviestFirst(diagnostics.filter(({ weight }) => weight !== 'must fix')), (diagnostic) =>
    findingLines(diagnostic, sheet),
  );

/** The whole report, ending in a line break. The weakest item comes first, the verdict last. */
export const proofReport = (
  coverage: Coverage,
  diagnostics: readonly Diagnostic[],
  options: ProofReportOptions,
): string => {
  const width = reportWidth(options.width);
  const at = (location: Location): string =>
    locationText({ ...location, file: options.showFile(location.file) });
  const sheet: Sheet = { coverage, width, at };
  const others = diagnosticsCount(diagnostics.filter(({ weight }) => weight !== 'must fix'));
  const mustFix = diagnostics.filter(({ weight }) => weight === 'must fix').length;
  const lines = [
    ...wrappedInCells(words.title(coverage.cycle, coverage.theme, coverage.title), width),
    ...wrappedInCells(said.reading(coverage.reading, 'en'), width),
    ...coverage.limits.flatMap((limit) => wrappedInCells(said.limits[limit], width)),
    '',
    ...itemTable(sheet),
    ...part(words.advice, adviceLines(sheet)),
    ...part(words.mustFix, mustFixLines(diagnostics, sheet)),
    ...part(words.besides(others ?? ''), otherLines(diagnostics, sheet)),
    ...part(words.rivals, rivalLines(sheet)),
    ...part(words.crowded, crowdedLines(sheet)),
    ...part(words.shared, sharedLines(sheet)),
    ...part(words.titles, titleLines(sheet)),
    ...part(words.typed, typedLines(sheet)),
    ...part(words.reach, reachLines(sheet)),
    ...part(words.called, calledLines(sheet)),
    ...part(words.names, nameLines(sheet)),
    '',
    ...wrappedInCells(
      said.verdict(verdictOf(coverage)) + (mustFix > 0 ? ` ${words.fixedFirst(mustFix)}` : ''),
      width,
    ),
  ];
  return `${lines.join('\n')}\n`;
};
