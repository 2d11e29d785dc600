/** Other names that a dictionary has for what an item is: offered to the owner, scored by nobody. */
import type { Item } from '../../../model/box.ts';
import type { Synset, WordNet } from '../../../text/wordnet.ts';
import type { Language } from '../../language/language.ts';
import { nounSenses } from '../../language/nouns.ts';
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
  readonly goods: (noun: string) => { readonly synset: Synset; readonly only: boolean } | undefined;
  readonly at: (offset: number) => Synset;
}

const dictionaryOf = (wordnet: WordNet): Dictionary => ({
  at: (offset) => wordnet.at(offset, 'noun'),
  goods: (noun) => {
    // WordNet has a word's senses in the order of how common they are; a later one is mostly another thing.
    const [first, ...more] = nounSenses(wordnet, noun);
    if (first === undefined) return undefined;
    const synset = wordnet.at(first, 'noun');
    return FILES_OF_GOODS.has(synset.lexFile) ? { synset, only: more.length === 0 } : undefined;
  },
});

/** A name that a shopper could type: no scientific name (capitals), abbreviation or number. */
const isTypable = (lemma: string): boolean =>
  /^[a-z][a-z' -]*$/.test(lemma) && lemma.length > 3 && !HURTS.test(lemma) && !OUT_OF_USE.has(lemma);

/** What a gloss says before its first example or remark. */
const definitionOf = ({ gloss }: Synset): string => gloss.split('; ')[0] ?? '';

const namesIn = ({ synonyms, gloss }: Synset): readonly string[] =>
  MARKED.test(gloss) ? [] : synonyms.map((lemma) => lemma.replaceAll('_', ' ')).filter(isTypable);

/**
 * Other names for a noun, the nearest first: its synonyms; a broader name of two words or more that its own
 * definition begins with (secateurs are "small pruning shears …"); the one narrower name of a name of several words.
 */
const namesFor = (noun: string, { goods, at }: Dictionary): readonly string[] => {
  const synset = goods(noun)?.synset;
  if (!synset) return [];
  const namesOf = (offsets: readonly number[]): readonly string[] =>
    offsets.flatMap((offset) => namesIn(at(offset)));
  const definition = definitionOf(synset);
  const defining = namesOf(synset.broader).filter((name) => name.includes(' ') && definition.includes(name));
  const isOnlyOne = noun.includes(' ') && synset.narrower.length <= FEW_NARROWER;
  return [...namesIn(synset), ...defining, ...(isOnlyOne ? namesOf(synset.narrower) : [])];
};

/**
 * "Seed sieve" is in no dictionary, but sieve is, and a seed sifter is one. Only a noun of one sense can be changed
 * so: a plant tie is no plant necktie.
 */
const synonymsOfHead = (head: string, dictionary: Dictionary): readonly string[] => {
  const found = dictionary.goods(head);
  return found?.only ? namesIn(found.synset).filter((name) => !name.includes(' ') && name.length > 4) : [];
};

const namesForItem = (item: Item, language: Language, dictionary: Dictionary): readonly string[] => {
  const kind = item.kind.trim().toLowerCase();
  const { head } = readName(kind, language);
  const before = kind.endsWith(` ${head}`) ? kind.slice(0, -head.length) : '';
  const whole = namesFor(kind, dictionary);
  const names =
    whole.length > 0 || before === '' || head === ''
      ? whole
      : synonymsOfHead(head, dictionary).map((name) => before + name);
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
export const otherNames = (
  items: readonly Item[],
  language: Language,
  wordnet: WordNet,
): ReadonlyMap<string, readonly string[]> => {
  if (!language.english || items.length === 0) return new Map();
  const dictionary = dictionaryOf(wordnet);
  const byKind = new Map<string, Item>();
  for (const item of items) {
    // Items of one kind share what they already have: a name taken for one is known.
    const before = byKind.get(item.kind);
    byKind.set(item.kind, before ? { ...before, also: [...before.also, item.name, ...item.also] } : item);
  }
  return new Map(
    [...byKind]
      .map(([kind, item]) => [kind, namesForItem(item, language, dictionary)] as const)
      .filter(([, names]) => names.length > 0),
  );
};
