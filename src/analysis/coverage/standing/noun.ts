/** Whether a word that could be a noun or a verb stands as a noun: enough to tell a can from "you can". */
import { itemAt } from '../../../text/item-at.ts';
import { wordSet, wordsOfAll } from '../../../text/word-set.ts';
import {
  ARTICLES,
  BOTH_CASES,
  DEMONSTRATIVES,
  DO,
  MODAL_NOUNS,
  MODALS,
  POSSESSIVES,
  QUANTIFIERS,
  SUBJECTS,
} from '../../language/lexicon/function-words.ts';
import type { ZonedWord } from '../text/passage.ts';

const DETERMINERS = wordsOfAll(
  ...[ARTICLES, DEMONSTRATIVES, POSSESSIVES, QUANTIFIERS],
  wordSet('which whose one two three'),
);

/** After these a word that may be a verb is one. */
const BEFORE_VERBS = wordsOfAll(
  ...[SUBJECTS, BOTH_CASES, MODALS, DO],
  wordSet("to please let's not don't doesn't didn't can't won't i'll you'll we'll they'll"),
);

/** Common English usage, no source. A first word before a determiner ("Plant the bulbs") is an instruction. */
export const standsAsNoun = (words: readonly ZonedWord[], at: number): boolean => {
  const word = itemAt(words, at);
  const before = words[at - 1];
  const first = before === undefined || before.sentence !== word.sentence;
  if (MODAL_NOUNS.has(word.folded)) return !first && DETERMINERS.has(before.folded);
  if (!first) return !BEFORE_VERBS.has(before.folded);
  const after = words[at + 1];
  return after === undefined || after.sentence !== word.sentence || !DETERMINERS.has(after.folded);
};
