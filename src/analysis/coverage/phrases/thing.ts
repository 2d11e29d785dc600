/** One thing that a name speaks of: which of its words says what it is, which tell it apart, which fall away. */
import { itemAt, lastOf } from '../../../text/item-at.ts';
import type { Word } from '../../language/language.ts';
import { generalGoods } from '../../language/lexicon/goods.ts';
import { adverbs, determiners, prepositions } from '../../language/lexicon/grammar.ts';
import {
  assortments,
  collectives,
  containers,
  sizes,
  typedSizes,
  units,
} from '../../language/lexicon/measures.ts';
import {
  adjectives,
  beforeStuff,
  namingPairs,
  thingColours,
  trailingMaterials,
} from '../../language/lexicon/qualities.ts';
import { audiences, people, roomBefore, rooms } from '../../language/lexicon/settings.ts';
import { foods } from '../../language/lexicon/wordnet/foods.ts';
import { areOneName, type Modifier, modifiersOf } from './modifiers.ts';
import {
  describes,
  endsAsParticiple,
  FALL_AWAY,
  fallsAway,
  isAdjective,
  isCode,
  isColour,
  isGoods,
  isHomeware,
  isListedGoods,
  isMaterial,
  isMeasured,
  isNumber,
  isPlace,
  measureEnd,
  type NameWord,
} from './name-words.ts';

/** One thing that a name speaks of. */
export interface Thing {
  /** Words before the head that tell it apart, in order, the kind's own among them. */
  readonly modifiers: readonly Modifier[];
  readonly head: Word;
  /** The head with the nouns before it that say what it is: "watering can". */
  readonly kind: readonly Word[];
  /** Whether its kind is the record's own. */
  readonly isStated?: boolean;
  /** Colours, materials and other qualities that stand after it: "plant mister brass". */
  readonly trailing: readonly Word[];
  /** Its size, as people type it: "mini". */
  readonly size?: Word;
  /** Whom it is for, where that stands behind: "slipper socks women". */
  readonly whom?: Word;
  /** What several of it are sold as, where that stands behind: "bracelet set". */
  readonly counted?: Word;
}
/** Sizes that close a phrase as things do: a sewing counter, a shirt pocket. */
const NOT_TRAILING = new Set([
  'counter',
  'pocket',
  'travel',
  'family',
  'bulk',
  'plus',
  'giant',
  'standard',
  'junior',
]);
/** Who works on a material that stands before it: a tin opener is not made of tin. */
const WORKS_ON =
  /^(?:open|cut|clean|polish|trimm|stripp|paint|burn|carv|punch|shredd|splitt|strengthen|fill)(?:er)?s?$/;
const withoutFront = (words: readonly NameWord[]): readonly NameWord[] => {
  let at = 0;
  for (;;) {
    const word = words[at];
    if (!word) return words;
    const end = measureEnd(words, at);
    if (end > at && end < words.length) {
      at = end;
      // "two pairs of": the counted container is seen through with its `of`, elsewhere.
      continue;
    }
    if (fallsAway(words, at) && at < words.length - 1) at++;
    else return words.slice(at);
  }
};

/** Whether the last of some words only describes what is before it. */
const trails = (words: readonly Word[]): boolean => {
  const last = lastOf(words);
  const before = itemAt(words, words.length - 2);
  const { folded } = last;
  if (isNumber(last) || isMeasured(last) || isCode(last) || /^[x×]$/.test(folded)) return true;
  if (adverbs.has(folded) || determiners.has(folded) || prepositions.has(folded)) return true;
  if ((units.has(folded) || containers.has(folded)) && isNumber(before)) return true;
  if (sizes.has(folded)) return !NOT_TRAILING.has(folded);
  if (namingPairs.has(`${before.folded} ${folded}`)) return false;
  if (isAdjective(last)) return true;
  if (audiences.has(folded)) return last.key !== folded || folded.endsWith("'s") || isGoods(before);
  const described = isGoods(before) || before.key !== before.folded;
  // What a maker calls it: "memory foam rug galveston".
  if (isPlace(last)) return described;
  if (rooms.has(folded)) return described;
  if (folded === 'room') return words.length > 2 && roomBefore.has(before.folded);
  if (thingColours.has(folded) && !trailingMaterials.has(folded)) {
    // Past other qualities: "candle soy lavender".
    const thing = words.slice(0, -1).findLast((word) => !describes(word));
    return thing !== undefined && isListedGoods(thing);
  }
  if (trailingMaterials.has(folded)) return !beforeStuff.has(before.folded) && !before.folded.endsWith('ing');
  return isColour(last);
};

/** "squirrel proof", "battery operated", "wall mounted": the noun before belongs to the quality behind a thing. */
const joinsQuality = (words: readonly Word[], end: number): boolean => {
  const [thing, noun, quality] = words.slice(end - 3, end) as [Word, Word, Word];
  return (
    end > 2 &&
    (/^(?:proof|resistant|friendly|free|safe|shaped|style|only)$/.test(quality.folded) ||
      endsAsParticiple(quality.folded)) &&
    (isListedGoods(thing) || thing.key !== thing.folded) &&
    !isGoods(noun) &&
    !containers.has(noun.folded)
  );
};

const withoutBack = (words: readonly NameWord[]): readonly NameWord[] => {
  let end = words.length;
  while (end > 1 && !words.slice(0, end - 1).every(describes)) {
    if (joinsQuality(words, end)) end -= 2;
    else if (trails(words.slice(0, end))) end--;
    else break;
  }
  return words.slice(0, end);
};

/** Where the head stands: the last word, unless things in the plural stand before a tail in the singular. */
const headOf = (words: readonly Word[]): number => {
  const last = words.length - 1;
  const end = itemAt(words, last);
  if (end.key !== end.folded) return last;
  // "sinks bed frame", "lights pathway", but not "tools box": an English modifier is singular, unless it touches a thing.
  const touches = isGoods(end) || containers.has(end.folded) || end.folded.endsWith('ing');
  for (let i = touches ? last - 2 : last - 1; i >= 0; i--) {
    const word = itemAt(words, i);
    if (word.key !== word.folded && isListedGoods(word) && !audiences.has(word.folded)) return i;
  }
  return last;
};
/**
 * The head with what names it: the noun before it, and expressions that are one name. A noun further off tells it apart:
 * a security window lock is a window lock.
 */
const kindOf = (modifiers: readonly Modifier[], head: Word): readonly Word[] => {
  const kind: Word[] = [head];
  let named = false;
  for (let i = modifiers.length - 1; i >= 0; i--) {
    const { words, quality } = itemAt(modifiers, i);
    const [word] = words;
    const next = itemAt(kind, 0);
    const isOne = word !== undefined && words.length === 1 && areOneName(word, next);
    // "Scratching post cover": what is done with a thing belongs to its name.
    const isDone =
      words.length === 1 && /.{3}ing$/.test(word?.folded ?? '') && !adjectives.has(word?.folded ?? '');
    if (named && !isOne && !(isDone && next !== head)) break;
    if (quality === 'name') {
      kind.unshift(...words);
      named = true;
      continue;
    }
    if (!word || words.length > 1) break;
    const worked = next === head && WORKS_ON.test(head.key);
    if (!isOne && !worked && (quality !== 'other' || (isAdjective(word) && !word.folded.endsWith('ing'))))
      break;
    kind.unshift(word);
    named = true;
  }
  return kind;
};

/**
 * Whether a set of them is several of the same, "a bracelet set": of food, furniture and what is nothing by itself it is
 * one thing made of several, as a tea set, a table set, a tool set.
 */
const comesInSets = (word: Word): boolean =>
  isListedGoods(word) &&
  !foods.has(word.key) &&
  (!generalGoods.has(word.key) || isHomeware(word)) &&
  !assortments.has(word.key);

/** Whether a word is a quality of a thing and no measure, count or filler. */
const tells = (word: Word): boolean =>
  (isAdjective(word) || rooms.has(word.folded)) && !FALL_AWAY.has(word.folded) && !adverbs.has(word.folded);

/** Reads the words of one thing, without prepositions in them; undefined where there are none. */
export const readThing = (words: readonly NameWord[]): Thing | undefined => {
  const front = withoutFront(words);
  const bare = withoutBack(front);
  if (bare.length === 0) return undefined;
  const last = headOf(bare);
  const before = bare[last - 1];
  const isCounted = before !== undefined && collectives.has(itemAt(bare, last).folded) && comesInSets(before);
  const at = isCounted ? last - 1 : last;
  const head = itemAt(bare, at);
  const modifiers = modifiersOf(bare.slice(0, at), head);
  const size = words.find((word, i) => typedSizes.has(word.folded) && fallsAway(words, i) && word !== head);
  const behind = [...bare.slice(last + 1), ...front.slice(bare.length)];
  const whom = behind.find(({ folded }) => people.has(folded));
  const trailing = behind.filter(
    (word) => isColour(word) || isMaterial(word) || thingColours.has(word.folded) || tells(word),
  );
  return {
    modifiers,
    head,
    kind: kindOf(modifiers, head),
    trailing,
    ...(size && { size }),
    ...(whom && { whom }),
    ...(isCounted && { counted: itemAt(bare, last) }),
  };
};

/** Whether words say only how a thing is, how large or how many. */
export const onlyDescribes = (words: readonly Word[]): boolean => words.every(describes);

/** Whether the first word names a thing that is sold. */
export const startsWithGoods = (words: readonly Word[]): boolean => {
  const [first] = words;
  return first !== undefined && isGoods(first);
};
