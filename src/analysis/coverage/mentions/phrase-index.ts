/** The phrases of some items, made ready to be met word by word. */
import type { Word } from '../../language/language.ts';
import type { Phrase } from '../phrases/phrase.ts';
import type { Named } from './known-words.ts';
import { type KnownItem, knownItemsOf, tellingWordsOf } from './telling.ts';

/** A phrase with its forms written as one word, so that spaces and hyphens need not be looked at. */
export interface Sought {
  /** Slug of the item that it is of. */
  readonly item: string;
  readonly phrase: Phrase;
  readonly folded: string;
  readonly key: string;
  readonly known: KnownItem;
}

/** The phrases of some items, made ready to be met word by word; each map gives numbers of phrases. */
export interface PhraseIndex {
  /** In the order of the items and of their phrases. */
  readonly sought: readonly Sought[];
  readonly english: boolean;
  /** By every beginning of the phrase written as one word, folded and by its keys. */
  readonly byFolded: ReadonlyMap<string, readonly number[]>;
  readonly byKey: ReadonlyMap<string, readonly number[]>;
  /** By the stem of the first word. */
  readonly byStem: ReadonlyMap<string, readonly number[]>;
  /** By the key of the head, phrases of two words and more. */
  readonly byHead: ReadonlyMap<string, readonly number[]>;
  /** By the key of a word before the head that means the thing when it stands alone. */
  readonly byTelling: ReadonlyMap<string, readonly number[]>;
  /** Names in which no word is a thing, by the key of each of their words. */
  readonly names: ReadonlyMap<string, readonly (readonly Word[])[]>;
  /** What each word that was met may have to do with, by its text: a text has the same few words again and again. */
  readonly met: Map<string, MetWord>;
}

interface MetWord {
  /** Phrases that may begin with it. */
  readonly begins: readonly number[];
  /** Phrases that it is the head of. */
  readonly heads: readonly number[];
  /** Phrases that it may mean by itself, though it is not their head. */
  readonly telling: readonly number[];
}

/** What a word may have to do with. */
export const metWord = (index: PhraseIndex, { text, folded, key, stem }: Word): MetWord => {
  const known = index.met.get(text);
  if (known) return known;
  const begins = [index.byFolded.get(folded), index.byKey.get(key), index.byStem.get(stem)];
  const word = {
    begins: [...new Set(begins.flatMap((numbers) => numbers ?? []))],
    heads: index.byHead.get(key) ?? [],
    telling: index.byTelling.get(key) ?? [],
  };
  index.met.set(text, word);
  return word;
};

const put = <T>(map: Map<string, T[]>, form: string, value: T): void => {
  const list = map.get(form);
  if (list) list.push(value);
  else map.set(form, [value]);
};

const putBeginnings = (map: Map<string, number[]>, form: string, number: number): void => {
  for (let length = 1; length <= form.length; length++) put(map, form.slice(0, length), number);
};

/** The index of the phrases of some items; linear in their letters. */
export const phraseIndexOf = (items: readonly Named[], english: boolean): PhraseIndex => {
  const known = knownItemsOf(items);
  const telling = english ? tellingWordsOf(items) : [];
  const sought = items.flatMap(({ slug, phrases }, i) =>
    phrases.map(
      (phrase): Sought => ({
        item: slug,
        phrase,
        folded: phrase.words.map(({ folded }) => folded).join(''),
        key: phrase.words.map(({ key }) => key).join(''),
        known: known[i] as KnownItem,
      }),
    ),
  );
  const maps = {
    byFolded: new Map<string, number[]>(),
    byKey: new Map<string, number[]>(),
    byStem: new Map<string, number[]>(),
    byHead: new Map<string, number[]>(),
    byTelling: new Map<string, number[]>(),
    names: new Map<string, (readonly Word[])[]>(),
  };
  const tellingBySlug = new Map(items.map(({ slug }, i) => [slug, telling[i]]));
  for (const name of items.flatMap(({ record }) => record?.names ?? []))
    for (const { key } of name) put(maps.names, key, name);
  for (const [number, { item, phrase, folded, key }] of sought.entries()) {
    const [first] = phrase.words;
    const head = phrase.words[phrase.head];
    if (!first) continue;
    putBeginnings(maps.byFolded, folded, number);
    putBeginnings(maps.byKey, key, number);
    put(maps.byStem, first.stem, number);
    if (head && phrase.words.length > 1) put(maps.byHead, head.key, number);
    for (const word of phrase.words.slice(0, phrase.head))
      if (tellingBySlug.get(item)?.has(word.key)) put(maps.byTelling, word.key, number);
  }
  return { sought, english, ...maps, met: new Map() };
};
