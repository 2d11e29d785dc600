/** Paragraphs that are much like one of an earlier article: twelve articles that open alike compete. */

import type { Location } from '../../../diagnostics/diagnostic.ts';
import type { SharedPlaces } from '../coverage.ts';
import type { Archive } from './archive.ts';
import type { ArticleIndex } from './article-index.ts';
import { resemblance } from './resemblance.ts';

/** Resemblance from which a paragraph is named: at three words a shingle, about one word in ten changed. */
export const SHARED_FROM = 0.5;
/** Earlier paragraphs that are compared with one paragraph, those with most shingles in common. */
const MOST_COMPARED = 8;

/** Paragraphs are numbered through the articles, the oldest first. */
export interface FirstParagraphs {
  /** The number of each article's first paragraph, and one entry more for the end. */
  readonly starts: readonly number[];
  /** The first paragraph with a shingle, or -1. It knows the shingles of the articles that it was made for. */
  readonly firstWith: (shingle: number) => number;
}

const firstSlot = (shingle: number, mask: number): number => (shingle ^ (shingle >>> 13)) & mask;

/** The slot of a shingle in a table of open addressing, where it stands or would stand; -1 is an empty slot. */
const slotOf = (table: Int32Array, shingle: number): number => {
  const mask = table.length - 1;
  let slot = firstSlot(shingle, mask);
  for (let found = table[slot]; found !== shingle && found !== -1; found = table[slot])
    slot = (slot + 1) & mask;
  return slot;
};

/** A power of two of slots, so many that half of them stay empty. */
const tableFor = (count: number): Int32Array =>
  new Int32Array(2 ** Math.ceil(Math.log2(2 * count + 2))).fill(-1);

/**
 * The first paragraph of all articles, the oldest first, with each shingle of those that are asked about. Of a
 * shingle only the first paragraph counts, so that a sentence which every article repeats costs no more than any
 * other. Linear in the shingles of all.
 */
export const firstParagraphsOf = (
  articles: readonly ArticleIndex[],
  isAsked: (article: ArticleIndex) => boolean,
): FirstParagraphs => {
  const asked = articles.filter(isAsked);
  const table = tableFor(asked.reduce((sum, article) => sum + article.shingles.length, 0));
  for (const { shingles } of asked)
    for (let at = 0; at < shingles.length; at += 1) {
      const shingle = shingles[at] as number;
      table[slotOf(table, shingle)] = shingle;
    }
  const mask = table.length - 1;
  const firsts = new Int32Array(table.length).fill(-1);
  const starts: number[] = [];
  let paragraph = 0;
  for (const { shingles, shingleCounts } of articles) {
    starts.push(paragraph);
    let at = 0;
    for (const count of shingleCounts) {
      for (const end = at + count; at < end; at += 1) {
        const shingle = shingles[at] as number;
        // Most are asked about by nobody, and most of those find an empty slot at once.
        if (table[firstSlot(shingle, mask)] === -1) continue;
        const slot = slotOf(table, shingle);
        if (table[slot] !== -1 && firsts[slot] === -1) firsts[slot] = paragraph;
      }
      paragraph += 1;
    }
  }
  starts.push(paragraph);
  return { starts, firstWith: (shingle) => firsts[slotOf(table, shingle)] as number };
};

interface Paragraph {
  readonly article: ArticleIndex;
  /** Index of the passage in its article. */
  readonly passage: number;
  /** Its shingles in the article's, from one on, up to and without another. */
  readonly from: number;
  readonly to: number;
}

const paragraphsOf = (article: ArticleIndex): readonly Paragraph[] => {
  let to = 0;
  return Array.from(article.compared, (passage, number) => {
    const from = to;
    to += article.shingleCounts[number] ?? 0;
    return { article, passage, from, to };
  });
};

const shinglesIn = ({ article, from, to }: Paragraph): ReadonlySet<number> =>
  new Set(article.shingles.subarray(from, to));

const startOf = ({ article: { origins, files, firstPlaces }, passage }: Paragraph): Location => ({
  file: files[(origins[passage] ?? 0) >> 1] ?? '',
  line: firstPlaces[2 * passage] ?? 1,
  column: firstPlaces[2 * passage + 1] ?? 1,
});

/** Numbers of the paragraphs before `end` that were the first with most of some shingles, the most first. */
const likeliest = (
  shingles: ReadonlySet<number>,
  { firstWith }: FirstParagraphs,
  end: number,
): readonly number[] => {
  const shared = new Map<number, number>();
  for (const shingle of shingles) {
    const number = firstWith(shingle);
    if (number >= 0 && number < end) shared.set(number, (shared.get(number) ?? 0) + 1);
  }
  return [...shared]
    .sort((a, b) => b[1] - a[1] || a[0] - b[0])
    .slice(0, MOST_COMPARED)
    .map(([number]) => number);
};

/**
 * Each paragraph of an article that resembles one of an earlier article, with the one it is most like (of equals the
 * oldest), in reading order. It depends on the article's index and on those of earlier articles.
 */
export const sharedPassagesOf = (cycle: string, archive: Archive): readonly SharedPlaces[] => {
  const own = archive.numberOf(cycle);
  const firsts = archive.firstParagraphs();
  const { starts } = firsts;
  const end = starts[own] as number;
  const read = new Map<number, readonly Paragraph[]>();
  const paragraphAt = (number: number): Paragraph => {
    const article = starts.findLastIndex((start) => start <= number);
    const paragraphs = read.get(article) ?? paragraphsOf(archive.articles[article] as ArticleIndex);
    read.set(article, paragraphs);
    return paragraphs[number - (starts[article] as number)] as Paragraph;
  };
  return paragraphsOf(archive.articles[own] as ArticleIndex).flatMap((paragraph): readonly SharedPlaces[] => {
    const shingles = shinglesIn(paragraph);
    const [closest] = likeliest(shingles, firsts, end)
      .map(paragraphAt)
      .map((other) => ({ other, alike: resemblance(shingles, shinglesIn(other)) }))
      .filter(({ alike }) => alike >= SHARED_FROM)
      .sort((a, b) => b.alike - a.alike || (a.other.article.cycle < b.other.article.cycle ? -1 : 1));
    if (!closest) return [];
    const { other, alike } = closest;
    return [
      {
        passage: paragraph.passage,
        at: startOf(paragraph),
        other: { cycle: other.article.cycle, at: startOf(other) },
        resemblance: alike,
      },
    ];
  });
};
