/** Articles that are compared with one another, made ready from their indexes. */
import { utf8Text } from '../../../text/utf8.ts';
import type { ArticleIndex, Texts } from './article-index.ts';
import { type Scorer, scorerOf } from './bm25f.ts';
import { type Compounds, compoundsOf, type Pairs, pairsIn, wordsWith } from './compounds.ts';
import { type FieldName, RANK_PARAMETERS } from './ranking.ts';
import { type FirstParagraphs, firstParagraphsOf } from './shared-passages.ts';
import { newVocabulary, type Vocabulary } from './term.ts';
import { fieldLengthsWith, occurrencesIn, saysAny, streamOf, type TextStream } from './text-stream.ts';

/** Articles are numbered from 0, the oldest first. */
export interface Archive {
  readonly articles: readonly ArticleIndex[];
  readonly vocabulary: Vocabulary;
  readonly compounds: Compounds;
  readonly scorer: Scorer<FieldName>;
  /** The number of a cycle's article. Throws for one that is not there. */
  readonly numberOf: (cycle: string) => number;
  readonly streamOf: (article: number) => TextStream;
  /** Articles that say some words side by side. */
  readonly saying: (words: readonly number[]) => readonly number[];
  readonly firstParagraphs: () => FirstParagraphs;
}

const NONE = new Uint32Array(0);
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

/** Whether an article has both halves of any compound; `marked` is written over, `mark` being the article's own sign. */
const hasBothHalves = (
  numbers: Int32Array,
  { isFirst, secondsOf }: Compounds,
  marked: Int32Array,
  mark: number,
): boolean => {
  for (const number of numbers) marked[number] = mark;
  for (const number of numbers) {
    if (isFirst[number] === 0) continue;
    for (const second of secondsOf(number)) if (marked[second] === mark) return true;
  }
  return false;
};

/** Of each word, the articles that have it, in ascending order. */
const holdersOf = (wordsOf: readonly Int32Array[], size: number): ((word: number) => Uint32Array) => {
  const ends = new Uint32Array(size + 1);
  for (const words of wordsOf) for (const word of words) ends[word + 1] = (ends[word + 1] as number) + 1;
  for (let word = 0; word < size; word += 1)
    ends[word + 1] = (ends[word + 1] as number) + (ends[word] as number);
  const articles = new Uint32Array(ends[size] as number);
  const next = ends.slice();
  for (const [article, words] of wordsOf.entries())
    for (const word of words) {
      const at = next[word] as number;
      articles[at] = article;
      next[word] = at + 1;
    }
  return (word) => (word < 0 ? NONE : articles.subarray(ends[word], ends[word + 1]));
};

const inBoth = (one: ArrayLike<number>, other: ArrayLike<number>): readonly number[] => {
  const both: number[] = [];
  for (let i = 0, j = 0; i < one.length && j < other.length; ) {
    const [a, b] = [one[i] as number, other[j] as number];
    if (a === b) both.push(a);
    if (a <= b) i += 1;
    if (b <= a) j += 1;
  }
  return both;
};

/**
 * An archive of some articles: those that a visitor can read, and the one under proof where it is still sealed. It
 * depends on their indexes alone, in any order. `proved` names the cycles that will be asked about, all where it is
 * left out. Throws for two articles of one cycle. Linear in the words of the indexes.
 */
export const archiveOf = (
  indexes: Iterable<ArticleIndex>,
  proved: ReadonlySet<string> | undefined = undefined,
): Archive => {
  const articles = [...indexes].sort((a, b) => (a.cycle < b.cycle ? -1 : 1));
  const numbers = new Map(articles.map(({ cycle }, number) => [cycle, number]));
  if (numbers.size < articles.length) throw new Error('Expected one article a cycle');

  const vocabulary = newVocabulary();
  const keys: string[] = [];
  const numbersOf = articles.map(({ keyHashes, keys: texts }) => {
    const numbers = vocabulary.addAll(keyHashes);
    if (vocabulary.size() === keys.length) return numbers;
    const textOf = keyReader(texts);
    for (const [key, number] of numbers.entries()) if (number === keys.length) keys.push(textOf(key));
    return numbers;
  });

  // Which pairs of words make a word is known only when all were read.
  const compounds = compoundsOf(keys, vocabulary);
  const marked = new Int32Array(keys.length).fill(-1);
  const pairsOf = articles.map((index, article) => {
    const numbers = numbersOf[article] as Int32Array;
    if (!hasBothHalves(numbers, compounds, marked, article)) return NO_PAIRS;
    return pairsIn(index, numbers, compounds);
  });
  const streams: TextStream[] = [];
  const streamOfArticle = (article: number): TextStream => {
    const stream =
      streams[article] ??
      streamOf(
        articles[article] as ArticleIndex,
        numbersOf[article] as Int32Array,
        pairsOf[article] as Pairs,
      );
    streams[article] = stream;
    return stream;
  };
  const holders = holdersOf(
    articles.map((index, article) => {
      const [numbers, pairs] = [numbersOf[article] as Int32Array, pairsOf[article] as Pairs];
      return pairs.at.length === 0 ? numbers : wordsWith(index, numbers, pairs);
    }),
    keys.length,
  );
  const scorer = scorerOf(
    {
      lengths: articles.map((index, article) => fieldLengthsWith(index, pairsOf[article] as Pairs)),
      holders,
      occurrences: (word, article) => occurrencesIn(streamOfArticle(article), word),
    },
    RANK_PARAMETERS,
  );

  const said = new Map<string, readonly number[]>();
  const saying = (words: readonly number[]): readonly number[] => {
    const name = words.join(' ');
    const known = said.get(name);
    if (known) return known;
    const [first, ...others] = words;
    const found = others.reduce(
      (both: ArrayLike<number>, word) => inBoth(both, holders(word)),
      first === undefined ? NONE : holders(first),
    );
    const all = Array.from(found).filter((article) => saysAny(streamOfArticle(article), words));
    said.set(name, all);
    return all;
  };

  let paragraphs: FirstParagraphs | undefined;
  return {
    articles,
    vocabulary,
    compounds,
    scorer,
    numberOf: (cycle) => {
      const number = numbers.get(cycle);
      if (number === undefined) throw new Error(`Expected the article of \`${cycle}\` in the archive`);
      return number;
    },
    streamOf: streamOfArticle,
    saying,
    firstParagraphs: () => {
      paragraphs ??= firstParagraphsOf(articles, ({ cycle }) => proved?.has(cycle) ?? true);
      return paragraphs;
    },
  };
};
