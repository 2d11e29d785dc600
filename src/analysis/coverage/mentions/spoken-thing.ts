/** Whether a word, where it stands, speaks of an item. */
import { itemAt } from '../../../text/item-at.ts';
import { lazily } from '../../../text/lazy.ts';
import type { Word } from '../../language/language.ts';
import type { Passage, ZonedWord } from '../text/passage.ts';
import { standsAsNoun } from './noun.ts';
import { type Modifier, nounPhraseAt, standsBeforeNoun, stretchAround } from './noun-phrase.ts';
import type { PhraseIndex } from './phrase-index.ts';
import type { KnownItem } from './telling.ts';
import { isCapital } from './word-nature.ts';

/** A word that may stand for a thing, with what its neighbours tell of which. */
export interface SpokenThing {
  readonly head: number;
  /** Whether it is a noun, and itself the thing that is spoken of. */
  readonly isThing: boolean;
  /** Whether an item's record knows all that stands before it and says which thing it is. */
  readonly isKnownTo: (item: KnownItem) => boolean;
  /** Whether something of the item's record stands before it. */
  readonly isToldBy: (item: KnownItem) => boolean;
  /** The words around it that speak of the same thing, up to and without `to`. */
  readonly stretch: () => { readonly from: number; readonly to: number };
}

/** Whether a word is a part of some words that stand there in their order, in one sentence. */
const isPartOf = (words: readonly ZonedWord[], at: number, name: readonly Word[]): boolean => {
  const { key, sentence } = itemAt(words, at);
  return name.some(
    (part, i) =>
      part.key === key &&
      name.every((other, k) => {
        const word = words[at - i + k];
        return word?.folded === other.folded && word.sentence === sentence;
      }),
  );
};

/** Names begin with a capital, and so does a sentence: a name of one word is none there. */
const isNamed = (words: readonly ZonedWord[], at: number, { names }: PhraseIndex): boolean => {
  const word = itemAt(words, at);
  if (!isCapital(word)) return false;
  const begins = words[at - 1]?.sentence !== word.sentence;
  return (names.get(word.key) ?? []).some(
    (name) => (name.length > 1 || !begins) && isPartOf(words, at, name),
  );
};

/** Common practice, no source: further apart than this, words no longer speak of one thing. */
const SCATTER = 6;

/** In other languages than English nobody knows what stands before a word; a phrase is scattered over its sentence. */
const inOtherLanguages = (words: readonly ZonedWord[], head: number): SpokenThing => ({
  head,
  isThing: true,
  isKnownTo: () => true,
  isToldBy: () => true,
  stretch: () => {
    const isNear = (at: number): boolean => words[at]?.sentence === words[head]?.sentence;
    let [from, to] = [head, head + 1];
    while (head - from < SCATTER && isNear(from - 1)) from -= 1;
    while (to - head <= SCATTER && isNear(to)) to += 1;
    return { from, to };
  },
});

/** Reads what stands around a word. */
export const readThing = (passage: Passage, head: number, index: PhraseIndex): SpokenThing => {
  const { words } = passage;
  if (!index.english) return inOtherLanguages(words, head);
  const phrase = nounPhraseAt(passage, head);
  const isThing =
    standsAsNoun(passage, phrase) && !standsBeforeNoun(passage, phrase) && !isNamed(words, head, index);
  const knows = ({ stems }: KnownItem, { from, to }: Modifier): boolean =>
    words.slice(from, to).some(({ stem }) => stems.has(stem));
  const outermost = phrase.modifiers.at(-1);
  const isPaired = ({ stems }: KnownItem, modifier: Modifier): boolean =>
    modifier === outermost && phrase.paired !== undefined && stems.has(itemAt(words, phrase.paired).stem);
  return {
    head,
    isThing,
    isKnownTo: (item) =>
      phrase.modifiers.every(
        (modifier) =>
          modifier.nature === 'general' ||
          (modifier.nature === 'color' && !item.coloured) ||
          knows(item, modifier) ||
          isPaired(item, modifier),
      ),
    isToldBy: (item) =>
      phrase.modifiers.some((modifier) => modifier.nature !== 'general' && knows(item, modifier)),
    stretch: lazily(() => stretchAround(passage, phrase)),
  };
};

/** Whether what was read can be an item. */
export const speaksOf = ({ isThing, isKnownTo }: SpokenThing, item: KnownItem): boolean =>
  isThing && isKnownTo(item);
