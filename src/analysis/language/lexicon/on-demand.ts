/** Large lexicons, which lie there as text until the first word is looked for: most runs prove nothing anew. */
import { lazily } from '../../../text/lazy.ts';
import { wordSet } from '../../../text/word-set.ts';

/** A lexicon that can be asked for a word, and for nothing else. */
export type Lexicon = Pick<ReadonlySet<string>, 'has'>;

const asked = (make: () => ReadonlySet<string>): Lexicon => {
  const words = lazily(make);
  return { has: (word) => words().has(word) };
};

/** The words of a running text. */
export const wordsOnDemand = (text: string): Lexicon => asked(() => wordSet(text));

/**
 * Pairs of words written by their last, "table coffee dining | bag sleeping", each asked for with a low line between its
 * words: "coffee_table".
 */
export const pairsOnDemand = (text: string): Lexicon =>
  asked(
    () =>
      new Set(
        text.split('|').flatMap((row) => {
          const [last, ...firsts] = row.trim().split(/\s+/);
          return firsts.map((first) => `${first}_${last}`);
        }),
      ),
  );
