/** Items with their standing, opened up into what it is the sum of, and where each of their phrases is said. */

import { isFound } from '../../analysis/coverage/aim.ts';
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

/** What one place gives an item. */
interface PlaceView extends GradeView {
  readonly place: string;
  readonly worth: string;
  /** The phrase that is best met there, and a link to its first mention. */
  readonly phrase: string;
  readonly href: string;
  readonly gives: string;
}

/** A phrase and where it is said. */
interface PhraseView {
  readonly id: string;
  readonly text: string;
  readonly origins: readonly string[];
  readonly count: number;
  /** The anchor of its first mention. */
  readonly first: string | false;
  readonly marks: readonly (GradeView & { readonly count: number })[];
  /** Links to its mentions, place by place. */
  readonly where: Html;
  /** The longer phrase that it is counted inside of. */
  readonly parent: string | undefined;
}

/** An item with its places and phrases. */
export interface ItemView {
  readonly number: number;
  readonly name: string;
  readonly standing: string;
  readonly below: boolean;
  readonly thin: boolean;
  readonly bar: Html;
  /** The class of its underline. */
  readonly underline: string;
  /** The best match in each place. */
  readonly marks: readonly GradeView[];
  /** Places that give something. */
  readonly places: readonly PlaceView[];
  /** Places of its own that give nothing, with what they are worth together. */
  readonly without:
    | { readonly places: readonly string[]; readonly worth: string; readonly mark: Html }
    | false;
  /** What the places give together, what the item's own are worth, and the standing that comes of it. */
  readonly given: string;
  readonly ownWorth: string;
  readonly sum: string;
  readonly phrases: readonly PhraseView[];
  readonly typed: string | undefined;
  readonly unsaid: string | undefined;
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
    const inLine = new Map<number, number>();
    for (const { line } of inFile) inLine.set(line, (inLine.get(line) ?? 0) + 1);
    const each = inFile.map(({ line, column, index }) => {
      const alone = inLine.get(line) === 1;
      return html`<a href="#${anchorOf(index)}">${alone ? line : `${line}:${column}`}</a>`;
    });
    return html`${shortFile(name, coverage.cycle)} ${joinHtml(each, ', ')}`;
  });
  return joinHtml(links, '; ');
};

const phraseView = (sheet: Sheet, item: number, phrase: PhraseCoverage, index: number): PhraseView => {
  const { coverage, words } = sheet;
  const { mentions } = phrase;
  const anchorOf = (mention: number): string => anchors.mention(item, index + 1, mention + 1);
  const inZone = (zone: Zone): readonly Grade[] =>
    mentions.filter((mention) => mention.zone === zone).map(({ grade }) => grade);
  return {
    id: `${item}-${index + 1}`,
    text: phrase.phrase.text,
    origins: phrase.phrase.origins.map(words.origin),
    count: mentions.length,
    first: mentions.length > 0 && anchorOf(0),
    marks: zones.map((zone) => ({ ...gradeView(sheet, best(inZone(zone))), count: inZone(zone).length })),
    where: joinHtml(
      zones
        .filter((zone) => inZone(zone).length > 0)
        .map((zone) => html`${words.zones[zone]} ${mentionLinks(coverage, phrase, zone, anchorOf)}`),
      '. ',
    ),
    parent: mentions.find(({ within, grade }) => within !== undefined && !WEAK.includes(grade))?.within,
  };
};

/** An item with its places and phrases. */
export const itemView = (sheet: Sheet, item: ItemCoverage): ItemView => {
  const { coverage, page, words } = sheet;
  const { number, phrases, places, standing, thin, typed, reach } = item;
  const given = places.reduce((sum, { gives }) => sum + gives, 0);
  const gives = addingUp(
    places.map((place) => place.gives),
    given,
  );
  const own = places.filter(({ isOwn }) => isOwn);
  const nowhere = own.filter((place) => place.gives === 0);
  const worth = (some: typeof places): string => some.reduce((sum, one) => sum + one.worth, 0).toFixed(2);
  return {
    number,
    name: typeset(item.name, coverage.lang),
    standing: standingText(standing, coverage.aim),
    below: !isFound({ standing, thin }, coverage.aim),
    thin,
    bar: shareBar(standing, coverage.aim),
    underline: underlineOf(number),
    marks: places.map(({ grade }) => gradeView(sheet, grade)),
    places: places.flatMap(({ zone, grade, worth: most, phrase }, i): readonly PlaceView[] => {
      const found = phrase === undefined ? undefined : phrases[phrase];
      if (!found || phrase === undefined) return [];
      const mention = found.mentions.findIndex((one) => one.zone === zone && one.grade === grade);
      return [
        {
          ...gradeView(sheet, grade),
          place: words.zones[zone],
          worth: most.toFixed(2),
          phrase: found.phrase.text,
          href: `#${anchors.mention(number, phrase + 1, mention + 1)}`,
          gives: gives[i] ?? '',
        },
      ];
    }),
    without: nowhere.length > 0 && {
      places: nowhere.map(({ zone }) => words.zones[zone]),
      worth: worth(nowhere),
      mark: squareMark('absent'),
    },
    given: given.toFixed(3),
    ownWorth: worth(own),
    sum: standing.toFixed(3),
    phrases: phrases.map((phrase, i) => phraseView(sheet, number, phrase, i)),
    typed: typed && words.typed(typed),
    unsaid: reach.unsaid.length > 0 ? page.breakdowns.unsaid(words.somePhrases(reach.unsaid)) : undefined,
  };
};
