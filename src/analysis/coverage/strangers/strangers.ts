/** Things that a summary or a title names and the box has not. English alone. */
import { lazily } from '../../../text/lazy.ts';
import { wordSet } from '../../../text/word-set.ts';
import type { Synset, WordNet } from '../../../text/wordnet.ts';
import type { Language } from '../../language/language.ts';
import { nounSenses } from '../../language/nouns.ts';
import type { Candidate } from './candidates.ts';

/** Files of WordNet's nouns that hold what can be put into a box (lexnames(5WN)). */
const FILES_OF_THINGS: ReadonlySet<number> = new Set([5, 6, 13, 20, 27]);

/** What is stood on, lived in or looked out of is never packed: WordNet's own words for the classes of those. */
const NEVER_PACKED = wordSet(`
  structure building room area way facility conveyance surface floor opening location establishment creation
  furniture_area enclosure excavation floor_covering`);

/** Of a word by itself its commonest sense is meant: a later one is mostly another thing. */
const SENSES_ALONE = 1;
/** Where another word tells it apart, one of the first few; of what an item is they only make the check quieter. */
const SENSES = 3;

/** What the last words of a phrase may be looked up as: both together, and the last. */
const nounsOf = (keys: readonly string[]): readonly string[] => [keys.slice(-2).join(' '), keys.at(-1) ?? ''];

/** Senses and all that is broader. */
const withBroader = (senses: readonly number[], synset: (sense: number) => Synset): ReadonlySet<number> => {
  const all = new Set(senses);
  // A set that is walked gives also what is added on the way.
  for (const sense of all) for (const broader of synset(sense).broader) all.add(broader);
  return all;
};

/**
 * The candidates of which WordNet says that they are things which can be held. A broader word for an item ("a tool") is
 * no stranger, nor is a synonym. `names` are those of the items.
 */
export const strangersAmong = (
  candidates: readonly Candidate[],
  names: readonly string[],
  language: Language,
  wordnet: WordNet,
): readonly Candidate[] => {
  const synset = (sense: number): Synset => wordnet.at(sense, 'noun');
  const keysOf = (text: string): readonly string[] => language.words(text).map(({ key }) => key);
  const ofItems = lazily((): ReadonlySet<number> => {
    const nouns = new Set(names.map(keysOf).flatMap(nounsOf));
    const senses = [...nouns].flatMap((noun) => nounSenses(wordnet, noun).slice(0, SENSES));
    return withBroader(senses, synset);
  });
  const isStranger = ({ keys }: Candidate): boolean => {
    const senses = nounsOf(keys).flatMap((noun) =>
      nounSenses(wordnet, noun).slice(0, keys.length > 1 ? SENSES : SENSES_ALONE),
    );
    const sense = senses.find((one) => FILES_OF_THINGS.has(synset(one).lexFile));
    if (sense === undefined) return false;
    const classes = [...withBroader([sense], synset)].flatMap((one) => synset(one).synonyms);
    return !classes.some((name) => NEVER_PACKED.has(name)) && !ofItems().has(sense);
  };
  return candidates.filter(isStranger);
};
