import type { Language } from '../../src/analysis/language/language.ts';
import { countedDocument, type FieldTexts, indexOf } from '../../src/analysis/search/build-index.ts';
import type { PackedIndex } from '../../src/analysis/search/compact.ts';

/** The index of `documents`, numbered from `first` in their order. The same documents give the same bytes. */
export const buildIndex = (
  documents: readonly FieldTexts[],
  fields: readonly string[],
  language: Language,
  first = 0,
): PackedIndex =>
  indexOf(
    documents.map((texts) => countedDocument(texts, fields, language)),
    fields,
    first,
  );
