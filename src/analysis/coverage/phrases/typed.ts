/** Phrases that people typed, read once, and which item each belongs to. */

import type { Search } from '../../../model/box.ts';
import { editDistance } from '../../../text/edit-distance.ts';
import { itemAt, lastOf } from '../../../text/item-at.ts';
import { mayConflate } from '../../language/conflation.ts';
import type { Language, Word } from '../../language/language.ts';
import {
  adverbs,
  askingWords,
  determiners,
  prepositions,
  relatives,
} from '../../language/lexicon/grammar.ts';
import { audiences, rooms } from '../../language/lexicon/settings.ts';
import { textOf, wordsOf } from './name-phrases.ts';
import { describes, isColour, isMaterial, isNumber } from './name-words.ts';
import { parseName } from './parse-name.ts';

/** A typed phrase taken apart. */
interface Typed {
  readonly search: Search;
  /** As it would stand in a text: "indoor watering can" for "watering can indoor". */
  readonly text: string;
  /** Which word of `text` is the head, from 0. */
  readonly head: number;
  /** The thing's words, qualities first, the head last. */
  readonly words: readonly Word[];
  /** What follows it: "for pots". */
  readonly tail: readonly Word[];
}

/** Phrases taken apart, as plain data. */
export interface ReadSearches {
  readonly typed: readonly Typed[];
  /** How often the phrase was typed that was typed oftenest; at least 1. */
  readonly most: number;
}

/** Typed phrases by what their thing's last words are, joined: "can", "wateringcan". */
export interface TypedSearches {
  readonly byEnding: ReadonlyMap<string, readonly Typed[]>;
  /** How often the phrase was typed that was typed oftenest; at least 1. */
  readonly most: number;
}

/** What an item is called and what is known of it. */
export interface ItemWords {
  /** Its kind, its other names and what its name says it is, each ending in its head. */
  readonly names: readonly (readonly Word[])[];
  /** Every word of its name, kind, other names, materials, colour and maker. */
  readonly facts: readonly Word[];
  readonly colours: readonly Word[];
  readonly materials: readonly Word[];
}

/** Words after the thing that are kept: more is a sentence, which nobody would repeat in a text. */
const MOST_TAIL = 3;

const joinedKeys = (words: readonly Word[]): string => words.map(({ key }) => key).join('');

const isSame = (a: Word, b: Word): boolean => a.key === b.key || (a.stem === b.stem && mayConflate(a, b));

/** "how to clean a watering can": what is asked, without the asking. */
const withoutAsking = (words: readonly Word[]): readonly Word[] => {
  const from = words.findIndex(({ folded }) => !askingWords.has(folded));
  const rest = words.slice(Math.max(0, from));
  const to = rest.findIndex(({ folded }, i) => i > 0 && relatives.has(folded));
  return to < 0 ? rest : rest.slice(0, to);
};

const readTyped = (search: Search, language: Language): Typed | undefined => {
  const asked = withoutAsking(language.words(search.phrase));
  const [start, end] = [asked[0], asked.at(-1)];
  if (!start || !end) return undefined;
  if (!language.english)
    return { search, text: textOf(asked), head: asked.length - 1, words: asked, tail: [] };
  const { things, tail } = parseName(search.phrase.slice(start.start, end.end), language);
  const [thing] = things;
  if (!thing) return undefined;
  const words = [...thing.trailing, ...wordsOf(thing.modifiers), thing.head];
  const opens = tail[0] !== undefined && prepositions.has(tail[0].folded);
  const kept =
    opens &&
    tail.length > 1 &&
    tail.length <= MOST_TAIL + 1 &&
    !tail.some((word) => isNumber(word) || adverbs.has(word.folded))
      ? tail
      : [];
  return { search, text: textOf([...words, ...kept]), head: words.length - 1, words, tail };
};

/** Every run of words up to the last, joined, by key and by stem. */
const endingsOf = (words: readonly Word[]): readonly string[] => {
  const endings = new Set<string>();
  for (let i = words.length - 1; i >= 0; i--) endings.add(joinedKeys(words.slice(i)));
  const last = words.at(-1);
  if (last) endings.add(`~${last.stem}`);
  return [...endings];
};

/** Takes every phrase apart: nearly all the time that typed phrases take. */
export const readSearches = (searches: readonly Search[], language: Language): ReadSearches => ({
  typed: searches.flatMap((search) => readTyped(search, language) ?? []),
  most: searches.reduce((most, { count }) => Math.max(most, count), 1),
});

/** An item looks only at those that end as its names do. */
export const indexSearches = ({ typed, most }: ReadSearches): TypedSearches => {
  const byEnding = new Map<string, Typed[]>();
  for (const one of typed)
    for (const ending of endingsOf(one.words)) {
      const there = byEnding.get(ending);
      if (there) there.push(one);
      else byEnding.set(ending, [one]);
    }
  return { byEnding, most };
};

/** Reads every typed phrase once. */
export const searchIndexOf = (searches: readonly Search[], language: Language): TypedSearches =>
  indexSearches(readSearches(searches, language));

/** How many of the last words of `words` are the whole of `name`, however either is spaced; 0 where they are not. */
const endsIn = (words: readonly Word[], name: readonly Word[]): number => {
  const tail = words.slice(-name.length);
  if (tail.length === name.length && tail.every((word, i) => isSame(word, itemAt(name, i))))
    return name.length;
  const joined = joinedKeys(name);
  for (let count = 1; count <= words.length; count++) {
    const ending = joinedKeys(words.slice(-count));
    if (ending === joined) return count;
    // "houseplant mister" ends in "plant mister": a name of two words is too long to be met by chance.
    if (name.length > 1 && count > 1 && ending.length > joined.length && ending.endsWith(joined))
      return count;
  }
  return 0;
};

const isAmong = (word: Word, words: readonly Word[]): boolean => words.some((other) => isSame(word, other));

/** "red" of a can that is said to be sage; nothing is denied where nothing is stated. */
const contradicts = (word: Word, item: ItemWords): boolean =>
  !isAmong(word, item.facts) &&
  ((isColour(word) && item.colours.length > 0) ||
    (isMaterial(word) && item.materials.length > 0 && !isColour(word)));

const isGeneral = (word: Word): boolean =>
  describes(word) || rooms.has(word.folded) || audiences.has(word.folded);

const says = ({ folded }: Word): boolean =>
  folded !== 'and' && !prepositions.has(folded) && !determiners.has(folded);

const fits = ({ words, tail }: Typed, item: ItemWords): boolean => {
  const named = item.names.some((name) => {
    const matched = endsIn(words, name);
    if (matched === 0) return false;
    const others = words.slice(0, words.length - matched).filter(says);
    return others.every(
      (word) => !contradicts(word, item) && (name.length > 1 || isAmong(word, item.facts) || isGeneral(word)),
    );
  });
  if (named) return true;
  const head = lastOf(words);
  // "Brush for boots" has the words of a boot brush; a head alone could be of anything.
  const others = [...words.slice(0, -1), ...tail].filter(says);
  return (
    others.length > 0 &&
    item.names.some((name) => isSame(head, lastOf(name))) &&
    others.every((word) => isAmong(word, item.facts))
  );
};

/** Shorter words a letter apart are words: pot and pit. */
const SHORTEST_SLIP = 6;

/** Typed phrases but for those with a word misspelt, as another, typed oftener, shows: nobody should write them. */
const withoutSlips = (typed: readonly Typed[], facts: readonly Word[]): readonly Typed[] => {
  const oftenest = new Map<string, number>();
  for (const { words, tail, search } of typed)
    for (const { key } of [...words, ...tail])
      oftenest.set(key, Math.max(search.count, oftenest.get(key) ?? 0));
  const isSlip = (word: Word, count: number): boolean =>
    word.key.length >= SHORTEST_SLIP &&
    !isAmong(word, facts) &&
    [...oftenest].some(([key, oftener]) => oftener > count && editDistance(key, word.key, 1) === 1);
  return typed.filter(({ words, search }) => !words.some((word) => isSlip(word, search.count)));
};

/**
 * The typed phrases that belong to an item. A phrase belongs if its thing ends in one of the item's names, spaced
 * or joined in any way ("window bird feeder" in "bird feeder"), or if it has the head of one and all its other
 * words, those after a preposition too, are said of the item somewhere. What asks ("where to hang") decides nothing,
 * and what follows a preposition ("for a balcony") nothing where a whole name stands before it. A colour or a material that the item's record does not have, where it states some,
 * keeps a phrase away; before a name of one word, so does any word that is neither known of the item nor a general
 * quality: a cake tin is not the tin. Common practice, no source.
 */
export const typedFor = (item: ItemWords, index: TypedSearches): readonly Typed[] => {
  const found = new Set<Typed>();
  for (const name of item.names)
    for (const ending of endingsOf(name))
      for (const typed of index.byEnding.get(ending) ?? []) found.add(typed);
  return withoutSlips(
    [...found].filter((typed) => fits(typed, item)),
    item.facts,
  );
};
