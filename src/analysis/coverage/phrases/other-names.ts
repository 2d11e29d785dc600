/** Other names that a dictionary has for what an item is: offered to the owner, scored by nobody. */
import type { Item } from '../../../model/box.ts';
import type { Language } from '../../language/language.ts';
import { openNouns, type Synset } from '../../language/wordnet.ts';
import { readName } from './name.ts';

/** Files of WordNet's nouns that hold goods (lexnames(5WN)): artifacts, foods, plants. */
const FILES_OF_GOODS: ReadonlySet<number> = new Set([6, 13, 20]);

/** More is a thesaurus. */
const MOST_NAMES = 4;

/** A narrower name is another only where it is the one there is: of all kinds of lamp none is meant. */
const FEW_NARROWER = 1;

/** How WordNet's glosses mark what nobody should print on a card. */
const MARKED =
  /\b(?:archaic|obsolete|dated|offensive|disparag\w*|derogatory|slur|vulgar|obscene|slang|street names?|trade ?mark|trade name|brand name|formerly|informal)\b/i;

/** Names of plants and things that hurt, whatever their gloss says. */
const HURTS =
  /nigger|negro|kaffir|coolie|squaw|gyps[yi]|\bchink|\bjap\b|\bjews?\b|wandering jew|dago|bitch|bastard|slut|whore|harlot|cripple|idiot|\bdyke\b|\bfag\b|\btit\b/i;

/** Names that nobody types, though WordNet does not say so; by hand. */
const OUT_OF_USE = new Set([
  'chaplet',
  'coronal',
  'pluviometer',
  'provender',
  'udometer',
  'unction',
  'unguent',
  'wax light',
]);

interface Dictionary {
  /** The commonest sense of a noun, if it is one of goods, and whether it is its only one. */
  readonly goods: (noun: string) => Promise<{ readonly synset: Synset; readonly only: boolean } | undefined>;
  readonly at: (offset: number) => Promise<Synset>;
}

const openDictionary = async (): Promise<Dictionary> => {
  const { at, senses } = await openNouns();
  return {
    at,
    goods: async (noun) => {
      // WordNet has a word's senses in the order of how common they are; a later one is mostly another thing.
      const [first, ...more] = await senses(noun);
      if (first === undefined) return undefined;
      const synset = await at(first);
      return FILES_OF_GOODS.has(synset.lexFilenum) ? { synset, only: more.length === 0 } : undefined;
    },
  };
};

/** A name that a shopper could type: no scientific name (capitals), abbreviation or number. */
const isTypable = (lemma: string): boolean =>
  /^[a-z][a-z' -]*$/.test(lemma) && lemma.length > 3 && !HURTS.test(lemma) && !OUT_OF_USE.has(lemma);

const namesIn = ({ synonyms, gloss }: Synset): readonly string[] =>
  MARKED.test(gloss) ? [] : synonyms.map((lemma) => lemma.replaceAll('_', ' ')).filter(isTypable);

/** Names of the synset's neighbours by one kind of pointer. */
const neighbours = async (
  synset: Synset,
  pointer: '@' | '~',
  dictionary: Dictionary,
): Promise<readonly (readonly string[])[]> => {
  const there = synset.ptrs.filter(({ pointerSymbol, pos }) => pointerSymbol === pointer && pos === 'n');
  if (pointer === '~' && there.length > FEW_NARROWER) return [];
  return (await Promise.all(there.map(({ synsetOffset }) => dictionary.at(synsetOffset)))).map(namesIn);
};

/**
 * Other names for a noun, the nearest first: its synonyms; a broader name of two words or more that its own
 * definition begins with (secateurs are "small pruning shears …"); the one narrower name of a name of several words.
 */
const namesFor = async (noun: string, dictionary: Dictionary): Promise<readonly string[]> => {
  const found = await dictionary.goods(noun);
  if (!found) return [];
  const { synset } = found;
  const [broader, narrower] = await Promise.all([
    neighbours(synset, '@', dictionary),
    neighbours(synset, '~', dictionary),
  ]);
  const defining = broader.flat().filter((name) => name.includes(' ') && synset.def.includes(name));
  return [...namesIn(synset), ...defining, ...(noun.includes(' ') ? narrower.flat() : [])];
};

/**
 * "Seed sieve" is in no dictionary, but sieve is, and a seed sifter is one. Only a noun of one sense can be changed
 * so: a plant tie is no plant necktie.
 */
const synonymsOfHead = async (head: string, dictionary: Dictionary): Promise<readonly string[]> => {
  const found = await dictionary.goods(head);
  return found?.only ? namesIn(found.synset).filter((name) => !name.includes(' ') && name.length > 4) : [];
};

const namesForItem = async (
  item: Item,
  language: Language,
  dictionary: Dictionary,
): Promise<readonly string[]> => {
  const kind = item.kind.trim().toLowerCase();
  const { head } = readName(kind, language);
  const before = kind.endsWith(` ${head}`) ? kind.slice(0, -head.length) : '';
  const whole = await namesFor(kind, dictionary);
  const names =
    whole.length > 0 || before === '' || head === ''
      ? whole
      : (await synonymsOfHead(head, dictionary)).map((name) => before + name);
  const keyOf = (text: string): string =>
    language
      .words(text)
      .map(({ key }) => key)
      .join('');
  const known = new Set([item.name, item.kind, ...item.also].map(keyOf));
  // A bare head says less than the kind: "box" for "nest box".
  known.add(keyOf(head));
  return names
    .filter((name) => {
      const key = keyOf(name);
      const fresh = !known.has(key);
      known.add(key);
      return fresh;
    })
    .slice(0, MOST_NAMES);
};

/**
 * At most four other names for each item's kind that WordNet has and the record has not, the nearest first; by
 * kind, kinds without any left out. English alone. Old, rude and scientific names are left out as far as WordNet
 * or its spelling marks them.
 */
export const otherNames = async (
  items: readonly Item[],
  language: Language,
): Promise<ReadonlyMap<string, readonly string[]>> => {
  if (!language.english || items.length === 0) return new Map();
  const dictionary = await openDictionary();
  const byKind = new Map<string, Item>();
  for (const item of items) {
    // Items of one kind share what they already have: a name taken for one is known.
    const before = byKind.get(item.kind);
    byKind.set(item.kind, before ? { ...before, also: [...before.also, item.name, ...item.also] } : item);
  }
  const found = await Promise.all(
    [...byKind].map(
      async ([kind, item]): Promise<readonly [string, readonly string[]]> => [
        kind,
        await namesForItem(item, language, dictionary),
      ],
    ),
  );
  return new Map(found.filter(([, names]) => names.length > 0));
};
