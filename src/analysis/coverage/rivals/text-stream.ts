/** An article's words as numbers of an archive's vocabulary: where it says a phrase is looked up in them. */

import type { Location } from '../../../diagnostics/diagnostic.ts';
import { type ArticleIndex, JOINED, JOINS, placeIn, textAt } from './article-index.ts';
import type { Pairs } from './compounds.ts';
import { FIELDS, type FieldName } from './ranking.ts';

/** An article's words as numbers. */
export interface TextStream {
  readonly index: ArticleIndex;
  /** One number a word; a pair that makes a word is that word. */
  readonly keys: Int32Array;
  /** Where each stands in the index's own words, and one entry more for the end; absent where no pair was put together. */
  readonly from?: Int32Array;
}

const fieldAt = ({ marks }: ArticleIndex, word: number): number => (marks[word] ?? 0) % JOINED;
const joinAt = ({ marks }: ArticleIndex, word: number): number => Math.floor((marks[word] ?? 0) / JOINED);

const wordAt = ({ from }: TextStream, at: number): number => from?.[at] ?? at;

/** The words of an article as they stand. Written out, because it is done for every article that may say a phrase. */
const plainKeys = ({ words, formKeys }: ArticleIndex, numbers: Int32Array): Int32Array => {
  const ofForms = new Int32Array(formKeys.length);
  for (let form = 0; form < formKeys.length; form += 1)
    ofForms[form] = numbers[formKeys[form] as number] as number;
  const keys = new Int32Array(words.length);
  for (let word = 0; word < words.length; word += 1) keys[word] = ofForms[words[word] as number] as number;
  return keys;
};

/** The words of an article with some pairs put together; `numbers` are those of its keys in the archive's vocabulary. */
export const streamOf = (index: ArticleIndex, numbers: Int32Array, pairs: Pairs): TextStream => {
  const plain = plainKeys(index, numbers);
  if (pairs.at.length === 0) return { index, keys: plain };
  const keys = new Int32Array(plain.length - pairs.at.length);
  const from = new Int32Array(keys.length + 1);
  let [word, pair] = [0, 0];
  for (let at = 0; at < keys.length; at += 1) {
    from[at] = word;
    const joins = pairs.at[pair] === word;
    keys[at] = (joins ? pairs.words[pair] : plain[word]) as number;
    if (joins) pair += 1;
    word += joins ? 2 : 1;
  }
  from[keys.length] = plain.length;
  return { index, keys, from };
};

/** Words of each field, in the order of `FIELDS`. A pair that is put together is one, in the field of its first. */
export const fieldLengthsWith = (index: ArticleIndex, pairs: Pairs): ArrayLike<number> => {
  const lengths = [...index.fieldLengths];
  for (const first of pairs.at) {
    const field = fieldAt(index, first + 1);
    lengths[field] = (lengths[field] ?? 0) - 1;
  }
  return lengths;
};

/** How often a word stands in each field, in the order of `FIELDS`. */
export const occurrencesIn = (stream: TextStream, key: number): readonly number[] => {
  const counts = FIELDS.map(() => 0);
  for (let at = stream.keys.indexOf(key); at >= 0; at = stream.keys.indexOf(key, at + 1)) {
    const field = fieldAt(stream.index, wordAt(stream, at));
    counts[field] = (counts[field] ?? 0) + 1;
  }
  return counts;
};

/** Where an article says a phrase. */
export interface StreamSpot {
  readonly field: FieldName;
  readonly file: string;
  readonly passage: number;
  /** Its first word, and the one after its last, as numbers of the index's words. */
  readonly from: number;
  readonly to: number;
  /** Whether these words can be made a link: prose that an author wrote, and no link yet. */
  readonly free: boolean;
}

const fileOf = ({ files, origins }: ArticleIndex, passage: number): string =>
  files[(origins[passage] ?? 0) >> 1] ?? '';
const isLinkable = ({ origins }: ArticleIndex, passage: number): boolean =>
  ((origins[passage] ?? 0) & 1) === 1;

/** The next place from a word on where the keys stand side by side with nothing but space or a hyphen between; -1 for none. */
const nextSaying = (stream: TextStream, keys: readonly number[], after: number): number => {
  const [first] = keys;
  if (first === undefined) return -1;
  for (let at = stream.keys.indexOf(first, after); at >= 0; at = stream.keys.indexOf(first, at + 1)) {
    let matched = 1;
    while (
      matched < keys.length &&
      stream.keys[at + matched] === keys[matched] &&
      joinAt(stream.index, wordAt(stream, at + matched)) !== 0
    )
      matched += 1;
    if (matched === keys.length) return at;
  }
  return -1;
};

/** Whether an article says some words side by side. */
export const saysAny = (stream: TextStream, keys: readonly number[]): boolean =>
  nextSaying(stream, keys, 0) >= 0;

/** Every place where an article says some words side by side, in reading order. */
export const spotsOf = (stream: TextStream, keys: readonly number[]): readonly StreamSpot[] => {
  const { index } = stream;
  const spots: StreamSpot[] = [];
  let passage = 0;
  for (let at = nextSaying(stream, keys, 0); at >= 0; at = nextSaying(stream, keys, at + 1)) {
    const from = wordAt(stream, at);
    const to = wordAt(stream, at + keys.length);
    while (from >= (index.starts[passage + 1] ?? Number.POSITIVE_INFINITY)) passage += 1;
    const fields = Array.from({ length: to - from }, (_, i) => FIELDS[fieldAt(index, from + i)]);
    spots.push({
      field: fields[0] as FieldName,
      file: fileOf(index, passage),
      passage,
      from,
      to,
      free: isLinkable(index, passage) && !fields.includes('link text'),
    });
  }
  return spots;
};

/** Where the author finds a spot that is free. */
export const placeOf = ({ index }: TextStream, { file, passage, from }: StreamSpot): Location => ({
  file,
  ...placeIn(index, passage, from),
});

/** A spot as it is written there. */
export const writtenAt = ({ index }: TextStream, { from, to }: StreamSpot): string => {
  const { words, forms } = index;
  const formAt = (word: number): string => textAt(forms, words[word] ?? 0);
  return Array.from({ length: to - from }, (_, i) =>
    i === 0 ? formAt(from) : `${JOINS[joinAt(index, from + i)]}${formAt(from + i)}`,
  ).join('');
};

/**
 * Where a sentence with a link can be added: the first paragraph that takes links in a file, else in the article,
 * else where the article begins.
 */
export const proseOf = ({ index }: TextStream, file?: string): Location => {
  const passages = [...index.origins.keys()].filter((passage) => isLinkable(index, passage));
  const passage = passages.find((one) => fileOf(index, one) === file) ?? passages[0] ?? 0;
  const [line, column] = [index.firstPlaces[2 * passage], index.firstPlaces[2 * passage + 1]];
  return { file: fileOf(index, passage), line: line ?? 1, column: column ?? 1 };
};

/** Words of a field. */
export const lengthOf = ({ index, keys, from }: TextStream, field: FieldName): number => {
  const number = FIELDS.indexOf(field);
  if (!from) return index.fieldLengths[number] ?? 0;
  return from
    .subarray(0, keys.length)
    .reduce((sum, word) => sum + (fieldAt(index, word) === number ? 1 : 0), 0);
};
