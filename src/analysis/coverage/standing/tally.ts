/** Every phrase of every item against an article, kept passage by passage, so that one changed passage is counted anew alone. */
import type { Word } from '../../language/language.ts';
import type { Mention } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import type { Passage } from '../text/passage.ts';
import { textIndex } from '../text/text-index.ts';
import { concerns, mentionsOf } from './mentions.ts';
import { meanStanding, standingOf } from './standing.ts';

/** An item as the tally needs it. */
export interface TalliedItem {
  readonly slug: string;
  readonly name: string;
  readonly phrases: readonly Phrase[];
}

/** One phrase of one item, and where it is met. */
export interface Entry {
  readonly item: TalliedItem;
  readonly phrase: Phrase;
  readonly mentions: readonly Mention[];
  readonly standing: number;
}

export interface Tally {
  /** In the order of the items and of their phrases. */
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

/** Mentions of every phrase in some passages, by item; `numbers` says which of the article's passages they are. */
const countIn = (
  passages: readonly Passage[],
  numbers: readonly number[],
  items: readonly TalliedItem[],
  english: boolean,
): readonly (readonly (readonly Mention[])[])[] =>
  mentionsOf(textIndex(passages), items, english).map((phrases) =>
    phrases.map((mentions) =>
      mentions.map((mention) => ({ ...mention, passage: numbers[mention.passage] as number })),
    ),
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
  const found = countIn(passages, numbers, items, english).flat();
  const entries = tally.entries.map((entry, i): Entry => {
    const kept = entry.mentions.filter(({ passage }) => !changed.has(passage));
    const mentions = [...kept, ...(found[i] ?? [])].sort(inOrder);
    return { ...entry, mentions, standing: standingOf(mentions) };
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
  const found = countIn([passage], [at], items, english).flat();
  const after = tally.entries.map((entry, i) => {
    if (!concerns(entry.phrase, touched)) return entry;
    const kept = entry.mentions.filter((mention) => mention.passage !== at);
    const standing = standingOf([...kept, ...(found[i] ?? [])]);
    if (standing > entry.standing) raised.push({ entry, standing });
    return { ...entry, standing };
  });
  return { raised, standings: standingsOf(items, after) };
};
