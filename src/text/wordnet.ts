/** What may be asked of WordNet 3.1 (Princeton), the dictionary. The edge reads its files (wndb(5WN)) and answers. */

/** A part of speech, as WordNet's files are called. */
export type WordNetPart = 'noun' | 'adj' | 'verb' | 'adv';

/** One meaning, with all words that have it. */
export interface Synset {
  /** Which of the lexicographers' files it stands in (lexnames(5WN)). */
  readonly lexFile: number;
  /** As English writes them, capitals too, with `_` for a space. */
  readonly synonyms: readonly string[];
  /** What it means, with examples behind. */
  readonly gloss: string;
  /** Offsets of a noun's broader meanings, of an instance the classes it is one of, and of its narrower ones. */
  readonly broader: readonly number[];
  readonly narrower: readonly number[];
}

/** WordNet, opened. Nothing of it is read before it is asked for. */
export interface WordNet {
  /** The senses of a lemma (small letters, `_` for a space), the commonest first, as offsets; none where it is not there. */
  readonly senses: (lemma: string, part: WordNetPart) => readonly number[];
  /** The meaning at an offset that `senses` or another meaning gave. */
  readonly at: (offset: number, part: WordNetPart) => Synset;
}
