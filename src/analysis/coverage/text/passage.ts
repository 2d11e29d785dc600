/** The finished page's text in the order it is read, each word with its place and where the author wrote it. */
import type { Location } from '../../../diagnostics/diagnostic.ts';
import type { Span } from '../../../text/sentences.ts';
import type { Word } from '../../language/language.ts';
import type { Zone } from './zones.ts';

/** A word of a passage. */
export interface ZonedWord extends Word {
  /** Its place as its own item sees it: `section` in any item's section; for another item that is `body`. */
  readonly zone: Zone;
  /** Which sentence of its passage it is in, from 0. */
  readonly sentence: number;
  /** Line and column of `Passage.file`, from 1; columns in UTF-16 units. */
  readonly line: number;
  readonly column: number;
}

/** How a passage is set: what a reader of the proof sees it as. */
export type PassageForm =
  | 'title'
  | 'heading'
  | 'paragraph'
  | 'caption'
  | 'picture'
  | 'fact'
  | 'link'
  | 'data'
  | 'address';

/** A run of text that is read without a break: a paragraph, a heading, a caption, a value of a record. */
export interface Passage {
  readonly form: PassageForm;
  readonly text: string;
  readonly words: readonly ZonedWord[];
  /** Slug of the item in whose section it stands. */
  readonly item?: string;
  /** The file it was written in, as the records name it. */
  readonly file: string;
  /** The key of the record that it is the value of (`summary`, `image.0.alt`); absent for a story's own text. */
  readonly field?: string;
  /** Whether the author may change the words here, to tell better: false for facts, and for what was made from them. */
  readonly written: boolean;
  /** Running text: the first words of it on the page are the opening. */
  readonly running?: boolean;
  /** Spans of `text` that are links. */
  readonly links?: readonly Span[];
}

/** The place of a word as one item sees it: its own section is that even where the article opens with it. */
export const zoneFor = ({ zone }: ZonedWord, passage: Passage, item: string): Zone =>
  zone === 'section' && passage.item !== item
    ? 'body'
    : zone === 'opening' && passage.item === item
      ? 'section'
      : zone;

/** Where the author finds a word. */
export const whereIs = (passage: Passage, word: ZonedWord): Location => ({
  file: passage.file,
  line: word.line,
  column: word.column,
});
