/** Documents → one part of the index, ready to be published. */
import MiniSearch from 'minisearch';
import type { Language } from '../language/language.ts';
import { type PackedForm, type PackedIndex, packIndex } from './compact.ts';
import { type IndexedDocument, indexOptions } from './options.ts';
import { searchedWords } from './text.ts';

/** A document's texts by field. */
export type FieldTexts = Readonly<Record<string, string>>;

/** The index of `documents`, numbered from `first` in their order. The same documents give the same bytes. */
export const buildIndex = (
  documents: readonly FieldTexts[],
  fields: readonly string[],
  language: Language,
  first = 0,
): PackedIndex => {
  const index = new MiniSearch<IndexedDocument>(indexOptions(fields));
  const forms = new Map<string, PackedForm>();
  documents.forEach((texts, i) => {
    const stems = fields.map((field): [string, string] => {
      const words = searchedWords(texts[field] ?? '', language);
      for (const { folded, stem } of words) forms.set(folded, { word: folded, stem });
      return [field, words.map(({ stem }) => stem).join(' ')];
    });
    index.add({ ...Object.fromEntries(stems.filter(([, text]) => text !== '')), id: first + i });
  });
  return packIndex(index.toJSON(), [...forms.values()], first);
};
