/** Shingles of a paragraph as numbers: what tells whether two paragraphs are much alike. */
import type { Passage } from '../text/passage.ts';
import { hashOf } from './term.ts';

/**
 * Words of a shingle. Common practice, no source: Broder (1997) takes ten for whole web pages; in a paragraph
 * three tell a shared turn of phrase from chance and survive a word changed here and there.
 */
const WIDTH = 3;
/** Words that a paragraph must have. Common practice, no source: shorter ones are alike by chance. */
export const SHARED_LEAST_WORDS = 20;

/** Shingles as numbers of 30 bits, which engines hold without a box; two that collide are one in a billion. */
export const shinglesOf = (passage: Passage): ReadonlySet<number> => {
  const words = passage.words.map((word) => hashOf(word.folded).a);
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
export const isCompared = (passage: Passage): boolean =>
  passage.form === 'paragraph' && passage.written && passage.words.length >= SHARED_LEAST_WORDS;
