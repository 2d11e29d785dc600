/** Texts indexed as the site does it: packed, written as JSON, read and opened. */
import type { Language } from '../../src/analysis/language/language.ts';
import type { FieldTexts } from '../../src/analysis/search/build-index.ts';
import { openPart } from '../../src/analysis/search/part.ts';
import { type WholeIndex, wholeIndex } from '../../src/analysis/search/whole-index.ts';
import { buildIndex } from './build-index.ts';

/** The index of `documents`, cut into parts at `ends`; in one part without them. */
export const indexInParts = (
  documents: readonly FieldTexts[],
  fields: readonly string[],
  language: Language,
  ends: readonly number[] = [documents.length],
): WholeIndex =>
  wholeIndex(
    ends.map((to, i) => {
      const from = ends[i - 1] ?? 0;
      const packed = buildIndex(documents.slice(from, to), fields, language, from);
      return openPart(JSON.parse(JSON.stringify(packed)));
    }),
  );
