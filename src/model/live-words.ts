/** What a live asks of the wording: what is said where no author gives the words, and what is held up or done. */
import type { Call } from './calls.ts';
import type { Caution, CautionWords } from './cautions.ts';

/** What is said at a live where neither the owner nor the stories give the words. */
export interface StockWords {
  /** Questions to the people who are there, at the beginning. */
  readonly greet: readonly string[];
  readonly about: (name: string, description: string) => string;
  /** Between two items, or after the only one; empty where there is nothing to ask. */
  readonly question: (earlier: string | undefined, later: string, isEaten: boolean) => string;
  readonly whole: (names: string) => string;
  readonly call: (call: Call, address: string) => readonly string[];
  /** Thanks and goodbye; `month` of the next box, and the day on which it is opened where that is known. */
  readonly goodbye: (month: string | undefined, day: string | undefined) => readonly string[];
}

/** The words that a live needs besides its records, in the language in which it is held as far as there are any. */
export interface SpokenWords {
  readonly stock: StockWords;
  readonly caution: CautionWords;
  /** Said instead of cautions that were said of an earlier item. */
  readonly sameCautions: (earlier: string) => string;
}

/** What to hold up or do, to be worded where it is shown. */
export type Direction =
  | { readonly direction: 'own'; readonly text: string }
  | { readonly direction: 'nearest'; readonly name: string }
  | { readonly direction: 'in order'; readonly names: readonly string[] }
  | { readonly direction: 'address card' | 'hold card'; readonly address: string }
  /** `beside` is the lead item's kind. */
  | { readonly direction: 'hold up'; readonly beside?: string }
  | { readonly direction: 'picture'; readonly alt: string }
  | {
      readonly direction:
        | 'box closed'
        | 'lid'
        | 'board'
        | 'plain clothes'
        | 'look up'
        | 'open box'
        | 'read answers'
        | 'everything'
        | 'empty hands';
    };

/** Cautions of one sort as they are said. */
export interface SpokenCaution {
  readonly sort: Caution['sort'];
  readonly lines: readonly string[];
}
