/**
 * BM25F: which of our pages answers some words first.
 *
 * Robertson and Zaragoza (2009), "The Probabilistic Relevance Framework: BM25 and Beyond", the section on BM25F:
 * a term's frequency in each field is divided by the field's length norm and weighted, the sum is saturated once,
 * and the result is weighted by how rare the term is. With one field of weight 1 it is BM25.
 */

/** A document as its terms by field, in any order within a field. */
export interface FieldedDocument<Field extends string> {
  readonly id: string;
  readonly fields: Readonly<Record<Field, readonly string[]>>;
}

export interface FieldParameters {
  /** What one occurrence here counts, more than 0. */
  readonly weight: number;
  /** How far a longer field is held against it, 0 (not at all) to 1 (in proportion). */
  readonly b: number;
}

export interface RankParameters<Field extends string> {
  /** How slowly more occurrences cease to count, more than 0. */
  readonly k1: number;
  readonly fields: Readonly<Record<Field, FieldParameters>>;
}

export interface Ranked {
  readonly id: string;
  readonly score: number;
}

/** What one term in one field gives to a document's score. */
export interface Contribution<Field extends string> {
  readonly term: string;
  readonly field: Field;
  readonly occurrences: number;
  readonly gives: number;
}

export interface Ranker<Field extends string> {
  /** Number of documents. */
  readonly size: number;
  /** Documents that hold the term, in any field. */
  readonly holders: (term: string) => number;
  /** Documents that hold any of the terms, the best first; equal scores in the order of their ids. */
  readonly rank: (terms: readonly string[]) => readonly Ranked[];
  /** The parts of a document's score: they add up to it. A term that it does not hold has no part. */
  readonly explain: (terms: readonly string[], id: string) => readonly Contribution<Field>[];
}

/**
 * The weight of Robertson and Spärck Jones without known relevance, ln((N - n + 0.5) / (n + 0.5)), with 1 added
 * before the logarithm so that it is positive for every term. Theirs turns negative for a term in more than half
 * of the documents: in a box of twelve articles, saying a common word once more would then sink a page.
 */
export const rarity = (documents: number, holders: number): number =>
  Math.log(1 + (documents - holders + 0.5) / (holders + 0.5));

/** Three numbers an entry: document, field, occurrences. Flat, since a box has more entries than anything else. */
type Postings = number[];
const ENTRY = 3;

interface WeightedField {
  readonly number: number;
  readonly field: number;
  readonly occurrences: number;
  readonly weighted: number;
}

const distinct = (terms: readonly string[]): readonly string[] => [...new Set(terms)];

/**
 * A ranker over some documents, read once and not held: building is linear in their text, a query walks only the
 * entries of its terms. A term counts once however often the query has it. The mean length of a field is taken
 * over the documents that have it, for a page without pictures is not one with very short picture text.
 */
export const rankerOf = <Field extends string>(
  documents: Iterable<FieldedDocument<Field>>,
  { k1, fields: parameters }: RankParameters<Field>,
): Ranker<Field> => {
  const fields = Object.keys(parameters) as Field[];
  const ids: string[] = [];
  const numbers = new Map<string, number>();
  const postings = new Map<string, Postings>();
  const lengths: number[][] = [];

  for (const { id, fields: texts } of documents) {
    if (numbers.has(id)) throw new Error(`Expected one document a name, received \`${id}\` twice`);
    const number = ids.push(id) - 1;
    numbers.set(id, number);
    lengths.push(fields.map((field) => texts[field].length));
    for (const [field, name] of fields.entries()) {
      const counts = new Map<string, number>();
      for (const term of texts[name]) counts.set(term, (counts.get(term) ?? 0) + 1);
      for (const [term, count] of counts) {
        const entries = postings.get(term);
        if (entries) entries.push(number, field, count);
        else postings.set(term, [number, field, count]);
      }
    }
  }

  const meanLengths = fields.map((_, field) => {
    const lengthsHere = lengths.map((row) => row[field] as number).filter((length) => length > 0);
    return lengthsHere.reduce((sum, length) => sum + length, 0) / Math.max(1, lengthsHere.length);
  });
  const norm = (number: number, field: number): number => {
    const { b } = parameters[fields[field] as Field];
    return 1 - b + (b * (lengths[number]?.[field] as number)) / (meanLengths[field] as number);
  };

  /** What each field of each holder has of a term, its frequency weighted and measured by the field's length. */
  const partsOf = (term: string): readonly WeightedField[] => {
    const entries = postings.get(term) ?? [];
    const parts: WeightedField[] = [];
    for (let at = 0; at < entries.length; at += ENTRY) {
      const number = entries[at] as number;
      const field = entries[at + 1] as number;
      const occurrences = entries[at + 2] as number;
      const { weight } = parameters[fields[field] as Field];
      parts.push({ number, field, occurrences, weighted: (weight * occurrences) / norm(number, field) });
    }
    return parts;
  };
  /** Each holder's frequency over all its fields. */
  const frequenciesOf = (parts: readonly WeightedField[]): ReadonlyMap<number, number> => {
    const sums = new Map<number, number>();
    for (const { number, weighted } of parts) sums.set(number, (sums.get(number) ?? 0) + weighted);
    return sums;
  };

  const rank = (terms: readonly string[]): readonly Ranked[] => {
    const scores = new Map<number, number>();
    for (const term of distinct(terms)) {
      const frequencies = frequenciesOf(partsOf(term));
      const weight = rarity(ids.length, frequencies.size);
      for (const [number, frequency] of frequencies) {
        scores.set(number, (scores.get(number) ?? 0) + (weight * frequency) / (k1 + frequency));
      }
    }
    return [...scores]
      .map(([number, score]) => ({ id: ids[number] as string, score }))
      .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
  };

  const explain = (terms: readonly string[], id: string): readonly Contribution<Field>[] =>
    distinct(terms).flatMap((term) => {
      const parts = partsOf(term);
      const own = parts.filter(({ number }) => number === numbers.get(id));
      const frequency = own.reduce((sum, { weighted }) => sum + weighted, 0);
      const each = rarity(ids.length, holders(term)) / (k1 + frequency);
      return own.map(({ field, occurrences, weighted }) => ({
        term,
        field: fields[field] as Field,
        occurrences,
        gives: each * weighted,
      }));
    });

  /** A document's entries for a term stand together. */
  const holders = (term: string): number => {
    const entries = postings.get(term) ?? [];
    let count = 0;
    for (let at = 0; at < entries.length; at += ENTRY) {
      if (at === 0 || entries[at] !== entries[at - ENTRY]) count += 1;
    }
    return count;
  };

  return { size: ids.length, holders, rank, explain };
};
