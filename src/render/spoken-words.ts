/** The words of a live in the box's own language. */
import type { SpokenWords, StockWords } from '../model/live-words.ts';
import { isWordedIn, type Wording } from '../wording/wording.ts';

/** What is said in a language that the wording is not in: the owner writes the rest, and is told so. */
const silent: StockWords = {
  greet: [],
  about: (_, description) => description,
  question: () => '',
  whole: (names) => `${names}.`,
  call: ({ text }, address) => [`${text}: ${address}`],
  goodbye: () => [],
};

/** What a live in a language (BCP 47) says by itself: the wording's sentences where it is in that language. */
export const spokenWordsFor = (wording: Wording, lang: string): SpokenWords => ({
  stock: isWordedIn(wording, lang) ? wording.live.stock : silent,
  caution: wording.cautions.text,
  sameCautions: wording.live.sameCautions,
});
