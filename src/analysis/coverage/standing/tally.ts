/** Every phrase of every item against an article, kept passage by passage, so that one changed passage is counted anew alone. */
import type { Word } from '../../language/language.ts';
import type { Mention } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import type { Passage } from '../text/passage.ts';
import { changedMentions } from './changed-mentions.ts';
import { mentionsOf } from './mentions.ts';
import { concernedBy, type PhraseIndex, phraseIndexOf } from './phrase-index.ts';
import { meanStanding, standingOf } from './standing.ts';

/** An item as the tally needs it. */
export interface TalliedItem {
  readonly slug: string;
  readonly name: string;
  /** Its words that keep their capitals inside a sentence, by how they are typed. */
  readonly capitals: ReadonlyMap<string, string>;
  readonly phrases: readonly Phrase[];
}

/** One phrase of one item, and where it is met. */
export interface TalliedPhrase {
  readonly item: TalliedItem;
  readonly phrase: Phrase;
  readonly mentions: readonly Mention[];
  readonly standing: number;
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
  entries: readonly Pick<TalliedPhrase, 'phrase' | 'standing'>[],
): ReadonlyMap<string, number> => {
  let first = 0;
  return new Map(
    items.map(({ slug, phrases }) => {
      const own = entries.slice(first, first + phrases.length);
      first += phrases.length;
      return [slug, meanStanding(own.map(({ phrase, standing }) => ({ weight: phrase.weight, standing })))];
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
      item.phrases.map((phrase): TalliedPhrase => ({ item, phrase, mentions: [], standing: 0 })),
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
    return { ...entry, mentions, standing: standingOf(mentions) };
  });
  return { items, index, entries: counted, standings: standingsOf(items, counted) };
};

/** What a changed passage would bring. */
interface Outcome {
  /** Entries that would stand higher, with their new standing. */
  readonly raised: readonly { readonly entry: TalliedPhrase; readonly standing: number }[];
  readonly standings: ReadonlyMap<string, number>;
}

const isSameHere = (a: Mention, b: Mention | undefined): boolean => a.zone === b?.zone && a.grade === b.grade;

/**
 * The standings if the passage of number `at` read as `after` and not as `before` (undefined for one that is added),
 * `touched` being the words put in or taken out. Mentions in other passages stay, which is exact but for the last
 * words of an opening that grows.
 */
export const outcomeOf = (
  { items, index, entries }: Tally,
  at: number,
  before: Passage | undefined,
  after: Passage,
  touched: readonly Word[],
): Outcome => {
  const raised: { entry: TalliedPhrase; standing: number }[] = [];
  const { old, found } = changedMentions(before, after, index);
  const concerned = concernedBy(index, touched);
  const isOld = ({ passage, from }: Mention): boolean => passage === at && from >= old.from && from < old.to;
  const counted = entries.map((entry, i) => {
    if (!concerned[i]) return entry;
    const fresh = found.get(i) ?? NONE;
    const gone = entry.mentions.filter(isOld);
    if (gone.length === fresh.length && gone.every((one, k) => isSameHere(one, fresh[k]))) return entry;
    const standing = standingOf([...entry.mentions.filter((one) => !isOld(one)), ...fresh]);
    if (standing > entry.standing) raised.push({ entry, standing });
    return { ...entry, standing };
  });
  return { raised, standings: standingsOf(items, counted) };
};
