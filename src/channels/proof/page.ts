/** The proof as a page: what is to be done first, then what it is read from. */

import {
  grades,
  type ItemCoverage,
  type OverRepetition,
  type SharedPassage,
} from '../../analysis/coverage/coverage.ts';
import { type BroughtFigures, broughtFigures } from '../../analysis/coverage/figures.ts';
import { zones } from '../../analysis/coverage/text/zones.ts';
import { verdictOf } from '../../analysis/coverage/verdict.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { locationText } from '../../diagnostics/diagnostic.ts';
import { monthName, revealDay } from '../../model/calendar.ts';
import { documentText } from '../../render/document.ts';
import { type FindingView, findingViews } from '../../render/findings.ts';
import type { Html } from '../../render/html.ts';
import type { MadeDocument } from '../../render/output.ts';
import { pageLang } from '../../render/page-lang.ts';
import { paperStyle } from '../../render/paper.ts';
import { alsoLine, linkMarkdown } from '../../render/record-lines.ts';
import { scriptText } from '../../render/script-data.ts';
import { typeset } from '../../render/typeset.ts';
import { listed } from '../../text/counting-words.ts';
import { longDate } from '../../text/long-date.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Tools } from '../channel.ts';
import { type GradeView, gradeView, type ItemView, itemView } from './breakdowns.ts';
import type { ProofData } from './plan.ts';
import { anchors, itemName, type LocationView, locationView, type Sheet, WEAK } from './sheet.ts';
import { type PassageView, textView } from './text.ts';

interface EditView {
  readonly id: string;
  readonly words: string;
  readonly before: string;
  readonly after: string;
  readonly at: LocationView;
  readonly items: readonly { readonly name: string; readonly brought: BroughtFigures | undefined }[];
}

interface RivalView {
  readonly name: string;
  readonly phrase: string;
  readonly title: string;
  /** What follows the rival's title. */
  readonly answers: string;
  readonly why: string;
  readonly at: string;
  /** The link to write. */
  readonly markdown: string;
}

interface CrowdingView {
  readonly phrase: string;
  /** What follows the phrase. */
  readonly told: string;
  readonly sentences: readonly {
    readonly text: string;
    readonly mentions: number;
    readonly at: LocationView;
  }[];
}

interface SharedView {
  readonly resemblance: string;
  readonly text: string;
  readonly at: { readonly words: string; readonly href: string };
  readonly other: { readonly cycle: string; readonly text: string; readonly at: string };
}

interface OtherNamesView {
  readonly name: string;
  readonly names: string;
  readonly line: string;
  readonly at: string | undefined;
}

/** What the template is given. */
interface ProofView {
  readonly words: Wording['proof']['page'];
  readonly paper: Wording['backRoomPage'];
  readonly lang: string;
  /** The article's own language. */
  readonly textLang: string;
  readonly name: string;
  readonly month: string;
  readonly theme: string;
  readonly title: string;
  /** Titles to choose from. */
  readonly titles: readonly string[];
  readonly scheme: Html;
  readonly asOf: string;
  readonly sealed: boolean;
  readonly reveal: string;
  readonly aim: number;
  readonly verdict: string;
  readonly reading: string;
  readonly limits: readonly string[];
  readonly legend: readonly (GradeView & { readonly meaning: string })[];
  readonly places: readonly string[];
  readonly absent: string;
  readonly fainter: string;
  readonly items: readonly ItemView[];
  readonly advice: readonly EditView[];
  readonly text: readonly PassageView[];
  readonly rivals: readonly RivalView[];
  readonly crowded: readonly CrowdingView[];
  readonly shared: readonly SharedView[];
  readonly called: readonly OtherNamesView[];
  readonly otherNames: readonly OtherNamesView[];
  readonly folder: string;
  readonly mustFix: readonly FindingView[];
  readonly findings: readonly FindingView[];
  /** Makes words fit to stand in a string of a script. */
  readonly inScript: (text: string) => Html;
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    proof: ProofView;
  }
}

const editViews = ({ coverage, words }: Sheet): readonly EditView[] =>
  coverage.advice.map((edit, index) => ({
    id: anchors.edit(index),
    words: words.instruction(edit),
    before: edit.before,
    after: edit.after,
    at: locationView(coverage, edit.at, edit.zone),
    items: edit.brings.map((brought) => ({
      name: itemName(coverage.items, brought.item),
      brought: broughtFigures(brought, coverage.aim),
    })),
  }));

const rivalViews = ({ coverage, page, words }: Sheet): readonly RivalView[] =>
  coverage.items.flatMap(({ shortName: name, phrases }) =>
    phrases.flatMap(({ phrase, rival }) =>
      rival
        ? [
            {
              name,
              phrase: phrase.text,
              title: rival.title,
              answers: page.rivals.answersFirst(
                rival.cycle,
                rival.score.toFixed(2),
                rival.own.toFixed(2),
                rival.rank,
              ),
              why: words.rivalReason(rival.reason),
              at: locationText(rival.link.at),
              markdown: linkMarkdown(rival.link),
            },
          ]
        : [],
    ),
  );

const crowdingView = (
  { item, phrase, mentions, rate, dispersion, sentences }: OverRepetition,
  { coverage, page }: Sheet,
): CrowdingView => ({
  phrase,
  told: page.crowded.told(itemName(coverage.items, item), mentions, rate.toFixed(1), dispersion.toFixed(2)),
  sentences: sentences.map((sentence) => ({ ...sentence, at: locationView(coverage, sentence.at) })),
});

const sharedView = (
  { resemblance, text, at, passage, other }: SharedPassage,
  { page }: Sheet,
): SharedView => ({
  resemblance: page.shared.resemblance(resemblance.toFixed(2)),
  text,
  at: { words: locationText(at), href: `#${anchors.passage(passage)}` },
  other: { cycle: other.cycle, text: other.text, at: locationText(other.at) },
});

/** Names to take into a record, with the line as it would be. */
const namesView = (
  { slug, name }: Pick<ItemCoverage, 'slug' | 'name'>,
  names: readonly string[],
  told: string,
  records: ProofData['items'],
): OtherNamesView => {
  const record = records.find((one) => one.slug === slug);
  const fields = record?.source.fields;
  const at = fields?.get('also') ?? fields?.get('kind');
  return {
    name,
    names: told,
    line: alsoLine([...(record?.also ?? []), ...names]),
    at: at && locationText(at),
  };
};

const calledViews = ({ coverage, page }: Sheet, records: ProofData['items']): readonly OtherNamesView[] =>
  coverage.items
    .filter(({ called }) => called.length > 0)
    .map((item) =>
      namesView(
        item,
        item.called.map(({ name }) => name),
        listed(item.called.map(({ name, times }) => page.called.told(name, times))),
        records,
      ),
    );

const otherNamesViews = ({ coverage, page }: Sheet, records: ProofData['items']): readonly OtherNamesView[] =>
  coverage.items
    .filter(({ otherNames }) => otherNames.length > 0)
    .map((item) => namesView(item, item.otherNames, page.names.listed(item.otherNames), records));

/** The proof of one cycle. */
export const proofPage = (data: ProofData, { templates, wording }: Tools): MadeDocument<Diagnostic> => {
  const { coverage, settings, cycle, items, asOf, sealed, diagnostics } = data;
  const sheet: Sheet = { coverage, page: wording.proof.page, words: wording.coverage };
  const { page, words } = sheet;
  // The page is in English; the article on it may not be.
  const lang = pageLang(settings.lang);
  const findings = findingViews(diagnostics, wording.findings);
  const document = templates.render('proof', {
    words: page,
    paper: wording.backRoomPage,
    lang,
    textLang: coverage.lang,
    name: typeset(settings.name, lang),
    month: monthName(cycle, lang),
    theme: typeset(coverage.theme, coverage.lang),
    title: typeset(coverage.title, coverage.lang),
    titles: coverage.titles.map((title) => typeset(title, coverage.lang)),
    scheme: paperStyle(cycle.palette, templates),
    asOf: longDate(asOf, lang),
    sealed,
    reveal: wording.calendar.revealDay(revealDay(cycle, settings.timeZone, lang)),
    aim: coverage.aim,
    verdict: words.verdict(verdictOf(coverage)),
    reading: words.reading(coverage.reading, lang),
    limits: coverage.limits.map((limit) => words.limits[limit]),
    legend: grades.map((grade) => ({ ...gradeView(sheet, grade), meaning: words.gradeMeanings[grade] })),
    places: zones.map((zone) => words.zones[zone]),
    absent: words.gradeNames.absent,
    fainter: page.text.fainter(WEAK),
    items: coverage.items.map((item) => itemView(sheet, item)),
    advice: editViews(sheet),
    text: textView(sheet),
    rivals: rivalViews(sheet),
    crowded: coverage.overRepeated.map((crowding) => crowdingView(crowding, sheet)),
    shared: coverage.shared.map((shared) => sharedView(shared, sheet)),
    called: calledViews(sheet, items),
    otherNames: otherNamesViews(sheet, items),
    folder: `cycles/${coverage.cycle}/`,
    mustFix: findings.filter(({ isMustFix }) => isMustFix),
    findings: findings.filter(({ isMustFix }) => !isMustFix),
    inScript: scriptText,
  });
  return { content: documentText(document) };
};
