/** Paragraphs that are much like one of an earlier article: twelve articles that open alike compete. */

import type { Location } from '../../../diagnostics/diagnostic.ts';
import { hash32 } from '../../../text/fnv.ts';
import type { SharedPassage } from '../coverage.ts';
import { type Passage, whereIs } from '../text/passage.ts';
import type { Article } from './article.ts';
import { resemblance } from './resemblance.ts';

/**
 * Words of a shingle. Common practice, no source: Broder (1997) takes ten for whole web pages; in a paragraph
 * three tell a shared turn of phrase from chance and survive a word changed here and there.
 */
const WIDTH = 3;
/** Words that a paragraph must have. Common practice, no source: shorter ones are alike by chance. */
export const SHARED_LEAST_WORDS = 20;
/** Resemblance from which a paragraph is named: at three words a shingle, about one word in ten changed. */
export const SHARED_FROM = 0.5;
/** Earlier paragraphs that are compared with one paragraph, those with most shingles in common. */
const MOST_COMPARED = 8;

interface Kept {
  readonly cycle: string;
  readonly at: Location;
  readonly text: string;
  readonly shingles: Int32Array;
}

export interface PassageIndex {
  readonly paragraphs: Kept[];
  /** Each shingle's first paragraph, as an index of `paragraphs`. */
  readonly firstWith: Map<number, number>;
}

/** Shingles as numbers of 30 bits, which engines hold without a box; two that collide are one in a billion. */
const shinglesOf = (passage: Passage): ReadonlySet<number> => {
  const words = passage.words.map((word) => hash32(word.folded));
  const shingles = new Set<number>();
  for (let from = 0; from + WIDTH <= words.length; from += 1) {
    let hash = 0;
    for (let at = from; at < from + WIDTH; at += 1) {
      hash = Math.imul(hash ^ (words[at] as number), 0x9e3779b1);
      hash ^= hash >>> 15;
    }
    shingles.add(hash & 0x3fffffff);
  }
  return shingles;
};

/** What an author wrote as a paragraph; what is made from a record is alike in all articles, and rightly so. */
const isCompared = (passage: Passage): boolean =>
  passage.form === 'paragraph' && passage.written && passage.words.length >= SHARED_LEAST_WORDS;

const startOf = (passage: Passage): Location => {
  const [first] = passage.words;
  if (!first) throw new Error('Expected a paragraph with words');
  return whereIs(passage, first);
};

/** An index with nothing in it, to add articles to. */
export const emptyPassageIndex = (): PassageIndex => ({ paragraphs: [], firstWith: new Map() });

/**
 * Adds an article's paragraphs to an index, the oldest article first: their texts and shingles are kept, the
 * passages are not. Of a shingle only the first paragraph that had it is kept, so that a sentence which every
 * article repeats costs no more than any other.
 */
export const addToPassageIndex = (
  { paragraphs, firstWith }: PassageIndex,
  { cycle, passages }: Pick<Article, 'cycle' | 'passages'>,
): void => {
  for (const passage of passages) {
    if (!isCompared(passage)) continue;
    const shingles = shinglesOf(passage);
    const number = paragraphs.length;
    paragraphs.push({
      cycle,
      at: startOf(passage),
      text: passage.text,
      shingles: Int32Array.from(shingles),
    });
    for (const shingle of shingles) if (!firstWith.has(shingle)) firstWith.set(shingle, number);
  }
};

const candidatesFor = (
  shingles: ReadonlySet<number>,
  { firstWith, paragraphs }: PassageIndex,
  cycle: string,
) => {
  const shared = new Map<number, number>();
  for (const shingle of shingles) {
    const number = firstWith.get(shingle);
    if (number !== undefined && (paragraphs[number] as Kept).cycle < cycle) {
      shared.set(number, (shared.get(number) ?? 0) + 1);
    }
  }
  return [...shared]
    .sort((a, b) => b[1] - a[1] || a[0] - b[0])
    .slice(0, MOST_COMPARED)
    .map(([number]) => paragraphs[number] as Kept);
};

/**
 * Each paragraph of an article that resembles one of an earlier article, with the one it is most like (of equals the
 * oldest), in reading order. The index may hold the article itself and later ones.
 */
export const sharedPassagesOf = (
  { cycle, passages }: Pick<Article, 'cycle' | 'passages'>,
  index: PassageIndex,
): readonly SharedPassage[] =>
  passages.flatMap((passage, number) => {
    if (!isCompared(passage)) return [];
    const shingles = shinglesOf(passage);
    const [closest] = candidatesFor(shingles, index, cycle)
      .map((kept) => ({ kept, alike: resemblance(shingles, new Set(kept.shingles)) }))
      .filter(({ alike }) => alike >= SHARED_FROM)
      .sort((a, b) => b.alike - a.alike || (a.kept.cycle < b.kept.cycle ? -1 : 1));
    if (!closest) return [];
    const { cycle: earlier, at, text } = closest.kept;
    return {
      passage: number,
      at: startOf(passage),
      text: passage.text,
      other: { cycle: earlier, at, text },
      resemblance: closest.alike,
    };
  });
