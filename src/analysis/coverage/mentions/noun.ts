/** Whether a word that could be a noun or a verb stands as a noun: enough to tell a can from "you can". */
import { itemAt } from '../../../text/item-at.ts';
import { wordSet, wordsOfAll } from '../../../text/word-set.ts';
import {
  ARTICLES,
  BE,
  BOTH_CASES,
  CONJUNCTIONS,
  DEMONSTRATIVES,
  DO,
  MODAL_NOUNS,
  MODALS,
  POSSESSIVES,
  QUANTIFIERS,
  SUBJECTS,
} from '../../language/lexicon/function-words.ts';
import type { Passage, ZonedWord } from '../text/passage.ts';
import { GENERAL, VERBS } from './neighbour-words.ts';
import { type NounPhrase, openerOf } from './noun-phrase.ts';

const DETERMINERS = wordsOfAll(
  ...[ARTICLES, DEMONSTRATIVES, POSSESSIVES, QUANTIFIERS],
  wordSet('which whose one two three'),
);

/** After these a word that may be a verb is one. */
const BEFORE_VERBS = wordsOfAll(
  ...[SUBJECTS, BOTH_CASES, MODALS, DO],
  wordSet("to please let's not don't doesn't didn't can't won't i'll you'll we'll they'll"),
);

/** After these a word that may be an adjective is one. */
const BEFORE_ADJECTIVES = wordsOfAll(BE, wordSet('very so too quite rather more as'));

const isIn = (words: readonly ZonedWord[], at: number, sentence: number): boolean =>
  words[at]?.sentence === sentence;

/** "The old can", "an enamel can", but not "you can", nor "the little can do much". */
const modalStandsAsNoun = (
  words: readonly ZonedWord[],
  { head, modifiers }: NounPhrase,
  opener?: ZonedWord,
): boolean => {
  if (!opener || !DETERMINERS.has(opener.folded)) return false;
  const isAnotherVerbs = isIn(words, head + 1, opener.sentence) && VERBS.has(itemAt(words, head + 1).folded);
  return modifiers.length === 0 || !isAnotherVerbs;
};

/** Common English usage, no source. A first word before a determiner ("Plant the bulbs") is an instruction. */
export const standsAsNoun = (passage: Passage, phrase: NounPhrase): boolean => {
  const { words } = passage;
  const at = phrase.head;
  const word = itemAt(words, at);
  if (MODAL_NOUNS.has(word.folded)) return modalStandsAsNoun(words, phrase, openerOf(passage, phrase));
  const before = isIn(words, at - 1, word.sentence) ? itemAt(words, at - 1) : undefined;
  if (before && BEFORE_VERBS.has(before.folded)) return false;
  // "The cap is light."
  if (before && BEFORE_ADJECTIVES.has(before.folded) && GENERAL.has(word.folded)) return false;
  // "Shake the bottle and mist the leaves": an order is joined to another.
  if (before && !CONJUNCTIONS.has(before.folded)) return true;
  return !isIn(words, at + 1, word.sentence) || !DETERMINERS.has(itemAt(words, at + 1).folded);
};
