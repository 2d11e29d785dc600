/** "House plant", "house-plant" and "houseplant" are one: whoever types one of them means them all. */
import { type ArticleIndex, JOINED } from './article-index.ts';
import { hashOf, type Words } from './term.ts';

/** Letters that each half must have: "a way" is not "away". Common practice, no source. */
const LEAST_LETTERS = 3;

/** Of two words' numbers, that of the word they make. */
export interface Compounds {
  readonly joined: (first: number, second: number) => number | undefined;
  /** Words that make one with the word given before them. */
  readonly secondsOf: (first: number) => Iterable<number>;
  /** 1 for each word that makes one with some other after it. */
  readonly isFirst: Uint8Array;
  /** Where two have the same, they put the same pairs together. */
  readonly digest: string;
}

/** Letters of the longest word that is cut, more than the longest that anybody prints: what is longer is no word. */
const MOST_LETTERS = 100;

type Halves = readonly [first: number, second: number];

/** Every way to cut a word in two that are words too. */
const halvesOf = (key: string, vocabulary: Words): readonly Halves[] => {
  const found: Halves[] = [];
  if (key.length > MOST_LETTERS) return found;
  for (let cut = LEAST_LETTERS; cut <= key.length - LEAST_LETTERS; cut += 1) {
    const first = vocabulary.find(hashOf(key, 0, cut));
    const second = first < 0 ? -1 : vocabulary.find(hashOf(key, cut));
    if (second >= 0) found.push([first, second]);
  }
  return found;
};

/**
 * The pairs that some article writes as one word. `keys` has each word's key by its number, and nothing for a word that
 * no article has. Linear in the letters.
 */
export const compoundsOf = (keys: readonly (string | undefined)[], vocabulary: Words): Compounds => {
  const pairs: string[] = [];
  const byFirst = new Map<number, Map<number, number>>();
  const isFirst = new Uint8Array(keys.length);
  for (const [joined, key] of keys.entries()) {
    if (key === undefined) continue;
    for (const [first, second] of halvesOf(key, vocabulary)) {
      const seconds = byFirst.get(first) ?? new Map<number, number>();
      byFirst.set(first, seconds.set(second, joined));
      isFirst[first] = 1;
      pairs.push(`${first}+${second}=${joined}`);
    }
  }
  return {
    joined: (first, second) => byFirst.get(first)?.get(second),
    secondsOf: (first) => byFirst.get(first)?.keys() ?? [],
    isFirst,
    digest: pairs.join(),
  };
};

/** Pairs of an article that are put together, from the left. */
export interface Pairs {
  /** Where the first word of each stands, in ascending order. */
  readonly at: readonly number[];
  /** The word that each makes, by its number. */
  readonly words: readonly number[];
}

/** The pairs of an article that make a word; `numbers` are those of its keys. */
export const pairsIn = (index: ArticleIndex, numbers: Int32Array, compounds: Compounds): Pairs => {
  const { words, marks, formKeys } = index;
  const { isFirst } = compounds;
  const opens = new Uint8Array(formKeys.length);
  for (let form = 0; form < formKeys.length; form += 1)
    opens[form] = isFirst[numbers[formKeys[form] as number] as number] as number;
  const numberAt = (word: number): number => numbers[formKeys[words[word] as number] as number] as number;
  const at: number[] = [];
  const joinedWords: number[] = [];
  for (let word = 0; word + 1 < words.length; word += 1) {
    if (opens[words[word] as number] === 0 || (marks[word + 1] as number) < JOINED) continue;
    const joined = compounds.joined(numberAt(word), numberAt(word + 1));
    if (joined === undefined) continue;
    at.push(word);
    joinedWords.push(joined);
    word += 1;
  }
  return { at, words: joinedWords };
};

/** Distinct words of an article with its pairs put together. */
export const wordsWith = (
  { words, formKeys }: ArticleIndex,
  numbers: Int32Array,
  pairs: Pairs,
): Int32Array => {
  const counts = new Int32Array(numbers.length);
  for (let word = 0; word < words.length; word += 1) {
    const key = formKeys[words[word] as number] as number;
    counts[key] = (counts[key] as number) + 1;
  }
  for (const first of pairs.at)
    for (const word of [first, first + 1]) {
      const key = formKeys[words[word] as number] as number;
      counts[key] = (counts[key] as number) - 1;
    }
  const distinct = new Int32Array(numbers.length + pairs.words.length);
  let size = 0;
  for (let key = 0; key < numbers.length; key += 1)
    if (counts[key] !== 0) {
      distinct[size] = numbers[key] as number;
      size += 1;
    }
  for (const word of pairs.words)
    if (!distinct.subarray(0, size).includes(word)) {
      distinct[size] = word;
      size += 1;
    }
  return distinct.subarray(0, size);
};

interface Numbered {
  /** Index of the phrase's word that it comes from, the first of two. */
  readonly word: number;
  readonly number: number;
}

/** A word that no article has. */
const UNKNOWN = -1;

/**
 * A phrase's words as numbers, written as the streams have them: a pair that makes a word is that word, and a word
 * that nobody writes as one is its two halves.
 */
export const numbersOf = (
  words: readonly string[],
  compounds: Compounds,
  vocabulary: Words,
): readonly Numbered[] => {
  const found: Numbered[] = [];
  for (const [word, key] of words.entries()) {
    const before = found.at(-1);
    const number = vocabulary.find(hashOf(key));
    const joined = before && compounds.joined(before.number, number);
    if (before && joined !== undefined) found.splice(-1, 1, { word: before.word, number: joined });
    else if (number >= 0) found.push({ word, number });
    else {
      const [halves] = halvesOf(key, vocabulary);
      for (const half of halves ?? [UNKNOWN]) found.push({ word, number: half });
    }
  }
  return found;
};
