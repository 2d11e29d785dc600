/**
 * An index in few bytes: the vocabulary is front-coded, a stem is what to take from its word, postings are gaps,
 * and the lengths of fields, which follow from the rest, are left out.
 */

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

/** Who has a stem in one field: documents by their place in the part, rising, and how often each has it. */
export interface Postings {
  readonly documents: readonly number[];
  readonly times: readonly number[];
}

/** One part of the index in memory. */
export interface UnpackedIndex {
  /** The number of its first document, and how many it has. */
  readonly first: number;
  readonly count: number;
  readonly fields: readonly string[];
  /** Sorted by code unit. */
  readonly forms: readonly PackedForm[];
  /** By stem: who has it in each of the fields. */
  readonly postings: ReadonlyMap<string, readonly Postings[]>;
}

/** Documents that a part may have: far more than are ever in one, so that harmed bytes ask for no memory. */
const MOST_DOCUMENTS = 1_000_000;

/** A file of the index that was cut short on its way, or that another program wrote. */
const harmed = (expected: string): Error => new Error(`Unexpected index, expected ${expected}`);

/** Who has a stem that nobody has. */
const NOBODY: Postings = { documents: [], times: [] };

const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
/** Five bits a sign; the sixth says that more follow (after the VLQ of source maps, without the sign bit). */
const BITS = 5;
const MORE = 1 << BITS;
const NOUGHT = DIGITS.charCodeAt(0);
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

/** Signs of the largest number that is written: five times five bits and what is left of a signed word. */
const MOST_SIGNS = 6;

/** Reads one number after the other. Throws at what is no number, and where the text is over. */
const numberReader = (text: string): (() => number) => {
  let at = 0;
  return () => {
    let value = 0;
    for (let signs = 0; signs < MOST_SIGNS; signs += 1) {
      const code = text.charCodeAt(at);
      const sign = VALUE_OF[code];
      if (sign === undefined || (sign === 0 && code !== NOUGHT)) break;
      at += 1;
      value += (sign & (MORE - 1)) << (signs * BITS);
      if (sign < MORE) return value;
    }
    throw harmed(`a number at ${at}`);
  };
};

const sharedLetters = (a: string, b: string): number => {
  let shared = 0;
  while (shared < a.length && shared < b.length && a[shared] === b[shared]) shared += 1;
  return shared;
};

/** Most letters that one sign of base 36 can count. */
const MOST_SHARED = 35;

/** A word may have a space in it: one sign that folds to a whole blessing, or an accent that stands by itself. */
const packWords = (words: readonly string[]): string =>
  words
    .map((word, i) => {
      const shared = Math.min(MOST_SHARED, sharedLetters(words[i - 1] ?? '', word));
      return shared.toString(36) + word.slice(shared).replace(/[ %]/g, encodeURIComponent);
    })
    .join(' ');

const unpackWords = (text: string): readonly string[] => {
  let last = '';
  return text === ''
    ? []
    : text.split(' ').map((entry) => {
        const rest = entry.slice(1).replace(/%2([05])/g, (_, digit) => (digit === '0' ? ' ' : '%'));
        last = last.slice(0, Number.parseInt(entry.charAt(0), 36)) + rest;
        return last;
      });
};

const wayTo = ({ word, stem }: PackedForm): string => {
  const shared = sharedLetters(word, stem);
  return `${word.length - shared},${stem.slice(shared)}`;
};

/** Packs a part of the index. Its forms must hold a word of every stem; their order is of no account. */
export const packIndex = ({ first, count, fields, forms, postings }: UnpackedIndex): PackedIndex => {
  const sorted = [...forms].sort((a, b) => (a.word < b.word ? -1 : 1));
  const ways = sorted.map(wayTo);
  const counts = new Map<string, number>();
  for (const way of ways) counts.set(way, (counts.get(way) ?? 0) + 1);
  const r = [...counts].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1)).map(([way]) => way);
  const numbers = new Map(r.map((way, i) => [way, i]));
  const packed = ({ documents, times }: Postings): string => {
    const each = documents.map((document, i) => {
      const gap = document - (documents[i - 1] ?? -1) - 1;
      const often = times[i] as number;
      return often > 1 ? numberText(gap * 2 + 1) + numberText(often) : numberText(gap * 2);
    });
    return numberText(documents.length) + each.join('');
  };
  const p = [...new Set(sorted.map(({ stem }) => stem))].map((stem) => {
    const ofStem = postings.get(stem) ?? [];
    return fields.map((_, field) => packed(ofStem[field] ?? NOBODY)).join('');
  });
  return {
    d: [first, count],
    f: fields,
    w: packWords(sorted.map(({ word }) => word)),
    r,
    s: ways.map((way) => numberText(numbers.get(way) as number)).join(''),
    p: p.join(''),
  };
};

/** The part as it was before it was packed. Throws at what no packing gives, and comes to an end with any text. */
export const unpackIndex = ({ d: [first, count], f, w, r, s, p }: PackedIndex): UnpackedIndex => {
  if (!(count >= 0 && count <= MOST_DOCUMENTS)) throw harmed('a number of documents');
  const ways = r.map((way) => {
    const comma = way.indexOf(',');
    return { less: Number(way.slice(0, comma)), more: way.slice(comma + 1) };
  });
  const nextWay = numberReader(s);
  const forms = unpackWords(w).map((word) => {
    const way = ways[nextWay()];
    if (!way) throw harmed(`a way from "${word}" to its stem`);
    const { less, more } = way;
    return { word, stem: less === 0 && more === '' ? word : word.slice(0, word.length - less) + more };
  });
  const next = numberReader(p);
  const nextPostings = (): Postings => {
    const having = next();
    if (having === 0) return NOBODY;
    const documents: number[] = [];
    const times: number[] = [];
    for (let i = 0, document = -1; i < having; i += 1) {
      const step = next();
      document += (step >>> 1) + 1;
      if (document >= count) throw harmed(`a document before ${count}`);
      documents.push(document);
      times.push(step & 1 ? next() : 1);
    }
    return { documents, times };
  };
  const postings = new Map<string, readonly Postings[]>();
  for (const { stem } of forms) if (!postings.has(stem)) postings.set(stem, f.map(nextPostings));
  return { first, count, fields: f, forms, postings };
};
