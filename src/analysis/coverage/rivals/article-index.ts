/** What comparing needs of one article, as small arrays of numbers: to be kept, and read back without reading the text anew. */

import { remembered } from '../../../text/remembered.ts';
import { utf8Bytes, utf8Text } from '../../../text/utf8.ts';
import { adjacent } from '../text/adjacent.ts';
import type { Passage } from '../text/passage.ts';
import type { Article } from './article.ts';
import { FIELDS, fieldOf } from './ranking.ts';
import { isCompared, shinglesOf } from './shingles.ts';
import { hashOf } from './term.ts';

/** Whole numbers in the narrowest array that holds them. */
export type Numbers = Uint8Array | Uint16Array | Uint32Array;

/** Texts one after the other in UTF-8, and the length of each in UTF-16 units. */
export interface Texts {
  readonly bytes: Uint8Array;
  readonly lengths: Numbers;
}

/**
 * One article for comparing. Words are counted through the passages in reading order. A word's form is the word as it
 * is written; its key is the same for singular and plural.
 */
export interface ArticleIndex {
  readonly cycle: string;
  readonly title: string;
  /** Cycles that its stories link to. */
  readonly linksTo: readonly string[];
  readonly files: readonly string[];
  /** Each distinct key once. */
  readonly keys: Texts;
  /** Both hashes of each key, one after the other. */
  readonly keyHashes: Int32Array;
  /** Each distinct form once. */
  readonly forms: Texts;
  /** The key of each form, as an index of `keys`. */
  readonly formKeys: Numbers;
  /** The form of each word, as an index of `forms`. */
  readonly words: Numbers;
  /** Of each word: its field, an index of `FIELDS`, and `JOINED` times how it is joined to the word before, an index of `JOINS`. */
  readonly marks: Uint8Array;
  /** Words of each field, in the order of `FIELDS`. */
  readonly fieldLengths: Numbers;
  /** Where each passage begins, as a number of words, and one entry more for the end. */
  readonly starts: Numbers;
  /** Of each passage: twice its file, an index of `files`, and 1 more where an author can make its words a link. */
  readonly origins: Numbers;
  /** Line and column of each passage's first word, one after the other. */
  readonly firstPlaces: Numbers;
  /** Where the words of passages that take links stand, each from the word before: see `addSteps`. */
  readonly steps: Uint8Array;
  /** Passages that are compared with those of other articles, in reading order. */
  readonly compared: Numbers;
  /** The text of each compared passage, so that whoever finds two alike can show them without reading either article. */
  readonly comparedTexts: Texts;
  /** Shingles of each compared passage. */
  readonly shingleCounts: Numbers;
  readonly shingles: Int32Array;
}

/** What may stand between two words of one phrase; the first entry is for words that are not of one. */
export const JOINS: readonly string[] = ['', ' ', '-', ''];

/** The mark of a word joined to the one before is at least this; what is below it is the field. */
export const JOINED = 16;

const narrowed = (numbers: readonly number[]): Numbers => {
  let most = 0;
  for (const number of numbers) if (number > most) most = number;
  if (most < 2 ** 8) return Uint8Array.from(numbers);
  return most < 2 ** 16 ? Uint16Array.from(numbers) : Uint32Array.from(numbers);
};

const textsOf = (texts: Iterable<string>): Texts => {
  const all = [...texts];
  return { bytes: utf8Bytes(all.join('')), lengths: narrowed(all.map(({ length }) => length)) };
};

/** Only a story's own text is Markdown; the value of a record's field takes no links. */
const canLink = (passage: Passage): boolean =>
  passage.form === 'paragraph' && passage.written && passage.field === undefined;

/** All of some texts in one; several are asked for in turn. */
const joined = remembered(({ bytes }: Texts): string => utf8Text(bytes));

/** One of some texts, by its number. */
export const textAt = (texts: Texts, number: number): string => {
  const { lengths } = texts;
  let start = 0;
  for (let before = 0; before < number; before += 1) start += lengths[before] ?? 0;
  return joined(texts).slice(start, start + (lengths[number] ?? 0));
};

/** What joins a word of a passage with the one before, as an index of `JOINS`. */
const joinBefore = (passage: Passage, word: number): number => {
  const [before, here] = [passage.words[word - 1], passage.words[word]];
  if (!before || !here) return 0;
  // Nearly always one space: worth a short cut, since every word of every article comes by.
  if (here.start - before.end === 1 && passage.text[before.end] === ' ') return 1;
  if (!adjacent(passage, word - 1)) return 0;
  if (here.start === before.end) return 3;
  return /\S/.test(passage.text.slice(before.end, here.start)) ? 2 : 1;
};

/** The number of a text in a map of numbered ones; a new one for a text that is new. */
const numberIn = (numbers: Map<string, number>, text: string): number => {
  const known = numbers.get(text);
  if (known !== undefined) return known;
  numbers.set(text, numbers.size);
  return numbers.size - 1;
};

/** A number of 0 or more, seven bits a byte, the lowest first; LEB128 of DWARF (section 7.6). */
const addNumber = (bytes: number[], number: number): void => {
  let rest = number;
  for (; rest > 127; rest >>>= 7) bytes.push((rest & 127) | 128);
  bytes.push(rest);
};

/**
 * The way from each word to the next: twice the columns on, where it stands on the same line; else twice the lines
 * down and 1 more, and then its column.
 */
const addSteps = (steps: number[], { words }: Passage): void => {
  for (const [at, word] of words.entries()) {
    const before = words[at - 1];
    if (!before) continue;
    const down = word.line - before.line;
    if (down > 0) {
      addNumber(steps, 2 * down + 1);
      addNumber(steps, word.column);
    } else addNumber(steps, 2 * (word.column - before.column));
  }
};

/** Line and column of a word in a passage that takes links. */
export const placeIn = (
  { origins, starts, firstPlaces, steps }: ArticleIndex,
  passage: number,
  word: number,
): { readonly line: number; readonly column: number } => {
  let cursor = 0;
  const read = (): number => {
    let [number, shift] = [0, 0];
    for (;;) {
      const byte = steps[cursor++] ?? 0;
      number |= (byte & 127) << shift;
      if (byte < 128) return number;
      shift += 7;
    }
  };
  let [line, column] = [0, 0];
  for (let here = 0; here <= passage; here += 1) {
    if (((origins[here] ?? 0) & 1) === 0) continue;
    [line, column] = [firstPlaces[2 * here] ?? 1, firstPlaces[2 * here + 1] ?? 1];
    const last = here === passage ? word : (starts[here + 1] ?? 0) - 1;
    for (let at = (starts[here] ?? 0) + 1; at <= last; at += 1) {
      const step = read();
      if (step % 2 === 0) column += step >> 1;
      else [line, column] = [line + (step >> 1), read()];
    }
  }
  return { line, column };
};

/** The index of an article. It depends on the article alone, and so on what its passages depend on and its links. */
export const indexArticle = ({ cycle, title, passages, linksTo }: Article): ArticleIndex => {
  const [files, keys, forms] = [
    new Map<string, number>(),
    new Map<string, number>(),
    new Map<string, number>(),
  ];
  const formKeys: number[] = [];
  const words: number[] = [];
  const marks: number[] = [];
  const fieldLengths = FIELDS.map(() => 0);
  const starts = [0];
  const origins: number[] = [];
  const firstPlaces: number[] = [];
  const steps: number[] = [];
  const compared: number[] = [];
  const comparedTexts: string[] = [];
  const shingleCounts: number[] = [];
  const shingles: number[] = [];
  for (const [number, passage] of passages.entries()) {
    for (const [at, word] of passage.words.entries()) {
      const form = numberIn(forms, word.text);
      if (form === formKeys.length) formKeys.push(numberIn(keys, word.key));
      const field = FIELDS.indexOf(fieldOf[word.zone]);
      words.push(form);
      marks.push(field + JOINED * joinBefore(passage, at));
      fieldLengths[field] = (fieldLengths[field] as number) + 1;
    }
    starts.push(words.length);
    origins.push(2 * numberIn(files, passage.file) + (canLink(passage) ? 1 : 0));
    firstPlaces.push(passage.words[0]?.line ?? 1, passage.words[0]?.column ?? 1);
    if (canLink(passage)) addSteps(steps, passage);
    if (!isCompared(passage)) continue;
    const own = shinglesOf(passage);
    compared.push(number);
    comparedTexts.push(passage.text);
    shingleCounts.push(own.size);
    shingles.push(...own);
  }
  const keyHashes = Int32Array.from(
    [...keys.keys()].flatMap((key) => {
      const { a, b } = hashOf(key);
      return [a, b];
    }),
  );
  return {
    cycle,
    title,
    linksTo,
    files: [...files.keys()],
    keys: textsOf(keys.keys()),
    keyHashes,
    forms: textsOf(forms.keys()),
    formKeys: narrowed(formKeys),
    words: narrowed(words),
    marks: Uint8Array.from(marks),
    fieldLengths: narrowed(fieldLengths),
    starts: narrowed(starts),
    origins: narrowed(origins),
    firstPlaces: narrowed(firstPlaces),
    steps: Uint8Array.from(steps),
    compared: narrowed(compared),
    comparedTexts: textsOf(comparedTexts),
    shingleCounts: narrowed(shingleCounts),
    shingles: Int32Array.from(shingles),
  };
};
