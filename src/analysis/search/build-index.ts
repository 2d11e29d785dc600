/** Documents → one part of the index, ready to be published: each document's words are counted by themselves first. */
import type { Language } from '../language/language.ts';
import { type PackedForm, type PackedIndex, packIndex } from './compact.ts';
import { searchedWords } from './text.ts';

/** A document's texts by field. */
export type FieldTexts = Readonly<Record<string, string>>;

/** What an index needs of a document: plain data, which may be kept as JSON and outlives the other documents. */
export interface CountedDocument {
  /** Its words as they are folded, each with its stem. */
  readonly forms: readonly (readonly [word: string, stem: string])[];
  /** By field: its stems and how often each is there. */
  readonly counts: Readonly<Record<string, readonly (readonly [stem: string, count: number])[]>>;
}

/** A document's words, counted in each of `fields`. Cutting and stemming is what making an index costs. */
export const countedDocument = (
  texts: FieldTexts,
  fields: readonly string[],
  language: Language,
): CountedDocument => {
  const forms = new Map<string, string>();
  const countsOf = (field: string): readonly (readonly [string, number])[] => {
    const counts = new Map<string, number>();
    for (const { folded, stem } of searchedWords(texts[field] ?? '', language)) {
      forms.set(folded, stem);
      counts.set(stem, (counts.get(stem) ?? 0) + 1);
    }
    return [...counts];
  };
  const counts = Object.fromEntries(fields.map((field) => [field, countsOf(field)]));
  return { forms: [...forms], counts };
};

/** The index of counted documents, numbered from `first` in their order. The same documents give the same bytes. */
export const indexOf = (
  documents: readonly CountedDocument[],
  fields: readonly string[],
  first = 0,
): PackedIndex => {
  const forms = new Map<string, PackedForm>();
  const postings = new Map<string, readonly { documents: number[]; times: number[] }[]>();
  documents.forEach((document, number) => {
    for (const [word, stem] of document.forms) forms.set(word, { word, stem });
    fields.forEach((field, i) => {
      for (const [stem, count] of document.counts[field] ?? []) {
        const ofStem = postings.get(stem) ?? fields.map(() => ({ documents: [], times: [] }));
        postings.set(stem, ofStem);
        ofStem[i]?.documents.push(number);
        ofStem[i]?.times.push(count);
      }
    });
  });
  return packIndex({ first, count: documents.length, fields, forms: [...forms.values()], postings });
};
