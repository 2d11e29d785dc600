/** A phrase that a record may give, before those that are one are put together. */
import type { Language, Word } from '../../language/language.ts';
import type { Origin } from './phrase.ts';

/** A phrase with what it was taken from and what it weighs there. */
export interface PhraseCandidate {
  readonly text: string;
  readonly words: readonly Word[];
  readonly head: number;
  readonly origin: Origin;
  readonly weight: number;
}

/** A phrase of a text whose word of number `head` says what the thing is; none where the text has no word. */
export const candidateOf = (
  text: string,
  head: number,
  origin: Origin,
  weight: number,
  language: Language,
): readonly PhraseCandidate[] => {
  const words = language.words(text);
  return words.length === 0
    ? []
    : [{ text, words, head: Math.max(0, Math.min(head, words.length - 1)), origin, weight }];
};
