/** Articles that are compared with one another, made ready from their indexes. */
import type { ArticleIndex } from './article-index.ts';
import { type Scorer, scorerOf } from './bm25f.ts';
import { type Compounds, compoundsOf } from './compounds.ts';
import { type Lexicon, newLexicon } from './lexicon.ts';
import { type FieldName, RANK_PARAMETERS } from './ranking.ts';
import type { Words } from './term.ts';
import { occurrencesIn, saysAny, type TextStream } from './text-stream.ts';

/** Articles are numbered from 0, the oldest first. */
export interface Archive {
  readonly articles: readonly ArticleIndex[];
  /** Words that some article has. */
  readonly vocabulary: Words;
  readonly compounds: Compounds;
  readonly scorer: Scorer<FieldName>;
  /** The number of a cycle's article. Throws for one that is not there. */
  readonly numberOf: (cycle: string) => number;
  readonly streamOf: (article: number) => TextStream;
  /** Articles that say some words side by side. */
  readonly saying: (words: readonly number[]) => readonly number[];
}

const NONE = new Uint32Array(0);

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
 * A mean length as it is ranked by, to two figures: a sentence more in one article makes every mean another, and says
 * nothing of what the others are to a visitor.
 */
const roundedMean = (mean: number): number => Number(mean.toPrecision(2));

/**
 * An archive of some articles: those that a visitor can read, and the one under proof where it is still sealed. It
 * depends on their indexes alone, in any order. Throws for two articles of one cycle. Linear in the words of the
 * indexes; with the `lexicon` of another archive, articles that are in both are not read again.
 */
export const archiveOf = (indexes: Iterable<ArticleIndex>, lexicon: Lexicon = newLexicon()): Archive => {
  const articles = [...indexes].sort((a, b) => (a.cycle < b.cycle ? -1 : 1));
  const numbers = new Map(articles.map(({ cycle }, number) => [cycle, number]));
  if (numbers.size < articles.length) throw new Error('Expected one article a cycle');

  const numbersOf = articles.map(lexicon.numbersOf);
  const size = lexicon.vocabulary.size();
  const isThere = new Uint8Array(size);
  for (const own of numbersOf) for (const number of own) isThere[number] = 1;
  const vocabulary: Words = {
    find: (hash) => {
      const number = lexicon.vocabulary.find(hash);
      return isThere[number] === 1 ? number : -1;
    },
  };
  // Which pairs of words make a word is known only when all were read.
  const compounds = compoundsOf(
    lexicon.keys.map((key, number) => (isThere[number] === 1 ? key : undefined)),
    vocabulary,
  );
  const read = articles.map((article) => lexicon.read(article, compounds));
  const streamOf = (article: number): TextStream => {
    const found = read[article];
    if (!found) throw new Error(`Expected an article of number ${article} in the archive`);
    return found.stream;
  };
  const holders = holdersOf(
    read.map(({ words }) => words),
    size,
  );
  const scorer = scorerOf(
    {
      lengths: read.map(({ fieldLengths }) => fieldLengths),
      holders,
      occurrences: (word, article) => occurrencesIn(streamOf(article), word),
    },
    RANK_PARAMETERS,
    roundedMean,
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
    const all = Array.from(found).filter((article) => saysAny(streamOf(article), words));
    said.set(name, all);
    return all;
  };

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
    streamOf,
    saying,
  };
};
