/** Paragraphs that are much like one of an earlier article: twelve articles that open alike compete. */

import type { Location } from '../../../diagnostics/diagnostic.ts';
import { remembered } from '../../../text/remembered.ts';
import type { SharedPassage } from '../coverage.ts';
import { type ArticleIndex, textAt } from './article-index.ts';
import { resemblance } from './resemblance.ts';

/** Resemblance from which a paragraph is named: at three words a shingle, about one word in ten changed. */
export const SHARED_FROM = 0.5;
/** Earlier paragraphs that are compared with one paragraph, those with most shingles in common. */
const MOST_COMPARED = 8;

interface Paragraph {
  readonly article: ArticleIndex;
  /** Its number among the article's compared passages. */
  readonly number: number;
  /** Index of the passage in its article. */
  readonly passage: number;
  /** Each once. */
  readonly shingles: Int32Array;
}

const paragraphsOf = remembered((article: ArticleIndex): readonly Paragraph[] => {
  let to = 0;
  return Array.from(article.compared, (passage, number) => {
    const from = to;
    to += article.shingleCounts[number] ?? 0;
    return { article, number, passage, shingles: article.shingles.subarray(from, to) };
  });
});

const startOf = ({ article: { origins, files, firstPlaces }, passage }: Paragraph): Location => ({
  file: files[(origins[passage] ?? 0) >> 1] ?? '',
  line: firstPlaces[2 * passage] ?? 1,
  column: firstPlaces[2 * passage + 1] ?? 1,
});

const textOf = ({ article, number }: Paragraph): string => textAt(article.comparedTexts, number);

/**
 * The slot of a shingle in a table of open addressing, where it stands or would stand: a power of two of slots, so many
 * that half of them stay empty; -1 is an empty one.
 */
const slotOf = (table: Int32Array, shingle: number): number => {
  const mask = table.length - 1;
  let slot = (shingle ^ (shingle >>> 13)) & mask;
  for (let found = table[slot]; found !== shingle && found !== -1; found = table[slot])
    slot = (slot + 1) & mask;
  return slot;
};

/** The shingles of some paragraphs, to be looked for. */
const wantedOf = (paragraphs: readonly Paragraph[]): Int32Array => {
  const count = paragraphs.reduce((sum, { shingles }) => sum + shingles.length, 0);
  const table = new Int32Array(2 ** Math.ceil(Math.log2(2 * count + 2))).fill(-1);
  for (const { shingles } of paragraphs)
    for (const shingle of shingles) table[slotOf(table, shingle)] = shingle;
  return table;
};

const hasAny = (wanted: Int32Array, { shingles }: Paragraph): boolean =>
  shingles.some((shingle) => wanted[slotOf(wanted, shingle)] !== -1);

/** Paragraphs of all articles, numbered through, the oldest first. */
interface Firsts {
  readonly paragraphs: readonly Paragraph[];
  /** The number of each article's first paragraph. */
  readonly startOf: ReadonlyMap<ArticleIndex, number>;
  /** The number of the first paragraph with a wanted shingle, or -1. */
  readonly firstWith: (shingle: number) => number;
}

/**
 * The first paragraph of all with each shingle of those that are asked about. Of a shingle only the first paragraph
 * counts, so that a sentence which every article repeats costs no more than any other. Linear in the shingles of all.
 */
const firstsOf = (articles: readonly ArticleIndex[], asked: readonly Paragraph[]): Firsts => {
  const wanted = wantedOf(asked);
  const firsts = new Int32Array(wanted.length).fill(-1);
  const starts = new Map<ArticleIndex, number>();
  const paragraphs: Paragraph[] = [];
  for (const article of articles) {
    starts.set(article, paragraphs.length);
    for (const paragraph of paragraphsOf(article)) {
      for (const shingle of paragraph.shingles) {
        const slot = slotOf(wanted, shingle);
        if (wanted[slot] !== -1 && firsts[slot] === -1) firsts[slot] = paragraphs.length;
      }
      paragraphs.push(paragraph);
    }
  }
  return { paragraphs, startOf: starts, firstWith: (shingle) => firsts[slotOf(wanted, shingle)] as number };
};

/** Earlier paragraphs that were the first with most of some shingles, the most first. */
const likeliest = (
  shingles: ReadonlySet<number>,
  { paragraphs, firstWith }: Firsts,
  end: number,
): readonly Paragraph[] => {
  const shared = new Map<number, number>();
  for (const shingle of shingles) {
    const number = firstWith(shingle);
    if (number >= 0 && number < end) shared.set(number, (shared.get(number) ?? 0) + 1);
  }
  return [...shared]
    .sort((a, b) => b[1] - a[1] || a[0] - b[0])
    .slice(0, MOST_COMPARED)
    .flatMap(([number]) => paragraphs[number] ?? []);
};

/** The earlier paragraph that one is most like, of equals the oldest. */
const closestTo = (paragraph: Paragraph, firsts: Firsts): SharedPassage | undefined => {
  const shingles = new Set(paragraph.shingles);
  const end = firsts.startOf.get(paragraph.article) ?? 0;
  const [closest] = likeliest(shingles, firsts, end)
    .map((other) => ({ other, alike: resemblance(shingles, other.shingles) }))
    .filter(({ alike }) => alike >= SHARED_FROM)
    .sort((a, b) => b.alike - a.alike || (a.other.article.cycle < b.other.article.cycle ? -1 : 1));
  if (!closest) return undefined;
  const { other, alike } = closest;
  return {
    passage: paragraph.passage,
    at: startOf(paragraph),
    text: textOf(paragraph),
    other: { cycle: other.article.cycle, at: startOf(other), text: textOf(other) },
    resemblance: alike,
  };
};

/** Of each paragraph of an article, the one it is like. */
type Found = readonly (SharedPassage | undefined)[];

/** What was found of some articles' paragraphs, and among which articles. */
export interface SharedPassages {
  /** The oldest first. */
  readonly articles: readonly ArticleIndex[];
  readonly found: ReadonlyMap<ArticleIndex, Found>;
}

/** Paragraphs that stand in one of two lists of articles alone, or in both at different places. */
const changedParagraphs = (
  before: readonly ArticleIndex[],
  now: readonly ArticleIndex[],
): readonly Paragraph[] => {
  const [earlier, later] = [new Set(before), new Set(now)];
  const [gone, come] = [before.filter((one) => !later.has(one)), now.filter((one) => !earlier.has(one))];
  const named = (paragraph: Paragraph): string => {
    const { file, line, column } = startOf(paragraph);
    return `${paragraph.article.cycle} ${file}:${line}:${column} ${textOf(paragraph)}`;
  };
  const byName = (articles: readonly ArticleIndex[]): ReadonlyMap<string, Paragraph> =>
    new Map(articles.flatMap(paragraphsOf).map((one) => [named(one), one]));
  const [old, fresh] = [byName(gone), byName(come)];
  return [
    ...[...old].flatMap(([name, one]) => (fresh.has(name) ? [] : [one])),
    ...[...fresh].flatMap(([name, one]) => (old.has(name) ? [] : [one])),
  ];
};

/**
 * Each paragraph of the articles that are asked about which resembles one of an earlier article. What was found
 * `before`, among other articles, is taken where no paragraph that shares a turn of phrase has changed since, because
 * nothing else was looked at for it; it is kept up to date also for articles that are not asked about now.
 */
export const sharedPassages = (
  articles: readonly ArticleIndex[],
  isAsked: (article: ArticleIndex) => boolean,
  before?: SharedPassages,
): SharedPassages => {
  const changed = wantedOf(before ? changedParagraphs(before.articles, articles) : []);
  const known = new Map<Paragraph, SharedPassage | undefined>();
  const open: Paragraph[] = [];
  const asked = articles.filter((article) => isAsked(article) || before?.found.has(article));
  for (const article of asked) {
    const found = before?.found.get(article);
    for (const [number, paragraph] of paragraphsOf(article).entries())
      if (found && !hasAny(changed, paragraph)) known.set(paragraph, found[number]);
      else open.push(paragraph);
  }
  if (open.length > 0) {
    const firsts = firstsOf(articles, open);
    for (const paragraph of open) known.set(paragraph, closestTo(paragraph, firsts));
  }
  return {
    articles,
    found: new Map(
      asked.map((article) => [article, paragraphsOf(article).map((paragraph) => known.get(paragraph))]),
    ),
  };
};
