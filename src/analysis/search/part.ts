/** One part of the index as it is asked: MiniSearch, and the words its stems are of. */
import MiniSearch from 'minisearch';
import { lettersOf } from '../../text/edit-distance.ts';
import { type PackedForm, type PackedIndex, unpackIndex } from './compact.ts';
import { type IndexedDocument, indexOptions } from './options.ts';

/** One file of the index, opened. */
export interface IndexPart {
  readonly index: MiniSearch<IndexedDocument>;
  readonly fields: readonly string[];
  /** Sorted by word. */
  readonly forms: readonly PackedForm[];
  /** The letters of each word of `forms`. */
  readonly letters: Int32Array;
}

/** Opens a published part of the index. */
export const openPart = (packed: PackedIndex): IndexPart => {
  const { index, fields, forms } = unpackIndex(packed);
  return {
    index: MiniSearch.loadJS(index, indexOptions(fields)),
    fields,
    forms,
    letters: Int32Array.from(forms, ({ word }) => lettersOf(word)),
  };
};

/** The first of a part's words that is not before `word`. */
const firstFrom = (forms: readonly PackedForm[], word: string): number => {
  let low = 0;
  let high = forms.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((forms[middle] as PackedForm).word < word) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** A part's words that begin so. */
export const formsBeginning = ({ forms }: IndexPart, beginning: string): readonly PackedForm[] => {
  const from = firstFrom(forms, beginning);
  let to = from;
  while (forms[to]?.word.startsWith(beginning)) to += 1;
  return forms.slice(from, to);
};
