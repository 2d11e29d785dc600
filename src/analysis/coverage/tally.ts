/** Every phrase of every item against an article, kept passage by passage, so that one changed passage is counted anew alone. */
import type { Word } from '../language/language.ts';
import type { Mention } from './coverage.ts';
import { concerns, mentionsOf } from './mentions.ts';
import type { Passage } from './passage.ts';
import type { Phrase } from './phrase.ts';
import { meanStanding, standingOf } from './standing.ts';
import { type TextIndex, textIndex } from './text-index.ts';

/** An item as the tally needs it. */
export interface TalliedItem {
  readonly slug: string;
  readonly name: string;
  readonly phrases: readonly Phrase[];
}

type Met = Pick<Mention, 'place' | 'grade'>;

/** One phrase of one item, and where it is met. */
export interface Entry {
  readonly item: TalliedItem;
  readonly phrase: Phrase;
  readonly mentions: readonly Mention[];
  readonly standing: number;
}

export interface Tally {
  readonly entries: readonly Entry[];
  /** Standing of each item by its slug. */
  readonly standings: ReadonlyMap<string, number>;
}

const standingsOf = (
  items: readonly TalliedItem[],
  entries: readonly Pick<Entry, 'item' | 'phrase' | 'standing'>[],
): ReadonlyMap<string, number> =>
  new Map(
    items.map((item) => [
      item.slug,
      meanStanding(
        entries
          .filter((entry) => entry.item === item)
          .map(({ phrase, standing }) => ({ weight: phrase.weight, standing })),
      ),
    ]),
  );

/** Each phrase's mentions in some passages, `numbers` saying which of the article's passages they are. */
const countIn = (
  passages: readonly Passage[],
  numbers: readonly number[],
  item: TalliedItem,
  english: boolean,
  index: TextIndex = textIndex(passages),
): readonly (readonly Mention[])[] =>
  mentionsOf(index, item.phrases, item.slug, english).map((mentions) =>
    mentions.map((mention) => ({ ...mention, passage: numbers[mention.passage] as number })),
  );

const inOrder = (a: Mention, b: Mention): number => a.passage - b.passage || a.from - b.from;

/** Counts every phrase in all passages. */
export const tallyOf = (
  passages: readonly Passage[],
  items: readonly TalliedItem[],
  english: boolean,
): Tally => {
  const empty: Tally = {
    entries: items.flatMap((item) =>
      item.phrases.map((phrase): Entry => ({ item, phrase, mentions: [], standing: 0 })),
    ),
    standings: new Map(),
  };
  return talliedAgain(empty, items, [], passages, english);
};

/** The tally of an article after some of its passages changed: those alone are counted again. */
export const talliedAgain = (
  tally: Tally,
  items: readonly TalliedItem[],
  before: readonly Passage[],
  after: readonly Passage[],
  english: boolean,
): Tally => {
  const numbers = [...after.keys()].filter((number) => after[number] !== before[number]);
  const changed = new Set(numbers);
  const passages = numbers.map((number) => after[number] as Passage);
  const index = textIndex(passages);
  const entries = items.flatMap((item) => {
    const found = countIn(passages, numbers, item, english, index);
    return tally.entries
      .filter((entry) => entry.item === item)
      .map((entry, i): Entry => {
        const kept = entry.mentions.filter(({ passage }) => !changed.has(passage));
        const mentions = [...kept, ...(found[i] ?? [])].sort(inOrder);
        return { ...entry, mentions, standing: standingOf(mentions) };
      });
  });
  return { entries, standings: standingsOf(items, entries) };
};

/** What a changed passage would bring. */
export interface Outcome {
  /** Entries that would stand higher, with their new standing. */
  readonly raised: readonly { readonly entry: Entry; readonly standing: number }[];
  readonly standings: ReadonlyMap<string, number>;
}

/**
 * The standings if the passage of number `at` read as `passage` (a number past the last adds one), `touched` being
 * the words put in or taken out. Mentions in other passages stay, which is exact but for the last words of an
 * opening that grows.
 */
export const outcomeOf = (
  tally: Tally,
  items: readonly TalliedItem[],
  at: number,
  passage: Passage,
  touched: readonly Word[],
  english: boolean,
): Outcome => {
  const raised: { entry: Entry; standing: number }[] = [];
  const after = items.flatMap((item) => {
    const own = tally.entries.filter((entry) => entry.item === item);
    if (!own.some(({ phrase }) => touched.some((word) => concerns(phrase, word)))) return own;
    const found = countIn([passage], [at], item, english);
    return own.map((entry, i) => {
      const met: readonly Met[] = [
        ...entry.mentions.filter((mention) => mention.passage !== at),
        ...(found[i] ?? []),
      ];
      const standing = standingOf(met);
      if (standing > entry.standing) raised.push({ entry, standing });
      return { ...entry, standing };
    });
  });
  return { raised, standings: standingsOf(items, after) };
};
