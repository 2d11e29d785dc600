/** Things that a summary, a title or a description names and the box has not. English alone. */
import { wordSet } from '../../../text/word-set.ts';
import { type Chunk, phrasesAmongWords } from '../../language/chunks.ts';
import type { Language } from '../../language/language.ts';
import { containers, units } from '../../language/lexicon/measures.ts';
import { openNouns } from '../../language/wordnet.ts';
import { listedPhrases } from './listed.ts';

/** What is known of a cycle without its stories. */
export interface NamedThings {
  /** What is looked through. Of a description only the first thing is: what it says the item to be. */
  readonly texts: readonly { readonly text: string; readonly firstAlone: boolean }[];
  /** Names, kinds and other names of the items. */
  readonly names: readonly string[];
  /** All else that the records say: materials, colours, makers, the theme, what box.md says of the box. */
  readonly said: readonly string[];
}

/** A noun phrase that no record explains. Offsets in UTF-16 units. */
export interface Candidate {
  /** Which of the texts it stands in, from 0. */
  readonly text: number;
  readonly start: number;
  readonly end: number;
  readonly phrase: string;
  /** The keys of its last two words, or of one: a story that says them all explains it. */
  readonly keys: readonly string[];
}

/** Files of WordNet's nouns that hold what can be put into a box (lexnames(5WN)). */
const FILES_OF_THINGS: ReadonlySet<number> = new Set([5, 6, 13, 20, 27]);

/** Words for what every box has, or is. By hand. */
const GENERAL = wordSet(`
  box parcel package set kit thing item piece gift present treat surprise project craft recipe ingredient material gear
  stuff product selection collection pair bundle month cycle tool edition`);

/** What is stood on, lived in or looked out of is never packed: WordNet's own words for the classes of those. */
const NEVER_PACKED = wordSet(`
  structure building room area way facility conveyance surface floor opening location establishment creation
  furniture_area enclosure excavation floor_covering`);

/** A later sense is mostly another thing. */
const SENSES = 1;
/** Of what an item is, more senses are taken: they only make the check quieter. */
const SENSES_OF_ITEMS = 3;

/** "two-ply", "three-tier": a quality of a thing, though it may stand for it. */
const QUALITY = /(?:^|\s)(?:\d+|one|two|three|four|five|six)-\p{L}+$/u;

/** What a description says its item to be: the first thing in it, past what that is measured in. */
const opening = (
  listed: readonly Chunk[],
  phrases: readonly Chunk[],
  language: Language,
): readonly Chunk[] => {
  const isMeasure = ({ text }: Chunk): boolean => {
    const { folded } = language.word(text.split(/\s+/).at(-1) ?? '');
    return containers.has(folded) || units.has(folded);
  };
  const first = phrases.find((phrase) => !isMeasure(phrase));
  return listed.filter(({ start }) => start === first?.start);
};

/**
 * The phrases listed as contents of which no record of the cycle has the last word, and WordNet says in their first
 * sense that they are things which can be held. A broader word for an item ("a tool") is no stranger, nor is a synonym.
 */
export const candidatesIn = async (
  { texts, names, said }: NamedThings,
  language: Language,
): Promise<readonly Candidate[]> => {
  const keysOf = (text: string): readonly string[] => language.words(text).map(({ key }) => key);
  const known = new Set([...names, ...said].flatMap(keysOf));
  const nouns = await openNouns();
  const above = async (offset: number, seen: Set<number>): Promise<void> => {
    if (seen.has(offset)) return;
    seen.add(offset);
    const { ptrs } = await nouns.at(offset);
    for (const { pointerSymbol, synsetOffset, pos } of ptrs)
      if (pos === 'n' && (pointerSymbol === '@' || pointerSymbol === '@i')) await above(synsetOffset, seen);
  };
  let own: Set<number> | undefined;
  const ofItems = async (): Promise<ReadonlySet<number>> => {
    if (own) return own;
    own = new Set();
    for (const name of names) {
      const keys = keysOf(name);
      for (const noun of [keys.slice(-2).join('_'), keys.at(-1) ?? ''])
        for (const sense of (await nouns.senses(noun)).slice(0, SENSES_OF_ITEMS)) await above(sense, own);
    }
    return own;
  };
  const isStranger = async (keys: readonly string[]): Promise<boolean> => {
    for (const noun of [keys.join('_'), keys.at(-1) ?? '']) {
      const senses = (await nouns.senses(noun)).slice(0, keys.length > 1 ? SENSES_OF_ITEMS : SENSES);
      for (const sense of senses) {
        const { lexFilenum } = await nouns.at(sense);
        if (!FILES_OF_THINGS.has(lexFilenum)) continue;
        const broader = new Set<number>();
        await above(sense, broader);
        for (const offset of broader)
          if ((await nouns.at(offset)).synonyms.some((name) => NEVER_PACKED.has(name))) return false;
        const items = await ofItems();
        return !items.has(sense);
      }
    }
    return false;
  };
  const found: Candidate[] = [];
  for (const [at, { text, firstAlone }] of texts.entries()) {
    const { words, phrases } = await phrasesAmongWords(text);
    const listed = listedPhrases(words, phrases);
    for (const { start, end, text: phrase } of firstAlone ? opening(listed, phrases, language) : listed) {
      if (QUALITY.test(phrase)) continue;
      const keys = keysOf(phrase).slice(-2);
      const head = keys.at(-1);
      if (head === undefined || known.has(head) || GENERAL.has(head)) continue;
      if (await isStranger(keys)) found.push({ text: at, start, end, phrase, keys });
    }
  }
  return found;
};
