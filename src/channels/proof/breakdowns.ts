/** Items and phrases with their standing, opened up into what it is the sum of. */

import { isAtAim } from '../../analysis/coverage/aim.ts';
import type { Coverage, Grade, ItemCoverage, PhraseCoverage } from '../../analysis/coverage/coverage.ts';
import { grades } from '../../analysis/coverage/coverage.ts';
import { addingUp, standingText } from '../../analysis/coverage/figures.ts';
import { type Zone, zones } from '../../analysis/coverage/text/zones.ts';
import { underlineOf } from '../../render/highlights.ts';
import { type Html, html, joinHtml } from '../../render/html.ts';
import { shareBar, squareMark } from '../../render/quiet-marks.ts';
import { typeset } from '../../render/typeset.ts';
import { anchors, type Sheet, shortFile, WEAK } from './sheet.ts';

/** A grade as its square and its name. */
export interface GradeView {
  readonly grade: string;
  readonly mark: Html;
}

/** What one place gives a phrase. */
interface PartView extends GradeView {
  readonly place: string;
  readonly worth: string;
  readonly count: number;
  /** Links to its mentions there. */
  readonly where: Html;
  readonly gives: string;
}

/** A phrase with its standing and what that is the sum of. */
interface PhraseView {
  readonly id: string;
  readonly text: string;
  readonly origins: readonly string[];
  readonly count: number;
  /** The anchor of its first mention. */
  readonly first: string | false;
  readonly standing: string;
  readonly sum: string;
  /** What its places give more than the most that counts. */
  readonly beyond: string | false;
  readonly bar: Html;
  /** The anchor of its breakdown. */
  readonly breakdown: string;
  readonly parts: readonly PartView[];
  /** Places that give nothing share a line of the breakdown, or it would be mostly noughts. */
  readonly without:
    | { readonly places: readonly string[]; readonly worth: string; readonly mark: Html }
    | false;
  /** The longer phrase that it is counted inside of. */
  readonly parent: string | undefined;
  /** Its share of the item, and what it adds to the item's standing. */
  readonly share: string;
  readonly adds: string;
}

/** An item with its phrases. */
export interface ItemView {
  readonly number: number;
  readonly name: string;
  readonly standing: string;
  readonly sum: string;
  readonly below: boolean;
  readonly bar: Html;
  /** The class of its underline. */
  readonly underline: string;
  /** The best grade in each place. */
  readonly marks: readonly GradeView[];
  readonly phrases: readonly PhraseView[];
}

const best = (some: readonly Grade[]): Grade => grades.find((grade) => some.includes(grade)) ?? 'absent';

/** A grade as its square and its name. */
export const gradeView = ({ words }: Pick<Sheet, 'words'>, grade: Grade): GradeView => ({
  grade: words.gradeNames[grade],
  mark: squareMark(grade),
});

/** Links to a phrase's mentions in one place, by file: "cycle.md 14, 17:3, 17:40". */
const mentionLinks = (
  coverage: Coverage,
  phrase: PhraseCoverage,
  zone: Zone,
  anchorOf: (mention: number) => string,
): Html => {
  const here = phrase.mentions.flatMap((mention, index) =>
    mention.zone === zone ? [{ ...mention.at, index }] : [],
  );
  const links = [...new Set(here.map(({ file }) => file))].map((name) => {
    const inFile = here.filter(({ file }) => file === name);
    const each = inFile.map(({ line, column, index }) => {
      const alone = inFile.filter((other) => other.line === line).length === 1;
      return html`<a href="#${anchorOf(index)}">${alone ? line : `${line}:${column}`}</a>`;
    });
    return html`${shortFile(name, coverage.cycle)} ${joinHtml(each, ', ')}`;
  });
  return joinHtml(links, '; ');
};

const phraseView = (
  sheet: Sheet,
  item: number,
  phrase: PhraseCoverage,
  index: number,
): Omit<PhraseView, 'share' | 'adds'> => {
  const { coverage, words } = sheet;
  const { parts, mentions, standing } = phrase;
  const given = parts.reduce((sum, { gives }) => sum + gives, 0);
  const sums = addingUp(
    parts.map(({ gives }) => gives),
    given,
  );
  // Of the figures as they are shown, so that the subtraction can be checked too.
  const beyond = Number(given.toFixed(3)) - Number(standing.toFixed(3));
  const nowhere = parts.filter((one) => one.mentions === 0);
  const anchorOf = (mention: number): string => anchors.mention(item, index + 1, mention + 1);
  return {
    id: `${item}-${index + 1}`,
    text: phrase.phrase.text,
    origins: phrase.phrase.origins.map(words.origin),
    count: mentions.length,
    first: mentions.length > 0 && anchorOf(0),
    standing: standingText(standing, coverage.aim),
    sum: standing.toFixed(3),
    beyond: beyond > 0.0005 && beyond.toFixed(3),
    bar: shareBar(standing, coverage.aim),
    breakdown: anchors.breakdown(item, index + 1),
    parts: parts.map(({ zone, worth, grade, mentions: count }, i) => ({
      ...gradeView(sheet, grade),
      place: words.zones[zone],
      worth: worth.toFixed(2),
      count,
      where: mentionLinks(coverage, phrase, zone, anchorOf),
      gives: sums[i] ?? '',
    })),
    without: nowhere.length > 0 && {
      places: nowhere.map(({ zone }) => words.zones[zone]),
      worth: nowhere.reduce((sum, { worth }) => sum + worth, 0).toFixed(2),
      mark: squareMark('absent'),
    },
    parent: mentions.find(({ within, grade }) => within !== undefined && !WEAK.includes(grade))?.within,
  };
};

/** An item with its phrases. */
export const itemView = (sheet: Sheet, item: ItemCoverage): ItemView => {
  const { coverage } = sheet;
  const { number, phrases, standing } = item;
  const weights = phrases.reduce((sum, { phrase }) => sum + phrase.weight, 0);
  const shares = phrases.map(({ phrase }) => phrase.weight / weights);
  const shown = addingUp(shares, 1);
  const gives = addingUp(
    phrases.map((phrase, i) => (shares[i] ?? 0) * phrase.standing),
    standing,
  );
  return {
    number,
    name: typeset(item.name, coverage.lang),
    standing: standingText(standing, coverage.aim),
    sum: standing.toFixed(3),
    below: !isAtAim(standing, coverage.aim),
    bar: shareBar(standing, coverage.aim),
    underline: underlineOf(number),
    marks: zones.map((_, i) =>
      gradeView(sheet, best(phrases.map(({ parts }) => parts[i]?.grade ?? 'absent'))),
    ),
    phrases: phrases.map((phrase, i) => ({
      ...phraseView(sheet, number, phrase, i),
      share: shown[i] ?? '',
      adds: gives[i] ?? '',
    })),
  };
};
