/** What a single word can be in a noun phrase, by word lists and endings. */
import { wordSet } from '../../../text/word-set.ts';
import type { Word } from '../../language/language.ts';
import { goods } from '../../language/lexicon/goods.ts';
import { counts } from '../../language/lexicon/measures.ts';
import {
  adjectiveEndings,
  adjectives,
  colours,
  materials,
  notAdjectives,
  shades,
} from '../../language/lexicon/qualities.ts';
import { PARTICIPLES } from '../../language/word-classes.ts';
import { BORDERS, GENERAL, VERBS } from './neighbour-words.ts';

/** What a word before a noun tells: how anything may be, its colour, or which one it is. */
export type Nature = 'general' | 'color' | 'telling';

/** What was found out about words: a shop writes the same few thousand all year, and none of this ever changes. */
const bordersBefore = new Map<string, boolean>();
const naturesBefore = new Map<string, Nature>();

/** Whether no noun phrase goes over a word. */
export const isBorder = ({ folded, text }: Word): boolean => {
  const known = bordersBefore.get(text);
  if (known !== undefined) return known;
  const border = BORDERS.has(text.toLowerCase().replace('’', "'")) || BORDERS.has(folded) || isAdverb(folded);
  bordersBefore.set(text, border);
  return border;
};

/** Words in -ly that are no adverbs. */
const NO_ADVERBS = wordSet(`
  ally anomaly apply assembly belly bubbly bully butterfly chilly costly cuddly curly daily dolly dragonfly early elderly
  family firefly fly friendly hilly holly hourly italy jelly july lily likely lively lovely mealy melancholy monopoly
  monthly orderly pearly rally reply scholarly silly smelly supply ugly weekly wobbly woolly yearly`);

/** "Gently", but not "jelly". Common practice, no source. */
export const isAdverb = (folded: string): boolean =>
  folded.length > 4 && folded.endsWith('ly') && !NO_ADVERBS.has(folded);

/** The adjective that a comparative or a superlative is of, in the ways English spells them. */
const positivesOf = (folded: string): readonly string[] => {
  const stem = /^(.{2,})(?:er|est)$/.exec(folded)?.[1];
  if (!stem) return [];
  return [stem, `${stem}e`, stem.replace(/i$/, 'y'), stem.replace(/(.)\1$/, '$1')];
};

const isListed = (folded: string): boolean => GENERAL.has(folded) || adjectives.has(folded);

export const isParticiple = (folded: string): boolean =>
  PARTICIPLES.has(folded) ||
  (folded.length > 3 && folded.endsWith('ed') && !folded.endsWith('eed') && !notAdjectives.has(folded));

/** "Musty", "chunky", "floppy": endings in -y of which nearly all words are adjectives. Common practice, no source. */
const ADJECTIVE_IN_Y = /^[a-z]+(?:([bdfgmnptz])\1|[nsrlco]k|[sflx]t|[cs]h|[pmw]s|[aio]m)y$/;
const NOUNS_IN_Y = wordSet(`
  puppy poppy penny teddy hobby lobby bunny granny nanny daddy mummy kitty potty jetty taffy whisky buddy caddy jelly
  hippy lorry amnesty honesty majesty dynasty guppy nappy toffy husky jenny dummy tummy gipsy daddy paddy canny navy
  economy anatomy family academy enemy`);

/** Whether a word says how a thing is, and nothing of which it is. */
export const isGeneral = ({ folded, key }: Pick<Word, 'folded' | 'key'>): boolean =>
  isListed(folded) ||
  (ADJECTIVE_IN_Y.test(folded) && !NOUNS_IN_Y.has(folded) && !goods.has(key)) ||
  /^\d/.test(folded) ||
  counts.has(folded) ||
  (!notAdjectives.has(key) && !goods.has(key) && (adjectiveEndings.test(folded) || isParticiple(folded)));

/** "Older", "finest". Some in -er are things behind a noun: a tin opener. */
export const isCompared = ({ folded, key }: Word): boolean =>
  !goods.has(key) && positivesOf(folded).some(isListed);

/** "Wooden" is no other material than "pine": such words stand among the general ones. */
const ownNature = (word: Word): Nature => {
  if (GENERAL.has(word.folded)) return 'general';
  if (colours.has(word.folded)) return 'color';
  if (materials.has(word.folded)) return 'telling';
  return isGeneral(word) || isCompared(word) ? 'general' : 'telling';
};

/** What a word tells of the noun that it stands before; `next` is the word after it. */
export const natureOf = (word: Word, next?: Word): Nature => {
  // "Bottle green" is a colour, a bottle brush has none.
  if (next && colours.has(next.folded) && shades.has(word.folded)) return 'color';
  const known = naturesBefore.get(word.folded);
  if (known) return known;
  const nature = ownNature(word);
  naturesBefore.set(word.folded, nature);
  return nature;
};

/** Whether a word is written with a capital. */
export const isCapital = ({ text }: Word): boolean => /^\p{Lu}/u.test(text);

/** Also of what has no singular: scissors. */
export const isPlural = ({ key, folded }: Word): boolean => key !== folded || /[^aiosu]s$/.test(folded);

/** "Leaves" is the plural of "leaf", and a form of "leave". */
export const isThirdPerson = ({ folded, key }: Word): boolean =>
  folded.endsWith('s') &&
  (VERBS.has(key) ||
    VERBS.has(folded.slice(0, -1)) ||
    (folded.endsWith('es') && VERBS.has(folded.slice(0, -2))));

/** Who or what does something: "opener" is no comparative of "open". */
export const isDoer = ({ folded }: Word): boolean =>
  folded.endsWith('er') && [folded.slice(0, -2), folded.slice(0, -1)].some((verb) => VERBS.has(verb));
