/** The proof for a terminal: plain words in columns, no colour, made to be read aloud too. */

import { type Diagnostic, type Location, locationText } from '../diagnostics/diagnostic.ts';
import {
  briefName,
  broughtWords,
  type Coverage,
  type Edit,
  type ItemCoverage,
  isAtAim,
  linkMarkdown,
  ordinalWord,
  type PhraseCoverage,
  placeNames,
  placeWords,
  readingWords,
  saysItself,
  standingText,
  verdictWords,
} from '../pipeline/proof.ts';
import { counted, listed, numberWord } from '../text/counting-words.ts';
import { type Column, hanging, tableLines, wrapped } from './cells.ts';
import { diagnosticsCount } from './report.ts';

export interface ProofReportOptions {
  /** Cells of a line. Below 60 and above 140 it is set as for those. */
  readonly width: number;
  /** A finding's file as a path to open. */
  readonly showFile: (file: string) => string;
}

const NARROWEST = 60;
const WIDEST = 140;
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

/** What a phrase keeps from its item's standing: a phrase that few type loses little. */
const lossOf = ({ phrase, standing }: PhraseCoverage): number => phrase.weight * (1 - standing);

const weakestFirst = (items: readonly ItemCoverage[]): readonly ItemCoverage[] =>
  [...items].sort((a, b) => a.standing - b.standing || a.number - b.number);

const nameOf = ({ items }: Coverage, slug: string): string =>
  briefName(items.find((item) => item.slug === slug)?.name ?? slug);

/** Places where no phrase of the item is met. */
const placesWithout = ({ phrases }: ItemCoverage): readonly string[] =>
  placeNames
    .filter((_, i) => phrases.every(({ parts }) => (parts[i]?.mentions ?? 0) === 0))
    .map((place) => placeWords[place]);

const itemTable = ({ coverage, width }: Sheet): string[] => {
  const { aim } = coverage;
  const items = weakestFirst(coverage.items);
  const shown = (standing: number): string => standingText(standing, aim);
  const advised = items.some(({ standing, promised }) => promised > standing);
  const columns: Column[] = [
    { head: 'Standing', align: 'end', cells: items.map(({ standing }) => shown(standing)) },
    ...(advised
      ? [
          {
            head: 'Advised',
            align: 'end' as const,
            cells: items.map(({ standing, promised }) => (promised > standing ? shown(promised) : '')),
          },
        ]
      : []),
    { head: 'Item', wraps: true, cells: items.map(({ number, name }) => `${number}. ${briefName(name)}`) },
    {
      head: 'Places',
      align: 'end',
      cells: items.map((item) => `${placeNames.length - placesWithout(item).length} of ${placeNames.length}`),
    },
  ];
  if (width >= ROOMY)
    columns.push({
      head: 'Most to win',
      wraps: true,
      cells: items.map(({ phrases }) => {
        const weakest = [...phrases].sort((a, b) => lossOf(b) - lossOf(a))[0];
        return weakest ? `${shown(weakest.standing)} ${weakest.phrase.text}` : '';
      }),
    });
  return tableLines(columns, width);
};

/** A heading and what stands under it; nothing where there is nothing. */
const part = (heading: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', heading, ...lines];

/** The first few, and how many more there are. */
const few = <T>(all: readonly T[], lines: (one: T, index: number) => readonly string[]): string[] => {
  const more = all.length - MOST;
  return [
    ...all.slice(0, MOST).flatMap(lines),
    ...(more > 0 ? [`  and ${numberWord(more)} more, on the page`] : []),
  ];
};

const absentLines = ({ coverage, width }: Sheet): string[] =>
  weakestFirst(coverage.items).flatMap((item) => {
    const nowhere = item.phrases.filter(({ mentions }) => mentions.length === 0);
    // What stands at the aim needs no other place; a phrase that nobody says is worth knowing all the same.
    const without = isAtAim(item.standing, coverage.aim) ? [] : placesWithout(item);
    const words = [
      ...(nowhere.length > 0 ? [`${listed(nowhere.map(({ phrase }) => `“${phrase.text}”`))} nowhere`] : []),
      ...(without.length > 0 ? [`nothing in ${listed(without)}`] : []),
    ];
    return words.length === 0 ? [] : hanging('  ', `${briefName(item.name)}: ${words.join('; ')}.`, width);
  });

const bringsWords = (coverage: Coverage, { brings }: Edit): string =>
  brings
    .flatMap((brought) => {
      const words = broughtWords(brought, coverage.aim);
      if (!words) return [];
      const there = words.there ? ', at the aim' : '';
      return [`${nameOf(coverage, brought.item)} ${words.before} to ${words.after}${there}`];
    })
    .join('; ');

const adviceLines = ({ coverage, width, at }: Sheet): string[] => {
  const digits = String(coverage.advice.length).length;
  return coverage.advice.flatMap((edit, i) => {
    const lead = `  ${String(i + 1).padStart(digits)}. `;
    const under = ' '.repeat(lead.length);
    return [
      ...hanging(lead, edit.words, width),
      ...(saysItself(edit) ? [] : hanging(under, `Write: ${edit.write}`, width)),
      ...hanging(under, [bringsWords(coverage, edit), at(edit.at)].filter(Boolean).join('. '), width),
    ];
  });
};

const rivalLines = ({ coverage, width, at }: Sheet): string[] => {
  const rivals = coverage.items.flatMap(({ phrases }) =>
    phrases.flatMap(({ phrase, rival }) => (rival ? [{ phrase: phrase.text, rival }] : [])),
  );
  return few(rivals, ({ phrase, rival }) => {
    const { cycle, title, rank, why, link } = rival;
    return [
      ...hanging(
        '  ',
        `“${phrase}”: ${cycle}, ${title}, answers first; this article comes ${ordinalWord(rank)}. ${why}`,
        width,
      ),
      ...hanging('    ', `Write in ${at(link.at)}: ${linkMarkdown(link)}`, width),
    ];
  });
};

const crowdedLines = ({ coverage, width, at }: Sheet): string[] =>
  few(coverage.overRepeated, ({ phrase, mentions, rate, sentences }) => [
    ...hanging(
      '  ',
      `“${phrase}”: ${mentions} mentions, ${rate.toFixed(1)} in every hundred words. Thin out:`,
      width,
    ),
    ...sentences
      .slice(0, MOST)
      .flatMap((sentence) => hanging('    ', `${at(sentence.at)} (${sentence.mentions} in it)`, width)),
  ]);

const sharedLines = ({ coverage, width, at }: Sheet): string[] =>
  few(coverage.shared, (shared) =>
    hanging(
      '  ',
      `${at(shared.at)} is much like ${at(shared.other.at)}: resemblance ${shared.resemblance.toFixed(2)}.`,
      width,
    ),
  );

const nameLines = ({ coverage, width }: Sheet): string[] =>
  coverage.items
    .filter(({ otherNames }) => otherNames.length > 0)
    .flatMap(({ name, otherNames }) => hanging('  ', `${briefName(name)}: ${listed(otherNames)}.`, width));

const mustFixLines = (diagnostics: readonly Diagnostic[], { width, at }: Sheet): string[] =>
  diagnostics
    .filter(({ weight }) => weight === 'must fix')
    .flatMap(({ location: place, message, fix, rule }) => [
      ...hanging('  ', `${at(place)}  ${message}  (${rule})`, width),
      ...(fix ? hanging('    ', `Fix: ${fix}`, width) : []),
    ]);

/** The whole report, ending in a line break. The weakest item comes first, the verdict last. */
export const proofReport = (
  coverage: Coverage,
  diagnostics: readonly Diagnostic[],
  options: ProofReportOptions,
): string => {
  const width = Math.min(WIDEST, Math.max(NARROWEST, options.width));
  const at = (location: Location): string =>
    locationText({ ...location, file: options.showFile(location.file) });
  const sheet: Sheet = { coverage, width, at };
  const others = diagnosticsCount(diagnostics.filter(({ weight }) => weight !== 'must fix'));
  const mustFix = diagnostics.filter(({ weight }) => weight === 'must fix').length;
  const lines = [
    ...wrapped(`Proof of ${coverage.cycle}, ${coverage.theme}: ${coverage.title}`, width),
    ...wrapped(readingWords(coverage.reading, 'en'), width),
    ...coverage.limits.flatMap((limit) => wrapped(limit, width)),
    '',
    ...itemTable(sheet),
    ...part('Absent', absentLines(sheet)),
    ...part('Rivals: another of our pages answers first', rivalLines(sheet)),
    ...part('Crowded: said too often', crowdedLines(sheet)),
    ...part('Said before in an earlier article', sharedLines(sheet)),
    ...part('Other names in a dictionary, to be taken into “also” or left', nameLines(sheet)),
    ...part('Advice', adviceLines(sheet)),
    ...part('Must fix', mustFixLines(diagnostics, sheet)),
    '',
    ...(others ? wrapped(`Findings besides: ${others}.`, width) : []),
    ...wrapped(
      verdictWords(coverage) + (mustFix > 0 ? ` ${counted(mustFix, 'finding')} must be fixed first.` : ''),
      width,
    ),
  ];
  return `${lines.join('\n')}\n`;
};
