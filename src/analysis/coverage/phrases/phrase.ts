/** What a shopper would type to find an item. */
import type { Word } from '../../language/language.ts';

/** What a phrase was taken from. */
export type OriginName = 'kind' | 'name' | 'also' | 'material' | 'color' | 'brand' | 'search';

export interface Origin {
  readonly from: OriginName;
  /** In words: "kind", "name without its measure", "also: seed box", "searches.csv, typed 226 times". */
  readonly words: string;
}

export interface Phrase {
  /** As a shopper would type it: lower case, accents kept. */
  readonly text: string;
  readonly words: readonly Word[];
  /** Index in `words` of the word that says what the thing is ("can" in "enamel watering can"). */
  readonly head: number;
  /** Every origin that gave it, the weightiest first. */
  readonly origins: readonly Origin[];
  /** How much it counts beside the item's other phrases; more than 0. */
  readonly weight: number;
}
