/** One thing that a name speaks of: which of its words says what it is, which tell it apart, which fall away. */
import type { Word } from '../language/language.ts';
import { goods } from '../language/lexicon/goods.ts';
import {
  adverbs,
  determiners,
  fixedNames,
  particles,
  prepositions,
  turnsOfPhrase,
  verbsWithParticles,
} from '../language/lexicon/grammar.ts';
import { containers, counts, fractions, measureWords, sizes, units } from '../language/lexicon/measures.ts';
import {
  adjectiveEndings,
  adjectives,
  beforeStuff,
  colours,
  flavours,
  materials,
  namingPairs,
  notAdjectives,
  pairedQualities,
  shades,
  thingColours,
  trailingMaterials,
} from '../language/lexicon/qualities.ts';
import { audiences, roomBefore, rooms } from '../language/lexicon/settings.ts';

/** What a word before the head tells. */
export type Quality = 'color' | 'material' | 'name' | 'other';

/** One or more words that go together before the head: "rose gold", "plant". */
export interface Modifier {
  readonly words: readonly Word[];
  readonly quality: Quality;
}

export interface Thing {
  /** Words before the head that tell it apart, in order, the kind's own among them. */
  readonly modifiers: readonly Modifier[];
  readonly head: Word;
  /** The head with the nouns before it that say what it is: "watering can". */
  readonly kind: readonly Word[];
  /** Colours, materials and other qualities that stand after it: "plant mister brass". */
  readonly trailing: readonly Word[];
}

/** Sizes that stand alone before a thing and tell nothing of what it is. */
const FALL_AWAY = new Set([
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

export const isNumber = (word: Word): boolean => /^[\d½¼¾⅓⅔⅛]/.test(word.folded) || counts.has(word.folded);
const isMeasured = (word: Word): boolean => {
  const unit = /^[\d.,½¼¾/x×]+([a-z]*)$/.exec(word.folded)?.[1];
  return unit !== undefined && unit !== '' && (units.has(unit) || unit === 'x');
};

export const isColour = (word: Word): boolean => colours.has(word.folded);
export const isMaterial = (word: Word): boolean => materials.has(word.folded);
const isParticiple = (folded: string): boolean =>
  folded.length > 4 && folded.endsWith('ed') && !folded.endsWith('eed') && !notAdjectives.has(folded);
export const isAdjective = ({ folded, key }: Word): boolean =>
  adjectives.has(folded) ||
  (!notAdjectives.has(folded) &&
    !notAdjectives.has(key) &&
    !goods.has(key) &&
    (adjectiveEndings.test(folded) || isParticiple(folded)));
const isGoods = ({ folded, key }: Word): boolean =>
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
const measureEnd = (words: readonly Word[], from: number): number => {
  let at = from;
  const first = words[at];
  if (first && measureWords.has(first.folded) && words[at + 1] && isNumber(words[at + 1] as Word)) at++;
  const part = words[at];
  const whole = words[at + 1];
  if (part && fractions.has(part.folded) && whole && (units.has(whole.folded) || counts.has(whole.folded)))
    return at + 2;
  const number = words[at];
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

const withoutFront = (words: readonly Word[]): readonly Word[] => {
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
    if ((determiners.has(word.folded) || FALL_AWAY.has(word.folded)) && at < words.length - 1) at++;
    else return words.slice(at);
  }
};

/** Whether the last of some words only describes what is before it. */
const trails = (words: readonly Word[]): boolean => {
  const last = words.at(-1) as Word;
  const before = words.at(-2) as Word;
  const { folded } = last;
  if (isNumber(last) || isMeasured(last) || /^[x×]$/.test(folded)) return true;
  if (adverbs.has(folded) || determiners.has(folded)) return true;
  if ((units.has(folded) || containers.has(folded)) && isNumber(before)) return true;
  if (sizes.has(folded)) return !NOT_TRAILING.has(folded);
  if (namingPairs.has(`${before.folded} ${folded}`)) return false;
  if (isAdjective(last)) return true;
  if (audiences.has(folded)) return last.key !== folded || folded.endsWith("'s") || isGoods(before);
  const described = isGoods(before) || before.key !== before.folded;
  if (rooms.has(folded)) return described;
  if (folded === 'room') return words.length > 2 && roomBefore.has(before.folded);
  if (thingColours.has(folded) && !trailingMaterials.has(folded)) return goods.has(before.key);
  if (trailingMaterials.has(folded)) return !beforeStuff.has(before.folded) && !before.folded.endsWith('ing');
  return isColour(last);
};

const withoutBack = (words: readonly Word[]): readonly Word[] => {
  let end = words.length;
  while (end > 1 && trails(words.slice(0, end)) && !words.slice(0, end - 1).every(describes)) end--;
  return words.slice(0, end);
};

/** Where the head stands: the last word, unless things in the plural stand before a tail in the singular. */
const headOf = (words: readonly Word[]): number => {
  const last = words.length - 1;
  const end = words[last] as Word;
  if (end.key !== end.folded) return last;
  // "sinks bed frame", but not "tools box": an English modifier is singular, unless it touches its thing.
  for (let i = last - 2; i >= 0; i--) {
    const word = words[i] as Word;
    if (word.key !== word.folded && goods.has(word.key) && !audiences.has(word.folded)) return i;
  }
  return last;
};

const pairs = (a: Word | undefined, b: Word | undefined): boolean =>
  a !== undefined && b !== undefined && pairedQualities.has(`${a.folded} ${b.folded}`);

const qualityOf = (word: Word): Quality => {
  if (isColour(word) || (thingColours.has(word.folded) && !flavours.has(word.folded) && !isMaterial(word)))
    return 'color';
  return isMaterial(word) ? 'material' : 'other';
};

/** The fixed expression that begins at a word, if one does, and whether it names a thing. */
export const fixedAt = (
  words: readonly Word[],
  at: number,
): { readonly length: number; readonly names: boolean } | undefined => {
  const isHere = (expression: readonly string[]): boolean =>
    expression.every((part, i) => words[at + i]?.folded === part);
  const name = fixedNames.find(isHere);
  const found = name ?? turnsOfPhrase.find(isHere);
  return found && { length: found.length, names: found === name };
};

/** How many words belong to a small word in front of a thing: "over the door", "glow in the dark", "clip on". */
const groupAt = (words: readonly Word[], at: number): number => {
  const word = words[at] as Word;
  const next = words[at + 1];
  const opens = prepositions.has(word.folded);
  const joins = next !== undefined && verbsWithParticles.has(word.folded) && particles.has(next.folded);
  if (!opens && !joins) return 0;
  let end = at + (joins ? 2 : 1);
  const determined = determiners.has(words[end]?.folded ?? '');
  if (determined) end++;
  if (opens || determined || next?.folded === 'in') end++;
  return Math.min(end, words.length) - at;
};

/** Words before the head, in groups that are one quality, without sizes, numbers and measures. */
const modifiersOf = (words: readonly Word[]): readonly Modifier[] => {
  const modifiers: Modifier[] = [];
  for (let i = 0; i < words.length; i++) {
    const end = measureEnd(words, i);
    if (end > i) {
      i = end - 1;
      continue;
    }
    const fixed = fixedAt(words, i);
    const grouped = fixed?.length ?? groupAt(words, i);
    if (grouped > 0) {
      modifiers.push({ words: words.slice(i, i + grouped), quality: fixed?.names ? 'name' : 'other' });
      i += grouped - 1;
      continue;
    }
    const word = words[i] as Word;
    const next = words[i + 1];
    if (FALL_AWAY.has(word.folded) || determiners.has(word.folded)) continue;
    const before = modifiers.at(-1);
    if (word.folded === 'and' && before && next) {
      const both = [...before.words, word, next];
      modifiers.splice(-1, 1, {
        words: both,
        quality: before.quality === qualityOf(next) ? before.quality : 'other',
      });
      i++;
      continue;
    }
    const coloured =
      next !== undefined && shades.has(word.folded) && (isColour(next) || thingColours.has(next.folded));
    if (next && (coloured || pairs(word, next))) {
      modifiers.push({ words: [word, next], quality: coloured ? 'color' : qualityOf(next) });
      i++;
    } else modifiers.push({ words: [word], quality: qualityOf(word) });
  }
  return modifiers;
};

const kindOf = (modifiers: readonly Modifier[], head: Word): readonly Word[] => {
  const kind: Word[] = [head];
  for (let i = modifiers.length - 1; i >= 0; i--) {
    const { words, quality } = modifiers[i] as Modifier;
    const [word] = words;
    if (quality === 'name') {
      kind.unshift(...words);
      continue;
    }
    if (!word || words.length > 1) break;
    const next = kind[0] as Word;
    const named =
      namingPairs.has(`${word.folded} ${next.key}`) || namingPairs.has(`${word.folded} ${next.folded}`);
    const worked = next === head && WORKS_ON.test(head.key);
    if (!named && !worked && (quality !== 'other' || (isAdjective(word) && !word.folded.endsWith('ing'))))
      break;
    kind.unshift(word);
  }
  return kind;
};

/** Whether a word is a quality of a thing and no measure, count or filler. */
const tells = (word: Word): boolean =>
  (isAdjective(word) || rooms.has(word.folded)) && !FALL_AWAY.has(word.folded) && !adverbs.has(word.folded);

/** Reads the words of one thing, without prepositions in them; undefined where there are none. */
export const readThing = (words: readonly Word[]): Thing | undefined => {
  const front = withoutFront(words);
  const bare = withoutBack(front);
  if (bare.length === 0) return undefined;
  const at = headOf(bare);
  const head = bare[at] as Word;
  const modifiers = modifiersOf(bare.slice(0, at));
  const trailing = [...bare.slice(at + 1), ...front.slice(bare.length)].filter(
    (word) => isColour(word) || isMaterial(word) || thingColours.has(word.folded) || tells(word),
  );
  return { modifiers, head, kind: kindOf(modifiers, head), trailing };
};

/** Whether words say only how a thing is, how large or how many. */
export const onlyDescribes = (words: readonly Word[]): boolean => words.every(describes);

export const startsWithGoods = (words: readonly Word[]): boolean => {
  const [first] = words;
  return first !== undefined && isGoods(first);
};
