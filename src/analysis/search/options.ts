/** How an index is kept: the same where it is made and where it is asked. */
import type { Options } from 'minisearch';

/** A document as it is indexed: each field's stems, divided by spaces. */
export interface IndexedDocument {
  readonly id: number;
  readonly [field: string]: string | number;
}

/** Fields of the first part: what a thing is called, and what else its record says. */
export const HEAD_FIELDS = ['name', 'about'] as const;
/** The one field of the parts that come after: all of the first part's words and the story's. */
export const TEXT_FIELDS = ['text'] as const;

/**
 * A document is scored as one text, as BM25 by the book has it; what stands in its name or its record counts once
 * more, by this share. A field scored for itself would count more than it says: a word is rare in names.
 */
export const HEAD_SHARE = 0.5;

/**
 * BM25 as Robertson & Zaragoza have it (2009, "The Probabilistic Relevance Framework: BM25 and Beyond", 3.2): k1
 * 1.2, b 0.75, and no delta, which is BM25+'s (Lv & Zhai 2011).
 */
export const BM25 = { k: 1.2, b: 0.75, d: 0 } as const;

/** Terms are stems already; the library only counts them. */
export const indexOptions = (fields: readonly string[]): Options<IndexedDocument> => ({
  fields: [...fields],
  tokenize: (text) => text.split(' '),
  processTerm: (term) => term,
  searchOptions: { bm25: BM25, prefix: false, fuzzy: false },
});
