/** What people typed that no thing of any box is: what they would buy, or what a record does not call by its name. */
import type { Item, Search } from '../../../model/box.ts';
import { editDistance } from '../../../text/edit-distance.ts';
import type { Language } from '../../language/language.ts';
import { itemWordsOf } from './phrases.ts';
import { searchIndexOf, typedFor } from './typed.ts';

/** What people typed, beside all that was ever packed. Counts are times that something was typed. */
export interface AskedFor {
  readonly all: number;
  readonly answered: number;
  /** Those that belong to nothing, the oftenest first. */
  readonly others: readonly Pick<Search, 'phrase' | 'count'>[];
}

/** More is a list that nobody reads. A choice of ours. */
const MOST_OTHERS = 8;

/** Shorter words a letter apart are words: pot and pit. */
const SHORTEST_SLIP = 6;

/** Tells a phrase that is another, which was answered, but for a letter: nobody asked for anything else by it. */
const slipOf = (answered: Iterable<Search>, language: Language): ((search: Search) => boolean) => {
  const keysOf = ({ phrase }: Search): readonly string[] => language.words(phrase).map(({ key }) => key);
  const known = new Set([...answered].flatMap(keysOf));
  const isKnown = (key: string): boolean =>
    known.has(key) ||
    (key.length >= SHORTEST_SLIP && [...known].some((other) => editDistance(other, key, 1) === 1));
  return (search) => keysOf(search).every(isKnown) && !keysOf(search).every((key) => known.has(key));
};

/** What was typed, beside the items of all boxes, those that are sealed among them. */
export const askedForOf = (
  searches: readonly Search[],
  items: readonly Item[],
  language: Language,
): AskedFor => {
  const index = searchIndexOf(searches, language);
  const answered = new Set<Search>();
  for (const item of items)
    for (const { search } of typedFor(itemWordsOf(item, language), index)) answered.add(search);
  const sum = (some: readonly Search[]): number => some.reduce((all, { count }) => all + count, 0);
  const isSlip = slipOf(answered, language);
  const others = searches.filter((search) => !answered.has(search) && !isSlip(search));
  return {
    all: sum(searches),
    answered: sum([...answered]),
    others: others
      .toSorted((a, b) => b.count - a.count || (a.phrase < b.phrase ? -1 : 1))
      .slice(0, MOST_OTHERS)
      .map(({ phrase, count }) => ({ phrase, count })),
  };
};
