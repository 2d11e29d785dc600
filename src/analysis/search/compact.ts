/**
 * An index in few bytes. MiniSearch's own JSON repeats every document's number, and the field lengths, which
 * follow from the rest. Here the vocabulary is front-coded, a stem is what to take from its word, and postings
 * are gaps: a third of the bytes, and the same postings when it is unpacked (a test says so).
 */
import type { AsPlainObject } from 'minisearch';

/** A word of the texts as it is folded, and its stem. */
export interface PackedForm {
  readonly word: string;
  readonly stem: string;
}

/** What is published of one part of the index; every field is text of plain signs. */
export interface PackedIndex {
  /** Numbers of its documents: the first, and how many. */
  readonly d: readonly [number, number];
  /** Fields. */
  readonly f: readonly string[];
  /** Words, sorted: how many letters are the last word's, in base 36, and the rest; divided by spaces. */
  readonly w: string;
  /** Ways from a word to its stem: how many letters fall off, and what comes instead. */
  readonly r: readonly string[];
  /** The way of each word. */
  readonly s: string;
  /**
   * For each stem (in the order in which words first lead to it) and each field: the number of documents, then for each
   * document how far its number is from the one before, and how often the stem occurs in it.
   */
  readonly p: string;
}

/** An index as the search library takes it, with its words. */
interface UnpackedIndex {
  readonly index: AsPlainObject;
  readonly fields: readonly string[];
  /** Sorted by code unit. */
  readonly forms: readonly PackedForm[];
}

const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
/** Five bits a sign; the sixth says that more follow (after the VLQ of source maps, without the sign bit). */
const BITS = 5;
const MORE = 1 << BITS;
const VALUE_OF = new Uint8Array(128);
for (let i = 0; i < DIGITS.length; i += 1) VALUE_OF[DIGITS.charCodeAt(i)] = i;

const numberText = (value: number): string => {
  let rest = value;
  let text = '';
  do {
    const low = rest & (MORE - 1);
    rest >>>= BITS;
    text += DIGITS[rest > 0 ? low | MORE : low];
  } while (rest > 0);
  return text;
};

const numberReader = (text: string): (() => number) => {
  let at = 0;
  return () => {
    let value = 0;
    for (let shift = 0; ; shift += BITS) {
      const sign = VALUE_OF[text.charCodeAt(at)] as number;
      at += 1;
      value += (sign & (MORE - 1)) << shift;
      if (sign < MORE) return value;
    }
  };
};

const sharedLetters = (a: string, b: string): number => {
  let shared = 0;
  while (shared < a.length && shared < b.length && a[shared] === b[shared]) shared += 1;
  return shared;
};

/** Most letters that one sign of base 36 can count. */
const MOST_SHARED = 35;

const packWords = (words: readonly string[]): string =>
  words
    .map((word, i) => {
      const shared = Math.min(MOST_SHARED, sharedLetters(words[i - 1] ?? '', word));
      return shared.toString(36) + word.slice(shared);
    })
    .join(' ');

const unpackWords = (text: string): readonly string[] => {
  let last = '';
  return text === ''
    ? []
    : text.split(' ').map((entry) => {
        last = last.slice(0, Number.parseInt(entry.charAt(0), 36)) + entry.slice(1);
        return last;
      });
};

const wayTo = ({ word, stem }: PackedForm): string => {
  const shared = sharedLetters(word, stem);
  return `${word.length - shared},${stem.slice(shared)}`;
};

/**
 * Packs an index whose documents are numbered `first`, `first + 1` and so on, in that order. `forms` must hold a
 * word of every term.
 */
export const packIndex = (
  index: Pick<AsPlainObject, 'documentCount' | 'fieldIds' | 'index'>,
  forms: readonly PackedForm[],
  first: number,
): PackedIndex => {
  const sorted = [...forms].sort((a, b) => (a.word < b.word ? -1 : 1));
  const ways = sorted.map(wayTo);
  const counts = new Map<string, number>();
  for (const way of ways) counts.set(way, (counts.get(way) ?? 0) + 1);
  const r = [...counts].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1)).map(([way]) => way);
  const numbers = new Map(r.map((way, i) => [way, i]));
  const f = Object.keys(index.fieldIds);
  const postingsOf = new Map(index.index);
  const p = [...new Set(sorted.map(({ stem }) => stem))].map((stem) =>
    f
      .map((field) => {
        const postings = Object.entries(postingsOf.get(stem)?.[String(index.fieldIds[field])] ?? {})
          .map(([id, count]) => ({ id: Number(id), count }))
          .sort((a, b) => a.id - b.id);
        const each = postings.map(({ id, count }, i) => {
          const gap = id - (postings[i - 1]?.id ?? -1) - 1;
          return count > 1 ? numberText(gap * 2 + 1) + numberText(count) : numberText(gap * 2);
        });
        return numberText(postings.length) + each.join('');
      })
      .join(''),
  );
  return {
    d: [first, index.documentCount],
    f,
    w: packWords(sorted.map(({ word }) => word)),
    r,
    s: ways.map((way) => numberText(numbers.get(way) as number)).join(''),
    p: p.join(''),
  };
};

/** The index as MiniSearch's `loadJS` takes it. */
export const unpackIndex = ({ d: [first, count], f, w, r, s, p }: PackedIndex): UnpackedIndex => {
  const ways = r.map((way) => {
    const comma = way.indexOf(',');
    return { less: Number(way.slice(0, comma)), more: way.slice(comma + 1) };
  });
  const nextWay = numberReader(s);
  const forms = unpackWords(w).map((word) => {
    const { less, more } = ways[nextWay()] as { less: number; more: string };
    return { word, stem: less === 0 && more === '' ? word : word.slice(0, word.length - less) + more };
  });
  const next = numberReader(p);
  const lengths = Array.from({ length: count }, () => f.map(() => 0));
  const index = [...new Set(forms.map(({ stem }) => stem))].map((stem) => {
    const data: Record<string, Record<string, number>> = {};
    for (let field = 0; field < f.length; field += 1) {
      const documents = next();
      if (documents === 0) continue;
      const postings: Record<string, number> = {};
      let id = -1;
      for (let i = 0; i < documents; i += 1) {
        const step = next();
        id += (step >>> 1) + 1;
        const times = step & 1 ? next() : 1;
        postings[id] = times;
        // MiniSearch counts a field's length in unique words, BM25 in words: with these its scores are BM25's.
        (lengths[id] as number[])[field] = ((lengths[id] as number[])[field] as number) + times;
      }
      data[field] = postings;
    }
    return [stem, data] as [string, typeof data];
  });
  const numbered = <T>(of: (id: number) => T): Record<string, T> =>
    Object.fromEntries(Array.from({ length: count }, (_, id) => [id, of(id)]));
  return {
    fields: f,
    forms,
    index: {
      documentCount: count,
      nextId: count,
      documentIds: numbered((id) => first + id),
      fieldIds: Object.fromEntries(f.map((field, i) => [field, i])),
      fieldLength: numbered((id) => lengths[id] as number[]) as never,
      averageFieldLength: f.map(
        (_, i) => lengths.reduce((sum, each) => sum + (each[i] as number), 0) / Math.max(1, count),
      ),
      storedFields: {},
      dirtCount: 0,
      index,
      serializationVersion: 2,
    },
  };
};
