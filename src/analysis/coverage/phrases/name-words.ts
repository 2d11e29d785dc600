/** What single words of a name are, before anything is known of the name: measures, colours, adjectives, things. */
import { itemAt } from '../../../text/item-at.ts';
import { wordSet, wordsOfAll } from '../../../text/word-set.ts';
import type { Word } from '../../language/language.ts';
import { colourful, generalGoods, goods, morsels, namesakes, scented } from '../../language/lexicon/goods.ts';
import { adverbs, determiners } from '../../language/lexicon/grammar.ts';
import {
  containers,
  counts,
  fractions,
  measureWords,
  sizes,
  typedSizes,
  units,
} from '../../language/lexicon/measures.ts';
import {
  adjectiveEndings,
  adjectives,
  colours,
  flavours,
  materials,
  notAdjectives,
  scents,
  shades,
  thingColours,
} from '../../language/lexicon/qualities.ts';
import { plainAdjectives } from '../../language/lexicon/wordnet/adjectives.ts';
import { ambiguousFoods, foods } from '../../language/lexicon/wordnet/foods.ts';
import { ambiguous, devices, homeware, wearables } from '../../language/lexicon/wordnet/goods.ts';
import { peoples, places } from '../../language/lexicon/wordnet/names.ts';
import { hues, stuffs } from '../../language/lexicon/wordnet/stuffs.ts';

/** A word of a name. */
export interface NameWord extends Word {
  /** A hyphen joins it to the word before: "hand-poured". */
  readonly hyphened?: boolean;
}
/** Sizes that stand alone before a thing and tell nothing of what it is. */
export const FALL_AWAY = wordsOfAll(
  typedSizes,
  wordSet('medium maxi huge xs s l xl xxl xxxl extralarge xlarge size sized petite'),
);

/** Whether a word is a number, in figures or in letters. */
export const isNumber = (word: Word): boolean => /^[\d½¼¾⅓⅔⅛]/.test(word.folded) || counts.has(word.folded);
/** Sizes of paper, ISO 216. */
const PAPER = /^[abc](?:[0-9]|10)$/;

/** Whether a word is a size by itself: "30cm", "30x40", or a size of paper. */
export const isMeasured = (word: Word): boolean => {
  if (PAPER.test(word.folded)) return true;
  const unit = /^[\d.,½¼¾/x×]+([a-z]*)$/.exec(word.folded)?.[1];
  return unit !== undefined && unit !== '' && (units.has(unit) || unit === 'x');
};

/*
 * What is written by hand comes first: it knows the trade. WordNet's lists are wider, and speak only where the others
 * say nothing.
 */
const listedByHand = ({ folded, key }: Word): boolean =>
  goods.has(key) ||
  [colours, thingColours, materials, adjectives, sizes, units, shades].some((list) => list.has(folded));

/** Whether a word is a maker's number: "mk2", "rx100", "iii". */
export const isCode = ({ folded }: Word): boolean =>
  /^[a-z]{1,4}\d+[a-z]?$/.test(folded) || /^(?:i{2,3}|iv|vi{1,3}|ix|xi{1,2})$/.test(folded);

/** Whether a word is a colour. */
export const isColour = (word: Word): boolean =>
  colours.has(word.folded) || (hues.has(word.folded) && !listedByHand(word));
/** Whether a word is a material. */
export const isMaterial = (word: Word): boolean =>
  materials.has(word.folded) || (stuffs.has(word.folded) && !listedByHand(word));
/** Whether a word is the name of a place, and of nothing else. */
export const isPlace = ({ folded, key }: Word): boolean => places.has(folded) && !goods.has(key);
/** Whether a folded word looks like a participle that describes: "painted", not "seed". Common practice, no source. */
export const endsAsParticiple = (folded: string): boolean =>
  folded.length > 3 && folded.endsWith('ed') && !folded.endsWith('eed') && !notAdjectives.has(folded);

/** Whether a word describes, by our lists and by its ending. */
export const isAdjective = ({ folded, key }: Word): boolean =>
  adjectives.has(folded) ||
  (!notAdjectives.has(folded) &&
    !notAdjectives.has(key) &&
    !goods.has(key) &&
    (plainAdjectives.has(folded) ||
      peoples.has(folded) ||
      adjectiveEndings.test(folded) ||
      endsAsParticiple(folded)));

/** Whether a word is of what is worn. */
export const isWorn = (word: Word): boolean => wearables.has(word.key) || wearables.has(word.folded);
/** Whether people choose such a thing by its colour: what they wear, and what stands in their rooms. */
export const isChosenByColour = (word: Word): boolean =>
  colourful.has(word.key) ||
  ((isWorn(word) || isHomeware(word)) && !ambiguous.has(word.key) && !generalGoods.has(word.key));

/** Whether a word is of what holds things or furnishes a home. */
export const isHomeware = (word: Word): boolean => homeware.has(word.key) || homeware.has(word.folded);

/** Whether a word is of what is eaten, and so of what things smell and taste of. */
export const isEaten = ({ folded, key }: Word): boolean =>
  foods.has(key) || flavours.has(folded) || morsels.has(key);

/** Whether a word is a scent or a flavour. */
export const isFlavour = (word: Word): boolean =>
  scents.has(word.folded) || (isEaten(word) && !materials.has(word.folded));

/** Whether a thing is sold in several scents or flavours. */
export const isFlavoured = ({ key }: Word): boolean => foods.has(key) || scented.has(key);

/** Whether a list has a word as a thing that is sold. */
export const isListedGoods = (word: Word): boolean =>
  goods.has(word.key) ||
  goods.has(word.folded) ||
  (!listedByHand(word) && (isWorn(word) || isHomeware(word) || devices.has(word.key) || foods.has(word.key)));

/** Whether a word names a thing that is sold, by the lists and by the endings of things that do something. */
export const isGoods = (word: Word): boolean =>
  isListedGoods(word) || (/(?:[a-z]{3}(?:er|or)|holder)$/.test(word.key) && !adjectives.has(word.key));

/** Whether a thing is hardly anything without what it is for or what it holds. */
export const isGeneral = (word: Word): boolean => containers.has(word.folded) || generalGoods.has(word.key);

/**
 * Whether people type the word by itself for the thing: what is worn, what WordNet has in this one meaning, and the
 * commonest of the others. A box, a pad or a stand is nothing without what it is for.
 */
export const namesItself = (word: Word): boolean =>
  !isGeneral(word) &&
  (namesakes.has(word.key) ||
    isWorn(word) ||
    ((isHomeware(word) || devices.has(word.key)) && !ambiguous.has(word.key)) ||
    (foods.has(word.key) && !ambiguousFoods.has(word.key)));

/** Whether a word only describes: a phrase of such words alone names nothing. */
export const describes = (word: Word): boolean =>
  isColour(word) ||
  isMaterial(word) ||
  isAdjective(word) ||
  isNumber(word) ||
  isMeasured(word) ||
  sizes.has(word.folded) ||
  shades.has(word.folded) ||
  determiners.has(word.folded) ||
  adverbs.has(word.folded);

/** Words that a number in front makes a measure of: "1.2 litre", "5 light chandelier", "2 x 30 cm". */
export const measureEnd = (words: readonly NameWord[], from: number): number => {
  let at = from;
  const first = words[at];
  if (first && measureWords.has(first.folded) && words[at + 1] && isNumber(itemAt(words, at + 1))) at++;
  const part = words[at];
  const whole = words[at + 1];
  if (part && fractions.has(part.folded) && whole && (units.has(whole.folded) || counts.has(whole.folded)))
    return at + 2;
  // "half a dozen", "half a litre"
  if (part && fractions.has(part.folded) && whole?.folded === 'a') {
    const of = words[at + 2];
    return of && (units.has(of.folded) || counts.has(of.folded)) ? at + 3 : from;
  }
  const number = words[at];
  // "two-tone" counts nothing.
  if (whole?.hyphened && !units.has(whole.folded) && !isNumber(whole)) return from;
  if (!number || !(isNumber(number) || isMeasured(number))) return from;
  at++;
  for (let word = words[at]; word && (isNumber(word) || isMeasured(word) || /^[x×]$/.test(word.folded)); ) {
    at++;
    word = words[at];
  }
  // Some units are things too: only a word that leaves another after it can be a measure's.
  const unit = words[at];
  if (unit && units.has(unit.folded) && !counts.has(unit.folded)) at++;
  return at;
};
/** What a size before it is said of, and not of the thing: a small batch of jam, food for a large breed. */
const HAVE_SIZES = wordSet('batch breed scale');

/** Whether a determiner or a size stands alone: not the "small" of "small batch". */
export const fallsAway = (words: readonly NameWord[], at: number): boolean => {
  const { folded } = itemAt(words, at);
  const next = words[at + 1];
  if (next && (next.hyphened || HAVE_SIZES.has(next.folded))) return false;
  return determiners.has(folded) || FALL_AWAY.has(folded);
};
