/** The phrases that one thing of a name gives: what a shopper would type who has seen the thing, or looks for such a one. */
import { lastOf } from '../../../text/item-at.ts';
import { singularOf } from '../../../text/singular.ts';
import type { Word } from '../../language/language.ts';
import { goods, namedGoods, petGoods } from '../../language/lexicon/goods.ts';
import { determiners } from '../../language/lexicon/grammar.ts';
import { praise } from '../../language/lexicon/qualities.ts';
import { people, pets, rooms } from '../../language/lexicon/settings.ts';
import { animals } from '../../language/lexicon/wordnet/animals.ts';
import type { Modifier } from './modifiers.ts';
import {
  describes,
  fallsAway,
  isAdjective,
  isColour,
  isEaten,
  isFlavour,
  isMaterial,
  isNumber,
  isWorn,
  namesItself,
} from './name-words.ts';
import type { Thing } from './thing.ts';

/** What a phrase keeps of the name it was taken from. */
export type NameOrigin =
  | 'name without its measure'
  | 'name without its other qualities'
  | 'end of the name'
  | 'kind in the name'
  | 'thing by itself'
  | 'kind with its size'
  | 'whom or what it is for'
  | 'name';

/** A phrase that a name gives. */
export interface NamePhrase {
  /** Lower case, accents kept, one space between words. */
  readonly text: string;
  readonly origin: NameOrigin;
  /** The word of `text` that says what the thing is, counted from 0. */
  readonly head: number;
}

/** Words as a shopper would type them. */
export const textOf = (words: readonly Word[]): string =>
  words
    .map(({ text, start }, i) => {
      // Scripts without spaces: two words with nothing between them are written so.
      const space = i === 0 || words[i - 1]?.end === start ? '' : ' ';
      return space + text.toLowerCase().replace(/[\u2018\u02bc]/g, '’');
    })
    .join('');

/** All words of some modifiers, in order. */
export const wordsOf = (modifiers: readonly Modifier[]): readonly Word[] =>
  modifiers.flatMap(({ words }) => words);

const phrase = (words: readonly Word[], head: Word, origin: NameOrigin): NamePhrase => ({
  text: textOf(words),
  origin,
  head: words.indexOf(head),
});

/** Longer endings are the name again, and nobody types them. */
const LONGEST_ENDING = 3;

/** Modifiers of one thing that are tried one by one with its kind, the nearest first. */
const MOST_MODIFIERS = 3;

/** A noun further from the head than this is mostly the maker's: the mill of a "mill security window lock". */
const NEAR = 2;

/**
 * What each single quality is put before: the thing by itself where that is typed ("embroidered sweatshirt"), else the
 * kind ("enamel watering can"). What the record calls its kind stays whole, but for what is worn.
 */
const baseOf = ({ head, kind, isStated }: Thing): readonly Word[] =>
  namesItself(head) && (!isStated || isWorn(head)) ? [head] : kind;

/** Whether a modifier by itself tells such a thing from others: no praise, and no noun that stands far off. */
const isTelling = ({ words, quality }: Modifier, distance: number, head: Word): boolean =>
  !words.some(({ folded }) => praise.has(folded)) &&
  // The colour of food is nobody's wish.
  !(isEaten(head) && words.every(isColour)) &&
  (quality !== 'other' || words.length > 1 || distance <= NEAR || words.every(isAdjective));

/**
 * Whether a modifier may be said without the rest of a title: of "Quiet Evening mint tea" mint may, quiet and evening
 * may not.
 */
const isNoTitle = ({ words, quality }: Modifier, head: Word): boolean =>
  !namedGoods.has(head.key) ||
  quality === 'people' ||
  words.every(
    (word) => isFlavour(word) || isColour(word) || isMaterial(word) || (isAdjective(word) && !isEaten(head)),
  );

const endingsOf = ({ modifiers, head, kind }: Thing): readonly NamePhrase[] =>
  modifiers.slice(1).flatMap((first, i) => {
    if (!isNoTitle(first, head)) return [];
    const words = [...wordsOf(modifiers.slice(i + 1)), head];
    return words.length > kind.length && words.length <= LONGEST_ENDING
      ? [phrase(words, head, 'end of the name')]
      : [];
  });

const singleQualities = (thing: Thing): readonly NamePhrase[] => {
  const { modifiers, head } = thing;
  const base = baseOf(thing);
  return [...modifiers]
    .reverse()
    .flatMap((modifier, i) =>
      modifier.words.some((word) => base.includes(word)) ||
      !isTelling(modifier, i + 1, head) ||
      !isNoTitle(modifier, head)
        ? []
        : [modifier],
    )
    .slice(0, MOST_MODIFIERS)
    .map(({ words, quality }) => {
      const said = quality === 'people' ? people.get(words[0]?.folded ?? '')?.before : undefined;
      return said === undefined
        ? phrase([...words, ...base], head, 'name without its other qualities')
        : { text: `${said} ${textOf(base)}`, origin: 'whom or what it is for', head: base.length };
    });
};

/** More of them than one: WordNet and our lists have both in the singular. */
export const pluralOf = (noun: string): string => {
  if (singularOf(noun) !== noun) return noun;
  if (/[^aeiou]y$/.test(noun)) return `${noun.slice(0, -1)}ies`;
  return /(?:s|x|z|ch|sh)$/.test(noun) ? `${noun}es` : `${noun}s`;
};

/** Whether a word before a thing says which animals it is for. Of a treat, salmon is what is in it. */
const areFor = (word: Word, { head }: Thing): boolean =>
  petGoods.has(head.key) &&
  (pets.has(word.key) || (animals.has(word.key) && !goods.has(word.key) && !isEaten(head)));

/** Behind the thing whom the words before it name: "sweatshirt for women", "chew toy for dogs". */
const forThoseBefore = (thing: Thing): readonly NamePhrase[] =>
  thing.modifiers.flatMap(({ words, quality }) => {
    const [word] = words;
    if (!word || words.length > 1) return [];
    const whom =
      quality === 'people' ? people.get(word.folded)?.behind : areFor(word, thing) ? pluralOf(word.key) : '';
    const base = baseOf(thing).filter((one) => one !== word);
    return whom
      ? [
          {
            text: `${textOf(base)} for ${whom}`,
            origin: 'whom or what it is for' as const,
            head: base.length - 1,
          },
        ]
      : [];
  });

/** The fullest first. */
export const phrasesOfThing = (thing: Thing): readonly NamePhrase[] => {
  const { modifiers, head, kind, size, whom, counted } = thing;
  const full = [...wordsOf(modifiers), head];
  return [
    ...(counted ? [phrase([...full, counted], head, 'name without its measure')] : []),
    phrase(full, head, counted ? 'end of the name' : 'name without its measure'),
    ...endingsOf(thing),
    ...singleQualities(thing).filter(({ text }) => text !== textOf(kind)),
    phrase(kind, head, 'kind in the name'),
    ...(counted ? [phrase([...kind, counted], head, 'end of the name')] : []),
    ...(kind.length > 1 && namesItself(head) ? [phrase([head], head, 'thing by itself')] : []),
    ...(size ? [phrase([size, ...kind], head, 'kind with its size')] : []),
    ...forThoseBefore(thing),
    ...(whom ? phrasesFor(thing, [whom]) : []),
  ];
};

/** Words after a preposition that a shopper might still type. */
const MOST_PURPOSE = 2;

/** Before and behind a thing whom, where or what it is for: "dog collar", "collar for dogs". */
const phrasesFor = (thing: Thing, purpose: readonly [Word, ...Word[]]): readonly NamePhrase[] => {
  const base = baseOf(thing);
  const origin = 'whom or what it is for';
  const before = (text: string, { length }: readonly Word[]): NamePhrase => ({
    text: `${text} ${textOf(base)}`,
    origin,
    head: length + base.length - 1,
  });
  const behind = (text: string): NamePhrase => ({
    text: `${textOf(base)} for ${text}`,
    origin,
    head: base.length - 1,
  });
  const [first, ...more] = purpose;
  // "gloves for pruning roses": what is done with it, before its object.
  if (/.{3}ing$/.test(first.folded) && !rooms.has(first.folded)) return [before(textOf([first]), [first])];
  const group = more.length === 0 ? people.get(first.folded) : undefined;
  if (group) return [before(group.before, [first]), behind(group.behind)];
  const last = lastOf(purpose);
  if (purpose.length > MOST_PURPOSE || purpose.some(isNumber) || describes(last)) return [];
  const isPlural = last.key !== last.folded;
  const single = isPlural ? `${textOf(purpose.slice(0, -1))} ${last.key}`.trim() : textOf(purpose);
  return [
    ...(purpose.length + base.length > LONGEST_ENDING ? [] : [before(single, purpose)]),
    behind(textOf(purpose)),
  ];
};

/** What is said behind a thing of whom, where or what it is for. */
export const phrasesWithPurpose = (thing: Thing, tail: readonly Word[]): readonly NamePhrase[] => {
  const [preposition, ...rest] = tail;
  const [first, ...more] = rest.filter((word, i) => !determiners.has(word.folded) && !fallsAway(rest, i));
  return preposition?.folded === 'for' && first ? phrasesFor(thing, [first, ...more]) : [];
};

/** The thing before which each of its scents or flavours is put: "lavender soap". */
export const phrasesWithFlavours = (
  { head, kind }: Thing,
  flavours: readonly (readonly Word[])[],
): readonly NamePhrase[] => {
  // A "chilli jam" has its flavour already; the others are in it.
  if (kind.some((word) => word !== head && isFlavour(word))) return [];
  const base = namesItself(head) ? [head] : kind;
  return flavours.map((words) => ({
    text: `${textOf(words)} ${textOf(base)}`,
    origin: 'name without its other qualities',
    head: words.length + base.length - 1,
  }));
};
