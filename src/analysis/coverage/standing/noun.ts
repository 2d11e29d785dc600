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
import type { ZonedWord } from '../text/passage.ts';
import { BORDERS, GENERAL, VERBS } from './neighbour-words.ts';

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

/** Words before a modal that is a thing too: "the old can", "an enamel can", but not "you can". */
const MOST_BEFORE_MODAL = 3;

/** A modal's own verb comes next: "the little can do much". */
const isFollowedByVerb = (words: readonly ZonedWord[], at: number): boolean =>
  isIn(words, at + 1, itemAt(words, at).sentence) && VERBS.has(itemAt(words, at + 1).folded);

const modalStandsAsNoun = (words: readonly ZonedWord[], at: number): boolean => {
  const { sentence } = itemAt(words, at);
  for (let before = at - 1; before >= at - MOST_BEFORE_MODAL && isIn(words, before, sentence); before--) {
    const { folded } = itemAt(words, before);
    if (DETERMINERS.has(folded)) return before === at - 1 || !isFollowedByVerb(words, at);
    if (BORDERS.has(folded)) return false;
  }
  return false;
};

/** Common English usage, no source. A first word before a determiner ("Plant the bulbs") is an instruction. */
export const standsAsNoun = (words: readonly ZonedWord[], at: number): boolean => {
  const word = itemAt(words, at);
  if (MODAL_NOUNS.has(word.folded)) return modalStandsAsNoun(words, at);
  const before = isIn(words, at - 1, word.sentence) ? itemAt(words, at - 1) : undefined;
  if (before && BEFORE_VERBS.has(before.folded)) return false;
  // "The cap is light."
  if (before && BEFORE_ADJECTIVES.has(before.folded) && GENERAL.has(word.folded)) return false;
  // "Shake the bottle and mist the leaves": an order is joined to another.
  if (before && !CONJUNCTIONS.has(before.folded)) return true;
  return !isIn(words, at + 1, word.sentence) || !DETERMINERS.has(itemAt(words, at + 1).folded);
};
