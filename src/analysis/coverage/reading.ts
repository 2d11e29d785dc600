/** The article as reading: its length, and how hard its English is. */
import type { Language } from '../language/language.ts';
import type { Reading } from './coverage.ts';
import { isRunning } from './rivals/article.ts';
import type { Passage } from './text/passage.ts';

/**
 * Words a minute in silent reading of English non-fiction: Brysbaert (2019), "How many words do we read per minute?
 * A review and meta-analysis of reading rate", Journal of Memory and Language 109. Most adults are between 175
 * and 300. Other languages are read at other rates; there it is an estimate.
 */
export const WORDS_A_MINUTE = 238;

/** What the measures of reading are made of. */
export interface Counts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
}

/** Reading ease, Flesch (1948), "A new readability yardstick": higher is easier, 100 and more is very easy. */
export const fleschEase = ({ sentences, words, syllables }: Counts): number =>
  206.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words);

/** Years of school, Kincaid et al. (1975), Research Branch Report 8-75. */
export const kincaidGrade = ({ sentences, words, syllables }: Counts): number =>
  0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;

/** Counts that were made: a shop writes the same few thousand words all year, and a word's syllables never change. */
const countedBefore = new Map<string, number>();

/** Counter of an English word's syllables, at least 1. Loaded when first asked for, since few commands need it. */
export const syllableCounter = async (): Promise<(word: string) => number> => {
  const { syllable } = await import('syllable');
  return (word) => {
    const seen = countedBefore.get(word);
    if (seen !== undefined) return seen;
    const count = Math.max(1, syllable(word));
    countedBefore.set(word, count);
    return count;
  };
};

/**
 * Length and ease of an article's running text, which is its paragraphs: a heading or a caption is no sentence and
 * would make the text look easier than it is. Minutes are not rounded. Ease and grade are of English alone, and
 * absent where there is no word.
 */
export const readingOf = async (
  passages: readonly Passage[],
  language: Pick<Language, 'english'>,
): Promise<Reading> => {
  const running = passages.filter(isRunning);
  const words = running.reduce((sum, passage) => sum + passage.words.length, 0);
  const sentences = running.reduce(
    (sum, passage) => sum + new Set(passage.words.map((word) => word.sentence)).size,
    0,
  );
  const length = { words, sentences, minutes: words / WORDS_A_MINUTE };
  if (!language.english || words === 0) return length;

  const syllablesIn = await syllableCounter();
  let syllables = 0;
  for (const passage of running) {
    for (const word of passage.words) syllables += syllablesIn(word.text);
  }
  const counts = { sentences, words, syllables };
  return { ...length, ease: fleschEase(counts), grade: kincaidGrade(counts) };
};
