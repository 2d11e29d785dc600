/** What a shopper would type to find an item. */
import type { Word } from '../../language/language.ts';
import type { NameOrigin } from './name.ts';

/** What a phrase was taken from. */
export type Origin =
  | { readonly from: 'kind' }
  | { readonly from: 'name'; readonly part: NameOrigin }
  /** `value`: what the record says there. */
  | { readonly from: 'also' | 'material' | 'color' | 'brand'; readonly value: string }
  /** `count`: how often it was typed; `as`: how, where that is not the phrase's own spelling. */
  | { readonly from: 'search'; readonly count: number; readonly as?: string };

/** Something a shopper would type to find an item. */
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
