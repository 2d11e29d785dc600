/** What single words of a name are, before anything is known of the name: measures, colours, adjectives, things. */
import { itemAt } from '../../../text/item-at.ts';
import type { Word } from '../../language/language.ts';
import { goods } from '../../language/lexicon/goods.ts';
import { adverbs, determiners } from '../../language/lexicon/grammar.ts';
import { counts, fractions, measureWords, sizes, units } from '../../language/lexicon/measures.ts';
import {
  adjectiveEndings,
  adjectives,
  colours,
  materials,
  notAdjectives,
  shades,
} from '../../language/lexicon/qualities.ts';

/** A word of a name. */
export interface NameWord extends Word {
  /** A hyphen joins it to the word before: "hand-poured". */
  readonly hyphened?: boolean;
}
/** Sizes that stand alone before a thing and tell nothing of what it is. */
export const FALL_AWAY = new Set([
  'small',
  'medium',
  'large',
  'mini',
  'maxi',
  'big',
  'tiny',
  'little',
  'giant',
  'jumbo',
  'huge',
  'xs',
  's',
  'l',
  'xl',
  'xxl',
  'xxxl',
  'oversized',
  'oversize',
  'extralarge',
  'xlarge',
  'miniature',
  'size',
  'sized',
  'petite',
  'compact',
]);

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

/** Whether a word is a colour. */
export const isColour = (word: Word): boolean => colours.has(word.folded);
/** Whether a word is a material. */
export const isMaterial = (word: Word): boolean => materials.has(word.folded);
/** Whether a folded word looks like a participle that describes: "painted", not "seed". Common practice, no source. */
export const endsAsParticiple = (folded: string): boolean =>
  folded.length > 3 && folded.endsWith('ed') && !folded.endsWith('eed') && !notAdjectives.has(folded);

/** Whether a word describes, by our lists and by its ending. */
export const isAdjective = ({ folded, key }: Word): boolean =>
  adjectives.has(folded) ||
  (!notAdjectives.has(folded) &&
    !notAdjectives.has(key) &&
    !goods.has(key) &&
    (adjectiveEndings.test(folded) || endsAsParticiple(folded)));

/** Whether a word names a thing that is sold, by our list and by the endings of things that do something. */
export const isGoods = ({ folded, key }: Word): boolean =>
  goods.has(key) || goods.has(folded) || (/(?:[a-z]{3}(?:er|or)|holder)$/.test(key) && !adjectives.has(key));

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
/** Whether a determiner or a size stands alone: not the "small" of "small-batch". */
export const fallsAway = (words: readonly NameWord[], at: number): boolean => {
  const { folded } = itemAt(words, at);
  return (determiners.has(folded) || FALL_AWAY.has(folded)) && !words[at + 1]?.hyphened;
};
