/** One part of the index as it is asked: what it was unpacked to, and what is counted of it once. */
import { lettersOf } from '../../text/edit-distance.ts';
import { type PackedForm, type PackedIndex, type UnpackedIndex, unpackIndex } from './compact.ts';

/** One file of the index, opened. */
export interface IndexPart extends UnpackedIndex {
  /** The letters of each word of `forms`. */
  readonly letters: Int32Array;
  /** By field: the words that each document has in it. */
  readonly lengths: readonly Int32Array[];
}

const lengthsOf = ({ fields, count, postings }: UnpackedIndex): readonly Int32Array[] => {
  const lengths = fields.map(() => new Int32Array(count));
  for (const ofStem of postings.values())
    ofStem.forEach(({ documents, times }, field) => {
      const ofField = lengths[field] as Int32Array;
      for (let i = 0; i < documents.length; i += 1)
        ofField[documents[i] as number] = (ofField[documents[i] as number] as number) + (times[i] as number);
    });
  return lengths;
};

/** Opens a published part of the index. */
export const openPart = (packed: PackedIndex): IndexPart => {
  const unpacked = unpackIndex(packed);
  return {
    ...unpacked,
    letters: Int32Array.from(unpacked.forms, ({ word }) => lettersOf(word)),
    lengths: lengthsOf(unpacked),
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
