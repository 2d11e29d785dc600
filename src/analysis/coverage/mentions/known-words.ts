/** The words that a record knows of its thing, and the names in which no word is a thing. */
import type { Item } from '../../../model/box.ts';
import type { Language, Word } from '../../language/language.ts';
import type { Phrase } from '../phrases/phrase.ts';

/** What is known of an item beside its phrases. */
export interface ItemRecord {
  /** Words that may stand before its name without making it another thing. */
  readonly known: readonly Word[];
  /** Names of makers and of the box: what stands in them is no thing. */
  readonly names: readonly (readonly Word[])[];
}

/** An item and its phrases. */
export interface Named {
  readonly slug: string;
  readonly phrases: readonly Phrase[];
  /** What else is known of it; without it, its phrases are all that is. */
  readonly record?: ItemRecord;
}

/** What an item's record knows of it; `box` is the box's own name. */
export const itemRecordOf = (
  { name, kind, also, material, color, brand, description }: Item,
  language: Language,
  box?: string,
): ItemRecord => ({
  known: [name, kind, ...also, ...material, color ?? '', brand, description].flatMap((text) =>
    language.words(text),
  ),
  names: [brand, box ?? ''].map((text) => language.words(text)).filter((words) => words.length > 0),
});
