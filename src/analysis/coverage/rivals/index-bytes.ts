/** An article's index as bytes, and back. */
import { FNV_BASIS, FNV_PRIME } from '../../../text/fnv.ts';
import { utf8Bytes, utf8Text } from '../../../text/utf8.ts';
import type { ArticleIndex, Numbers, Texts } from './article-index.ts';

/** "LIDX", read as one number. Bytes that do not begin so are another thing, or were written on another kind of machine. */
const MAGIC = 0x5844494c;
/** Raise when an index means something else. */
const VERSION = 2;
/** Magic, version, checksum and length of the head. */
const PREFACE = 16;

type Section = Uint8Array | Uint16Array | Uint32Array | Int32Array;

/** Kinds of sections as the head names them: views of bytes from a place on. */
const VIEWS = {
  a: ({ buffer }: Uint8Array, from: number, count: number) => new Uint8Array(buffer, from, count),
  b: ({ buffer }: Uint8Array, from: number, count: number) => new Uint16Array(buffer, from, count),
  c: ({ buffer }: Uint8Array, from: number, count: number) => new Uint32Array(buffer, from, count),
  d: ({ buffer }: Uint8Array, from: number, count: number) => new Int32Array(buffer, from, count),
} as const;
type Kind = keyof typeof VIEWS;

interface Head {
  readonly cycle: string;
  readonly title: string;
  readonly linksTo: readonly string[];
  readonly files: readonly string[];
  /** Kind and count of each section, in the order of `sectionsOf`. */
  readonly sections: readonly (readonly [kind: Kind, count: number])[];
}

const kindOf = (section: Section): Kind => {
  if (section instanceof Uint8Array) return 'a';
  if (section instanceof Uint16Array) return 'b';
  return section instanceof Uint32Array ? 'c' : 'd';
};

const sectionsOf = (index: ArticleIndex): readonly Section[] => [
  index.keys.bytes,
  index.keys.lengths,
  index.keyHashes,
  index.forms.bytes,
  index.forms.lengths,
  index.formKeys,
  index.words,
  index.marks,
  index.fieldLengths,
  index.starts,
  index.origins,
  index.firstPlaces,
  index.steps,
  index.compared,
  index.comparedTexts.bytes,
  index.comparedTexts.lengths,
  index.shingleCounts,
  index.shingles,
];

const padded = (length: number): number => (length + 3) & ~3;

/** Four sums side by side, FNV-1a over units of 32 bits, of the length of the head and all that follows: enough to notice damage, and fast. */
const checksumOf = (bytes: Uint8Array, headLength: number): number => {
  const units = new Int32Array(bytes.buffer, bytes.byteOffset, bytes.byteLength >> 2);
  let [a, b, c, d] = [FNV_BASIS ^ headLength, FNV_BASIS, FNV_BASIS, FNV_BASIS];
  const whole = units.length & ~3;
  for (let at = 0; at < whole; at += 4) {
    a = Math.imul(a ^ (units[at] as number), FNV_PRIME);
    b = Math.imul(b ^ (units[at + 1] as number), FNV_PRIME);
    c = Math.imul(c ^ (units[at + 2] as number), FNV_PRIME);
    d = Math.imul(d ^ (units[at + 3] as number), FNV_PRIME);
  }
  for (let at = whole; at < units.length; at += 1) a = Math.imul(a ^ (units[at] as number), FNV_PRIME);
  let sum = 0;
  for (const part of [a, b, c, d]) sum = Math.imul(sum ^ part ^ (part >>> 15), FNV_PRIME);
  return sum >>> 0;
};

/** An index as bytes: a head in JSON, then the arrays as the machine has them. */
export const encodeIndex = (index: ArticleIndex): Uint8Array => {
  const sections = sectionsOf(index);
  const head: Head = {
    cycle: index.cycle,
    title: index.title,
    linksTo: index.linksTo,
    files: index.files,
    sections: sections.map((section) => [kindOf(section), section.length]),
  };
  const headBytes = utf8Bytes(JSON.stringify(head));
  const begin = PREFACE + padded(headBytes.length);
  const size = sections.reduce((sum, section) => sum + padded(section.byteLength), begin);
  const bytes = new Uint8Array(size);
  bytes.set(headBytes, PREFACE);
  let at = begin;
  for (const section of sections) {
    bytes.set(new Uint8Array(section.buffer, section.byteOffset, section.byteLength), at);
    at += padded(section.byteLength);
  }
  new Uint32Array(bytes.buffer, 0, 4).set([
    MAGIC,
    VERSION,
    checksumOf(bytes.subarray(PREFACE), headBytes.length),
    headBytes.length,
  ]);
  return bytes;
};

/** What cannot be had of bytes whose sum is right is our own mistake. */
const asNumbers = (section: Section | undefined): Numbers => {
  if (section === undefined || section instanceof Int32Array) throw new Error('Expected an array of counts');
  return section;
};
const asBytes = (section: Section | undefined): Uint8Array => {
  if (!(section instanceof Uint8Array)) throw new Error('Expected an array of bytes');
  return section;
};
const asHashes = (section: Section | undefined): Int32Array => {
  if (!(section instanceof Int32Array)) throw new Error('Expected an array of hashes');
  return section;
};

/**
 * The index that `encodeIndex` wrote, or undefined where the bytes are damaged, cut off, or of another version. Its
 * arrays are views of the bytes, which must not be changed afterwards; bytes that do not begin at a multiple of four
 * in their buffer are copied once.
 */
export const decodeIndex = (given: Uint8Array): ArticleIndex | undefined => {
  if (given.byteLength < PREFACE || given.byteLength % 4 !== 0) return undefined;
  const bytes = given.byteOffset % 4 === 0 ? given : given.slice();
  const preface = new Uint32Array(bytes.buffer, bytes.byteOffset, 4);
  const headLength = preface[3] ?? 0;
  if (preface[0] !== MAGIC || preface[1] !== VERSION) return undefined;
  if (preface[2] !== checksumOf(bytes.subarray(PREFACE), headLength)) return undefined;
  const head: Head = JSON.parse(utf8Text(bytes.subarray(PREFACE, PREFACE + headLength)));
  let at = bytes.byteOffset + PREFACE + padded(headLength);
  const sections = head.sections.map(([kind, count]): Section => {
    const section = VIEWS[kind](bytes, at, count);
    at += padded(section.byteLength);
    return section;
  });
  const texts = (first: number): Texts => ({
    bytes: asBytes(sections[first]),
    lengths: asNumbers(sections[first + 1]),
  });
  const numbers = (section: number): Numbers => asNumbers(sections[section]);
  return {
    cycle: head.cycle,
    title: head.title,
    linksTo: head.linksTo,
    files: head.files,
    keys: texts(0),
    keyHashes: asHashes(sections[2]),
    forms: texts(3),
    formKeys: numbers(5),
    words: numbers(6),
    marks: asBytes(sections[7]),
    fieldLengths: numbers(8),
    starts: numbers(9),
    origins: numbers(10),
    firstPlaces: numbers(11),
    steps: asBytes(sections[12]),
    compared: numbers(13),
    comparedTexts: texts(14),
    shingleCounts: numbers(16),
    shingles: asHashes(sections[17]),
  };
};
