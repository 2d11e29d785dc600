/** Every phrase of every item against an article, kept passage by passage, so that one changed passage is counted anew alone. */
import type { Mention } from '../coverage.ts';
import type { ItemRecord } from '../mentions/known-words.ts';
import { mentionsOf } from '../mentions/mentions.ts';
import { type PhraseIndex, phraseIndexOf } from '../mentions/phrase-index.ts';
import type { Phrase } from '../phrases/phrase.ts';
import type { Passage } from '../text/passage.ts';
import { standingOf } from './standing.ts';

/** An item as the tally needs it. */
export interface TalliedItem {
  readonly slug: string;
  readonly hasPicture: boolean;
  /** As it stands inside a sentence, without what a card adds to it. */
  readonly name: string;
  readonly kind: string;
  /** Its words that keep their capitals inside a sentence, by how they are typed. */
  readonly capitals: ReadonlyMap<string, string>;
  readonly phrases: readonly Phrase[];
  /** What else is known of it; without it, its phrases are all that is. */
  readonly record?: ItemRecord;
}

/** One phrase of one item, and where it is met. */
export interface TalliedPhrase {
  readonly item: TalliedItem;
  readonly phrase: Phrase;
  readonly mentions: readonly Mention[];
}

/** How well a text carries the phrases of its items. */
export interface Tally {
  readonly items: readonly TalliedItem[];
  readonly index: PhraseIndex;
  /** In the order of the items and of their phrases. */
  readonly entries: readonly TalliedPhrase[];
  /** Standing of each item by its slug. */
  readonly standings: ReadonlyMap<string, number>;
}

const standingsOf = (
  items: readonly TalliedItem[],
  entries: readonly TalliedPhrase[],
): ReadonlyMap<string, number> => {
  let first = 0;
  return new Map(
    items.map((item) => {
      const own = entries.slice(first, first + item.phrases.length);
      first += item.phrases.length;
      return [item.slug, standingOf(own, item)];
    }),
  );
};

const inOrder = (a: Mention, b: Mention): number => a.passage - b.passage || a.from - b.from;

/** Counts every phrase in all passages. */
export const tallyOf = (
  passages: readonly Passage[],
  items: readonly TalliedItem[],
  english: boolean,
): Tally => {
  const empty: Tally = {
    items,
    index: phraseIndexOf(items, english),
    entries: items.flatMap((item) =>
      item.phrases.map((phrase): TalliedPhrase => ({ item, phrase, mentions: [] })),
    ),
    standings: new Map(),
  };
  return talliedAgain(empty, [], passages);
};

const NONE: readonly Mention[] = [];

/** The tally of an article after some of its passages changed: those alone are counted again. */
export const talliedAgain = (
  { items, index, entries }: Tally,
  before: readonly Passage[],
  after: readonly Passage[],
): Tally => {
  const numbers = [...after.keys()].filter((number) => after[number] !== before[number]);
  const changed = new Set(numbers);
  const found = mentionsOf(
    numbers.map((number) => after[number] as Passage),
    index,
  );
  const counted = entries.map((entry, i): TalliedPhrase => {
    const kept = entry.mentions.filter(({ passage }) => !changed.has(passage));
    const fresh = found.get(i) ?? NONE;
    if (fresh.length === 0 && kept.length === entry.mentions.length) return entry;
    const mentions = [
      ...kept,
      ...fresh.map((mention) => ({ ...mention, passage: numbers[mention.passage] as number })),
    ].sort(inOrder);
    return { ...entry, mentions };
  });
  return { items, index, entries: counted, standings: standingsOf(items, counted) };
};
