/** "House plant", "house-plant" and "houseplant" are one: whoever types one of them means them all. */
import { formNumber, type TextStream, type Vocabulary } from './text-stream.ts';

/** Letters that each half must have: "a way" is not "away". Common practice, no source. */
const LEAST_LETTERS = 3;

/** Of two words' numbers, that of the word they make. */
export type Compounds = ReadonlyMap<number, ReadonlyMap<number, number>>;

type Halves = readonly [first: number, second: number];

/** Every way to cut a word in two that are words of the vocabulary too. */
const halvesOf = (key: string, { keys }: Vocabulary): readonly Halves[] => {
  const found: Halves[] = [];
  for (let cut = LEAST_LETTERS; cut <= key.length - LEAST_LETTERS; cut += 1) {
    const first = keys.get(key.slice(0, cut));
    const second = first === undefined ? undefined : keys.get(key.slice(cut));
    if (first !== undefined && second !== undefined) found.push([first, second]);
  }
  return found;
};

/** The pairs that some article writes as one word; linear in the letters of the vocabulary. */
export const compoundsOf = (vocabulary: Vocabulary): Compounds => {
  const compounds = new Map<number, Map<number, number>>();
  for (const [key, joined] of vocabulary.keys) {
    for (const [first, second] of halvesOf(key, vocabulary)) {
      const seconds = compounds.get(first) ?? new Map<number, number>();
      compounds.set(first, seconds.set(second, joined));
    }
  }
  return compounds;
};

/** A stream with each pair that makes a word put together as that word; how it is written is kept. */
export const withCompounds = (
  stream: TextStream,
  compounds: Compounds,
  vocabulary: Vocabulary,
): TextStream => {
  const { keys, forms, joins, starts } = stream;
  const joinedAt = new Map<number, number>();
  for (let at = 0; at + 1 < keys.length; at += 1) {
    const joined = compounds.get(keys[at] as number)?.get(keys[at + 1] as number);
    if (joined === undefined || joins[at + 1] === 0 || joinedAt.has(at - 1)) continue;
    joinedAt.set(at, joined);
  }
  if (joinedAt.size === 0) return stream;

  const kept = Int32Array.from(keys.keys()).filter((at) => !joinedAt.has(at - 1));
  const seconds = [...joinedAt.keys()].map((at) => at + 1);
  const writtenAt = (at: number): number => {
    if (!joinedAt.has(at)) return forms[at] as number;
    const between = joins[at + 1] === 2 ? '-' : ' ';
    const [first, second] = [
      vocabulary.written[forms[at] as number],
      vocabulary.written[forms[at + 1] as number],
    ];
    return formNumber(vocabulary, `${first}${between}${second}`);
  };
  let gone = 0;
  return {
    ...stream,
    keys: kept.map((at) => joinedAt.get(at) ?? (keys[at] as number)),
    forms: kept.map(writtenAt),
    fields: Uint8Array.from(kept, (at) => stream.fields[at] as number),
    joins: Uint8Array.from(kept, (at) => joins[at] as number),
    lines: kept.map((at) => stream.lines[at] as number),
    columns: kept.map((at) => stream.columns[at] as number),
    starts: starts.map((start) => {
      while (gone < seconds.length && (seconds[gone] as number) < start) gone += 1;
      return start - gone;
    }),
  };
};

export interface Numbered {
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
  vocabulary: Vocabulary,
): readonly Numbered[] => {
  const found: Numbered[] = [];
  for (const [word, key] of words.entries()) {
    const before = found.at(-1);
    const number = vocabulary.keys.get(key);
    const joined = before && compounds.get(before.number)?.get(number ?? UNKNOWN);
    if (before && joined !== undefined) found.splice(-1, 1, { word: before.word, number: joined });
    else if (number !== undefined) found.push({ word, number });
    else {
      const [halves] = halvesOf(key, vocabulary);
      for (const half of halves ?? [UNKNOWN]) found.push({ word, number: half });
    }
  }
  return found;
};
