/**
 * BM25F: which of our pages answers some words first.
 *
 * Robertson and Zaragoza (2009), "The Probabilistic Relevance Framework: BM25 and Beyond", the section on BM25F:
 * a term's frequency in each field is divided by the field's length norm and weighted, the sum is saturated once,
 * and the result is weighted by how rare the term is. With one field of weight 1 it is BM25.
 */

interface FieldParameters {
  /** What one occurrence here counts, more than 0. */
  readonly weight: number;
  /** How far a longer field is held against it, 0 (not at all) to 1 (in proportion). */
  readonly b: number;
}

/** How documents are ranked. */
export interface RankParameters<Field extends string> {
  /** How slowly more occurrences cease to count, more than 0. */
  readonly k1: number;
  readonly fields: Readonly<Record<Field, FieldParameters>>;
}

/** Documents to rank, by their numbers from 0; terms are numbers too. Fields are in the order of the parameters. */
export interface Collection {
  /** Words of each field, for each document. */
  readonly lengths: readonly ArrayLike<number>[];
  /** Documents that hold a term in any field, in ascending order. */
  readonly holders: (term: number) => ArrayLike<number>;
  /** How often a document has a term in each field. */
  readonly occurrences: (term: number, document: number) => readonly number[];
}

/** What one term in one field gives to a document's score. */
export interface Contribution<Field extends string> {
  readonly term: number;
  readonly field: Field;
  readonly occurrences: number;
  readonly gives: number;
}

/** Ranks the documents of a collection. */
export interface Scorer<Field extends string> {
  /** Number of documents. */
  readonly size: number;
  /** Words that a field has in the mean, in the order of the parameters. */
  readonly meanLengths: readonly number[];
  /** Documents that hold the term, in any field. */
  readonly holders: (term: number) => number;
  /** A document's score for some terms; 0 where it holds none. */
  readonly score: (terms: readonly number[], document: number) => number;
  /** The parts of a document's score: they add up to it. A term that it does not hold has no part. */
  readonly explain: (terms: readonly number[], document: number) => readonly Contribution<Field>[];
}

/**
 * The weight of Robertson and Spärck Jones without known relevance, ln((N - n + 0.5) / (n + 0.5)), with 1 added
 * before the logarithm so that it is positive for every term. Theirs turns negative for a term in more than half
 * of the documents: in a box of twelve articles, saying a common word once more would then sink a page.
 */
export const rarity = (documents: number, holders: number): number =>
  Math.log(1 + (documents - holders + 0.5) / (holders + 0.5));

interface WeightedField<Field> {
  readonly field: Field;
  readonly occurrences: number;
  readonly weighted: number;
}

/** Index of a number in ascending numbers, or -1. */
const indexIn = (ascending: ArrayLike<number>, wanted: number): number => {
  let [low, high] = [0, ascending.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = ascending[middle] as number;
    if (found === wanted) return middle;
    if (found < wanted) low = middle + 1;
    else high = middle - 1;
  }
  return -1;
};

/**
 * A scorer over some documents. A term counts once however often the query has it. The mean length of a field is
 * taken over the documents that have it, because a page without pictures is not one with very short picture text;
 * `roundMean` may round it. What a term counts in a document is kept, since many queries ask for the same few.
 */
export const scorerOf = <Field extends string>(
  { lengths, holders, occurrences }: Collection,
  { k1, fields: parameters }: RankParameters<Field>,
  roundMean = (mean: number): number => mean,
): Scorer<Field> => {
  const fields = Object.keys(parameters) as Field[];
  const size = lengths.length;
  const meanLengths = fields.map((_, field) => {
    let [sum, count] = [0, 0];
    for (const row of lengths) {
      const length = row[field] as number;
      sum += length;
      if (length > 0) count += 1;
    }
    return roundMean(sum / Math.max(1, count));
  });
  const norm = (document: number, field: number): number => {
    const { b } = parameters[fields[field] as Field];
    return 1 - b + (b * (lengths[document]?.[field] as number)) / (meanLengths[field] as number);
  };

  /** What each field of a document has of a term, its frequency weighted and measured by the field's length. */
  const partsOf = (term: number, document: number): readonly WeightedField<Field>[] =>
    occurrences(term, document).flatMap((count, number) => {
      if (count === 0) return [];
      const field = fields[number] as Field;
      const { weight } = parameters[field];
      return { field, occurrences: count, weighted: (weight * count) / norm(document, number) };
    });
  const frequencyOf = (parts: readonly WeightedField<Field>[]): number =>
    parts.reduce((sum, { weighted }) => sum + weighted, 0);

  /** Frequencies by term, one for each of its holders; less than 0 where it was not asked for yet. */
  const kept = new Map<number, Float64Array>();
  const frequency = (term: number, document: number): number => {
    const documents = holders(term);
    const at = indexIn(documents, document);
    if (at < 0) return 0;
    let known = kept.get(term);
    if (!known) {
      known = new Float64Array(documents.length).fill(-1);
      kept.set(term, known);
    }
    const before = known[at] as number;
    if (before >= 0) return before;
    const found = frequencyOf(partsOf(term, document));
    known[at] = found;
    return found;
  };

  const score = (terms: readonly number[], document: number): number => {
    let sum = 0;
    for (const [at, term] of terms.entries()) {
      if (terms.indexOf(term) < at) continue;
      const found = frequency(term, document);
      if (found > 0) sum += (rarity(size, holders(term).length) * found) / (k1 + found);
    }
    return sum;
  };

  const explain = (terms: readonly number[], document: number): readonly Contribution<Field>[] =>
    [...new Set(terms)].flatMap((term) => {
      const parts = partsOf(term, document);
      const each = rarity(size, holders(term).length) / (k1 + frequencyOf(parts));
      return parts.map(({ field, occurrences: count, weighted }) => ({
        term,
        field,
        occurrences: count,
        gives: each * weighted,
      }));
    });

  return { size, meanLengths, holders: (term) => holders(term).length, score, explain };
};
