/** The proof of a cycle's article: its phrases, where they stand and how well, and the least work that would mend it. */
import { visit } from 'unist-util-visit';
import type { Box, Cycle, Item, Moment } from '../../model/box.ts';
import type { CautionWords } from '../../model/cautions.ts';
import { isSealed } from '../../model/seal.ts';
import type {} from '../../model/story.ts';
import type { Language } from '../language/language.ts';
import { isAtAim } from './aim.ts';
import type { Coverage, ItemCoverage, Limit, PhraseCoverage } from './coverage.ts';
import { overRepetitionsOf } from './over-repetition.ts';
import { phrasesOf, type SearchIndex, searchIndexOf } from './phrases/phrases.ts';
import { readingOf } from './reading.ts';
import type { Article } from './rivals/article.ts';
import { type ArticleIndex, articleIndexOf, rivalFor } from './rivals/rivals.ts';
import {
  addToPassageIndex,
  emptyPassageIndex,
  type PassageIndex,
  sharedPassagesOf,
} from './rivals/shared-passages.ts';
import { adviceFor } from './standing/advice.ts';
import { withinLonger } from './standing/mentions.ts';
import { partsOf } from './standing/standing.ts';
import { type TalliedItem, tallyOf } from './standing/tally.ts';
import { passagesOf } from './text/passages.ts';

/** What one article is compared with, read once for all that are proved. */
export interface Comparisons {
  readonly language: Language;
  readonly articles: ArticleIndex;
  readonly paragraphs: PassageIndex;
  readonly searches: SearchIndex;
}

/** Cycles that a cycle's stories link to. */
const linkedCycles = (cycle: Cycle): readonly string[] => {
  const linked = new Set<string>();
  for (const { tree } of [cycle.story, ...cycle.items.map(({ story }) => story)])
    visit(tree, 'link', ({ data }) => {
      if (data?.target && !data.dropped) linked.add(data.target.cycle);
    });
  return [...linked];
};

/**
 * The box's articles as of a moment, made ready for comparing. Those that a visitor cannot read yet compete with
 * none: they are left out, but for `proved`, which is to be published beside the others.
 */
export const comparisonsOf = (
  box: Box,
  asOf: Moment,
  language: Language,
  proved: ReadonlySet<string>,
  cautionText: CautionWords,
): Comparisons => {
  const cycles = box.cycles.filter((cycle) => !isSealed(cycle, asOf) || proved.has(cycle.id));
  const paragraphs = emptyPassageIndex();
  // Each article is read once, put into both indexes and let go: a long archive fits in memory.
  const articles = function* (): Generator<Article> {
    for (const cycle of cycles) {
      // What is compared are words: nobody asks where sentences end.
      const passages = passagesOf(box, cycle, asOf, language, cautionText, () => []);
      const article = { cycle: cycle.id, title: cycle.title, passages, linksTo: linkedCycles(cycle) };
      addToPassageIndex(paragraphs, article);
      yield article;
    }
  };
  return {
    language,
    articles: articleIndexOf(articles()),
    paragraphs,
    searches: searchIndexOf(box.searches, language),
  };
};

/** What a proof is made of. */
export interface CoverageInput {
  readonly box: Box;
  readonly cycle: Cycle;
  readonly asOf: Moment;
  /** Standing that every item should reach, more than 0 and less than 1. */
  readonly aim: number;
  readonly comparisons: Comparisons;
  /** Words of the cautions that the article shows. */
  readonly cautionText: CautionWords;
  /** Other names that a dictionary has, by kind. */
  readonly otherNames: ReadonlyMap<string, readonly string[]>;
}

const limitsOf = ({ english, stems }: Language): readonly Limit[] => [
  ...(english ? [] : (['names taken whole'] as const)),
  ...(stems ? [] : (['no stemmer'] as const)),
];

/** Everything the proof says about one cycle's article. */
export const coverageOf = async (input: CoverageInput): Promise<Coverage> => {
  const { box, cycle, asOf, aim, comparisons, cautionText, otherNames } = input;
  const { language } = comparisons;
  const passages = passagesOf(box, cycle, asOf, language, cautionText);
  const tallied = cycle.items.map(
    (item): TalliedItem => ({
      slug: item.slug,
      name: item.name,
      phrases: phrasesOf(item, comparisons.searches, language),
    }),
  );
  const tally = tallyOf(passages, tallied, language.english);
  const { edits, promised } = adviceFor(passages, tallied, aim, language);

  const itemCoverage = (item: Item): ItemCoverage => {
    const entries = tally.entries.filter((entry) => entry.item.slug === item.slug);
    const mentions = withinLonger(entries);
    const phrases = entries.map(({ phrase, standing }, i): PhraseCoverage => {
      const rival = rivalFor(phrase, cycle.id, comparisons.articles);
      const here = mentions[i] ?? [];
      return { phrase, standing, parts: partsOf(here), mentions: here, ...(rival ? { rival } : {}) };
    });
    return {
      slug: item.slug,
      number: item.number,
      name: item.name,
      kind: item.kind,
      standing: tally.standings.get(item.slug) ?? 0,
      promised: promised.get(item.slug) ?? 0,
      phrases,
      otherNames: otherNames.get(item.kind) ?? [],
    };
  };
  const items = cycle.items.map(itemCoverage);
  return {
    cycle: cycle.id,
    theme: cycle.theme,
    title: cycle.title,
    aim,
    lang: language.tag,
    limits: limitsOf(language),
    passages,
    items,
    overRepeated: overRepetitionsOf(items, passages),
    shared: sharedPassagesOf({ cycle: cycle.id, passages }, comparisons.paragraphs),
    reading: await readingOf(passages, language),
    advice: edits,
    outOfReach: items.filter((item) => !isAtAim(item.promised, aim)).map(({ slug }) => slug),
  };
};
