/**
 * Parts of one index, asked as one. What BM25 has to know of the whole are sums: documents, those of them that have a
 * stem, words. Each part knows its own share of them, so nothing of the whole is published: a part is made of its own
 * items alone, and stays as it is when others change.
 */
import { shareOf, worthOf } from './bm25.ts';
import { formsBeginning, type IndexPart } from './part.ts';

/** Parts with the same fields, each with other documents. */
export interface WholeIndex {
  readonly parts: readonly IndexPart[];
  readonly fields: readonly string[];
  readonly documents: number;
  /** By field: the words of a document, on average. */
  readonly averageLengths: readonly number[];
}

/** The index that the parts are of, as far as they have come. */
export const wholeIndex = (parts: readonly IndexPart[]): WholeIndex => {
  const fields = parts[0]?.fields ?? [];
  for (const part of parts)
    if (part.fields.join() !== fields.join())
      throw new Error(`Expected a part with the fields ${fields.join()}, got ${part.fields.join()}`);
  const documents = parts.reduce((sum, { count }) => sum + count, 0);
  const averageLengths = fields.map((_, field) => {
    const words = parts.reduce(
      (sum, { lengths }) => (lengths[field] as Int32Array).reduce((all, length) => all + length, sum),
      0,
    );
    return words / Math.max(1, documents);
  });
  return { parts, fields, documents, averageLengths };
};

/** Calls `give` with the score of each document that has the stem in one of `fields`, once for each of these. */
export const scoreStem = (
  { parts, fields: all, documents: total, averageLengths }: WholeIndex,
  stem: string,
  fields: readonly string[],
  give: (id: number, score: number, field: string) => void,
): void => {
  all.forEach((field, at) => {
    if (!fields.includes(field)) return;
    const having = parts.reduce(
      (sum, { postings }) => sum + (postings.get(stem)?.[at]?.documents.length ?? 0),
      0,
    );
    const worth = worthOf(having, total);
    const average = averageLengths[at] as number;
    for (const { first, postings, lengths } of parts) {
      const held = postings.get(stem)?.[at];
      const lengthOf = lengths[at] as Int32Array;
      held?.documents.forEach((document, i) => {
        const share = shareOf(held.times[i] as number, lengthOf[document] as number, average);
        give(first + document, worth * share, field);
      });
    }
  });
};

/** Stems of the words that begin so, the shortest first. */
export const stemsBeginning = ({ parts }: WholeIndex, beginning: string): readonly string[] => {
  const stems = new Set(parts.flatMap((part) => formsBeginning(part, beginning).map(({ stem }) => stem)));
  // Among stems of one length the alphabet decides, so that it is not seen how the index is cut.
  return [...stems].sort((a, b) => a.length - b.length || (a < b ? -1 : 1));
};
