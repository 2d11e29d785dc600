/** Whether a word that could be a noun or a verb stands as a noun: enough to tell a can from "you can". */
import type { ZonedWord } from '../text/passage.ts';

const list = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** Nouns of goods that are far more often auxiliary verbs. */
const AUXILIARIES = list('can will may might must');

const DETERMINERS = list(
  'a an the this that these those my your his her its our their every each another no one two three some any which whose',
);

/** After these a word that may be a verb is one. */
const BEFORE_VERBS = list(
  "to i you we they he she it who will would can could should must may might shall do does did not don't doesn't didn't can't won't i'll you'll we'll they'll please let's",
);

/** Common English usage, no source. A first word before a determiner ("Plant the bulbs") is an instruction. */
export const standsAsNoun = (words: readonly ZonedWord[], at: number): boolean => {
  const word = words[at] as ZonedWord;
  const before = words[at - 1];
  const first = before === undefined || before.sentence !== word.sentence;
  if (AUXILIARIES.has(word.folded)) return !first && DETERMINERS.has(before.folded);
  if (!first) return !BEFORE_VERBS.has(before.folded);
  const after = words[at + 1];
  return after === undefined || after.sentence !== word.sentence || !DETERMINERS.has(after.folded);
};
