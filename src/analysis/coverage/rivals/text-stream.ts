/** An article's words as numbers: small enough to hold a thousand articles, and to look up where one says a phrase. */
import type { Location } from '../../../diagnostics/diagnostic.ts';
import type { Passage } from '../text/passage.ts';
import { adjacent } from '../text/text-index.ts';
import type { Zone } from '../text/zones.ts';
import type { Article } from './article.ts';
import { type FieldName, fieldOf } from './ranking.ts';

const FIELDS: readonly FieldName[] = [...new Set(Object.values(fieldOf))];
const FIELD_NUMBERS = Object.fromEntries(
  Object.entries(fieldOf).map(([zone, field]) => [zone, FIELDS.indexOf(field)]),
) as Readonly<Record<Zone, number>>;

export interface TextStream {
  readonly cycle: string;
  readonly title: string;
  readonly linksTo: ReadonlySet<string>;
  /** One number a word, the same for the same key in all articles of one vocabulary. */
  readonly keys: Int32Array;
  /** Index in `FIELDS` of each word. */
  readonly fields: Uint8Array;
  /** Each word as it is written, by its number in the vocabulary. */
  readonly forms: Int32Array;
  /** What joins a word with the one before, an index of `JOINS`; 0 where a stop or a passage parts them. */
  readonly joins: Uint8Array;
  readonly lines: Int32Array;
  readonly columns: Int32Array;
  /** Where each passage begins, and one entry more for the end. */
  readonly starts: Int32Array;
  readonly files: readonly string[];
  /** Passages in which an author can make a word a link. */
  readonly linkable: readonly boolean[];
}

/** What may stand between two words of one phrase; the first entry is for words that are not of one. */
const JOINS: readonly (string | undefined)[] = [undefined, ' ', '-', ''];

/** Numbers of words and of their keys, shared by all streams that are to be compared. */
export interface Vocabulary {
  readonly keys: Map<string, number>;
  /** The keys by number. */
  readonly list: string[];
  readonly forms: Map<string, number>;
  readonly written: string[];
}

export const newVocabulary = (): Vocabulary => ({
  keys: new Map(),
  list: [],
  forms: new Map(),
  written: [],
});

/** Only a story's own text is Markdown; the value of a record's field takes no links. */
const canLink = (passage: Passage): boolean =>
  passage.form === 'paragraph' && passage.written && passage.field === undefined;

const keyNumber = ({ keys, list }: Vocabulary, key: string): number => {
  const known = keys.get(key);
  if (known !== undefined) return known;
  keys.set(key, list.length);
  return list.push(key) - 1;
};

/** The number of a word as it is written. */
export const formNumber = ({ forms, written }: Vocabulary, text: string): number => {
  const known = forms.get(text);
  if (known !== undefined) return known;
  forms.set(text, written.length);
  return written.push(text) - 1;
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

/** The stream of an article; words that are new are added to the vocabulary. */
export const streamOf = (
  { cycle, title, passages, linksTo }: Article,
  vocabulary: Vocabulary,
): TextStream => {
  const size = passages.reduce((sum, { words }) => sum + words.length, 0);
  const stream = {
    cycle,
    title,
    linksTo: new Set(linksTo),
    keys: new Int32Array(size),
    forms: new Int32Array(size),
    fields: new Uint8Array(size),
    joins: new Uint8Array(size),
    lines: new Int32Array(size),
    columns: new Int32Array(size),
    starts: new Int32Array(passages.length + 1),
    files: passages.map(({ file }) => file),
    linkable: passages.map(canLink),
  };
  let at = 0;
  for (const [number, passage] of passages.entries()) {
    const first = at;
    for (const word of passage.words) {
      stream.keys[at] = keyNumber(vocabulary, word.key);
      stream.forms[at] = formNumber(vocabulary, word.text);
      stream.fields[at] = FIELD_NUMBERS[word.zone];
      stream.joins[at] = joinBefore(passage, at - first);
      stream.lines[at] = word.line;
      stream.columns[at] = word.column;
      at += 1;
    }
    stream.starts[number + 1] = at;
  }
  return stream;
};

export interface StreamSpot {
  readonly field: FieldName;
  readonly at: Location;
  /** As it is written there. */
  readonly text: string;
  /** Whether these words can be made a link: prose that an author wrote, and no link yet. */
  readonly free: boolean;
}

/** Every place where the keys stand side by side with nothing but space or a hyphen between, in reading order. */
export const spotsOf = (
  stream: TextStream,
  keys: readonly number[],
  { written }: Vocabulary,
): readonly StreamSpot[] => {
  const spots: StreamSpot[] = [];
  const [first] = keys;
  if (first === undefined) return spots;
  let passage = 0;
  for (let at = stream.keys.indexOf(first); at >= 0; at = stream.keys.indexOf(first, at + 1)) {
    while (at >= (stream.starts[passage + 1] as number)) passage += 1;
    const said = keys.every(
      (key, i) => stream.keys[at + i] === key && (i === 0 || stream.joins[at + i] !== 0),
    );
    if (!said) continue;
    const field = FIELDS[stream.fields[at] as number] as FieldName;
    const linked = keys.some((_, i) => FIELDS[stream.fields[at + i] as number] === 'link text');
    spots.push({
      field,
      at: {
        file: stream.files[passage] as string,
        line: stream.lines[at] as number,
        column: stream.columns[at] as number,
      },
      text: keys
        .map((_, i) => {
          const form = written[stream.forms[at + i] as number] as string;
          return i === 0 ? form : `${JOINS[stream.joins[at + i] as number]}${form}`;
        })
        .join(''),
      free: stream.linkable[passage] === true && !linked,
    });
  }
  return spots;
};

/**
 * Where a sentence with a link can be added: the first paragraph that takes links in a file, else in the article,
 * else where the article begins.
 */
export const proseOf = ({ files, linkable, starts, lines, columns }: TextStream, file?: string): Location => {
  const inFile = linkable.findIndex((can, i) => can && files[i] === file);
  const passage = Math.max(0, inFile >= 0 ? inFile : linkable.indexOf(true));
  const word = starts[passage] ?? 0;
  return { file: files[passage] ?? '', line: lines[word] ?? 1, column: columns[word] ?? 1 };
};

/** The keys of each field. */
export const keysByField = (stream: TextStream, { list }: Vocabulary): Record<FieldName, string[]> => {
  const fields = Object.fromEntries(FIELDS.map((field) => [field, []])) as unknown as Record<
    FieldName,
    string[]
  >;
  for (let at = 0; at < stream.keys.length; at += 1) {
    const field = FIELDS[stream.fields[at] as number] as FieldName;
    fields[field].push(list[stream.keys[at] as number] as string);
  }
  return fields;
};

/** Words of a field. */
export const lengthOf = (stream: TextStream, field: FieldName): number => {
  const number = FIELDS.indexOf(field);
  return stream.fields.reduce((count, one) => count + (one === number ? 1 : 0), 0);
};
