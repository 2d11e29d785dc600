/** What of a text is searched: its words without those that carry nothing. */
import stopWords from 'natural/lib/natural/util/stopwords.js';
import type { Language, Word } from '../language/language.ts';

/** Words of the list that are things in a shop: a watering can. */
const THINGS: ReadonlySet<string> = new Set(['can', 'still', 'well']);

/**
 * natural's list of English stop words (MIT), single letters and digits among it. It is not our own list of small words,
 * because the figures that relevance is held against were got with such a list.
 */
const STOP_WORDS: ReadonlySet<string> = new Set(stopWords.words);

/** Whether a folded word is passed over, in what is indexed and in what is asked alike. */
export const isPassedOver = (folded: string, language: Language): boolean =>
  language.english && STOP_WORDS.has(folded) && !THINGS.has(folded);

/** The words of a text that are searched, in their order. */
export const searchedWords = (text: string, language: Language): readonly Word[] =>
  language.words(text).filter(({ folded, stem }) => stem !== '' && !isPassedOver(folded, language));
