/** The words of articles, numbered for as long as the articles are compared again and again. */
import { remembered } from '../../../text/remembered.ts';
import { utf8Text } from '../../../text/utf8.ts';
import type { ArticleIndex, Texts } from './article-index.ts';
import { type Compounds, type Pairs, pairsIn, wordsWith } from './compounds.ts';
import { newVocabulary, type Vocabulary } from './term.ts';
import { fieldLengthsWith, streamOf, type TextStream } from './text-stream.ts';

/** An article with its pairs put together, by some compounds. */
export interface ReadArticle {
  /** Numbers of its distinct words. */
  readonly words: Int32Array;
  readonly fieldLengths: ArrayLike<number>;
  readonly stream: TextStream;
}

/** A word keeps its number, also where no article has it any more. */
export interface Lexicon {
  readonly vocabulary: Vocabulary;
  /** The numbers of an article's keys. */
  readonly numbersOf: (article: ArticleIndex) => Int32Array;
  /** Each word's key by its number. */
  readonly keys: readonly string[];
  /** An article as these compounds read it; kept for as long as it is in use. */
  readonly read: (article: ArticleIndex, compounds: Compounds) => ReadArticle;
}

const NO_PAIRS: Pairs = { at: [], words: [] };

/** A reader of an article's keys by their number, which reads the bytes when it is first asked. */
const keyReader = ({ bytes, lengths }: Texts): ((number: number) => string) => {
  let [text, at, start] = ['', 0, 0];
  return (number) => {
    if (text === '') text = utf8Text(bytes);
    // It is asked in ascending order.
    for (; at < number; at += 1) start += lengths[at] ?? 0;
    return text.slice(start, start + (lengths[at] ?? 0));
  };
};

/** Whether an article has both halves of any compound. */
const hasBothHalves = (numbers: Int32Array, { isFirst, secondsOf }: Compounds): boolean => {
  let own: Set<number> | undefined;
  for (const number of numbers) {
    if (isFirst[number] !== 1) continue;
    own ??= new Set(numbers);
    for (const second of secondsOf(number)) if (own.has(second)) return true;
  }
  return false;
};

/** Without a word. */
export const newLexicon = (): Lexicon => {
  const vocabulary = newVocabulary();
  const keys: string[] = [];
  const numbersOf = remembered(({ keyHashes, keys: texts }: ArticleIndex): Int32Array => {
    const numbers = vocabulary.addAll(keyHashes);
    if (vocabulary.size() === keys.length) return numbers;
    const textOf = keyReader(texts);
    for (const [key, number] of numbers.entries()) if (number === keys.length) keys.push(textOf(key));
    return numbers;
  });
  const known = new WeakMap<ArticleIndex, { readonly by: string; readonly read: ReadArticle }>();
  return {
    vocabulary,
    numbersOf,
    keys,
    read: (article, compounds) => {
      const before = known.get(article);
      if (before?.by === compounds.digest) return before.read;
      const numbers = numbersOf(article);
      const pairs = hasBothHalves(numbers, compounds) ? pairsIn(article, numbers, compounds) : NO_PAIRS;
      const read = {
        words: pairs.at.length === 0 ? numbers : wordsWith(article, numbers, pairs),
        fieldLengths: fieldLengthsWith(article, pairs),
        stream: streamOf(article, numbers, pairs),
      };
      known.set(article, { by: compounds.digest, read });
      return read;
    },
  };
};
