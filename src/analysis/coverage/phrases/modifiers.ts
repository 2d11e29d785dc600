/** The words before a thing's head, in groups that are one quality each. */
import { itemAt, lastOf } from '../../../text/item-at.ts';
import type { Word } from '../../language/language.ts';
import {
  determiners,
  fixedNames,
  particles,
  prepositions,
  turnsOfPhrase,
  verbsWithParticles,
} from '../../language/lexicon/grammar.ts';
import {
  flavours,
  namingPairs,
  pairedQualities,
  partsOfClothes,
  partsOfThings,
  shades,
  thingColours,
} from '../../language/lexicon/qualities.ts';
import { people } from '../../language/lexicon/settings.ts';
import { foodPairs } from '../../language/lexicon/wordnet/foods.ts';
import { thingPairs } from '../../language/lexicon/wordnet/pairs.ts';
import {
  describes,
  fallsAway,
  isColour,
  isMaterial,
  isWorn,
  measureEnd,
  type NameWord,
} from './name-words.ts';

/** What a word before the head tells; `people`: for whom it is. */
type Quality = 'color' | 'material' | 'name' | 'people' | 'other';

/** One or more words that go together before the head: "rose gold", "plant". */
export interface Modifier {
  readonly words: readonly Word[];
  readonly quality: Quality;
}
const pairs = (a: Word | undefined, b: Word | undefined): boolean =>
  a !== undefined && b !== undefined && pairedQualities.has(`${a.folded} ${b.folded}`);

/** Whether two words are one name, of a thing or in front of one: "sweet pea", "peanut butter". */
export const areOneName = (word: Word, next: Word): boolean =>
  namingPairs.has(`${word.folded} ${next.key}`) ||
  namingPairs.has(`${word.folded} ${next.folded}`) ||
  foodPairs.has(`${word.folded}_${next.key}`) ||
  thingPairs.has(`${word.folded}_${next.key}`);

const qualityOf = (word: Word): Quality => {
  if (people.has(word.folded)) return 'people';
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
  const word = itemAt(words, at);
  const next = words[at + 1];
  // "make your own kit"
  if (next?.folded === 'your' && words[at + 2]?.folded === 'own') return 3;
  const opens = prepositions.has(word.folded);
  const joins = next !== undefined && verbsWithParticles.has(word.folded) && particles.has(next.folded);
  if (!opens && !joins) return 0;
  let end = at + (joins ? 2 : 1);
  const determined = determiners.has(words[end]?.folded ?? '');
  if (determined) end++;
  if (opens || determined || next?.folded === 'in') end++;
  return Math.min(end, words.length) - at;
};

/** How many words hyphens hold together here: 2 in "hand-poured candle". */
const hyphenedAt = (words: readonly NameWord[], at: number): number => {
  let end = at + 1;
  while (words[end]?.hyphened) end++;
  return end - at;
};

/** "Pull-along", "hand-in-hand": how it moves or stands, not what it is. */
const holdsSmallWord = (group: readonly NameWord[]): boolean =>
  group.some(({ folded }, i) => i > 0 && (prepositions.has(folded) || particles.has(folded)));

const hyphenGroup = (group: readonly NameWord[], head: NameWord): Modifier => ({
  words: group,
  // "sea-salt caramels" are named so, "hand-poured candles" are made so.
  quality:
    head.hyphened || !(describes(itemAt(group, 0)) || describes(lastOf(group)) || holdsSmallWord(group))
      ? 'name'
      : 'other',
});

const fixedGroup = (words: readonly NameWord[], at: number): Modifier | undefined => {
  const fixed = fixedAt(words, at);
  const length = fixed?.length ?? groupAt(words, at);
  return length > 0
    ? { words: words.slice(at, at + length), quality: fixed?.names ? 'name' : 'other' }
    : undefined;
};

/** The modifier that begins at a word. */
const modifierAt = (words: readonly NameWord[], at: number, head: NameWord): Modifier => {
  const hyphened = hyphenedAt(words, at);
  const fixed = fixedGroup(words, at);
  // A small word inside hyphens opens nothing: "pull-along", "to-do".
  if (fixed && fixed.words.length >= hyphened) return fixed;
  const word = itemAt(words, at);
  const next = words[at + 1];
  // A white tea towel is no towel of white tea.
  if (next && next.folded !== 'tea' && areOneName(word, next))
    return { words: [word, next], quality: 'name' };
  if (hyphened > 1) return hyphenGroup(words.slice(at, at + hyphened), head);
  const takesWord = ({ folded }: Word): boolean =>
    partsOfThings.has(folded) || (partsOfClothes.has(folded) && isWorn(head));
  if (next && takesWord(next)) return { words: [word, next], quality: 'other' };
  const coloured =
    next !== undefined && shades.has(word.folded) && (isColour(next) || thingColours.has(next.folded));
  return next && (coloured || pairs(word, next))
    ? { words: [word, next], quality: coloured ? 'color' : qualityOf(next) }
    : { words: [word], quality: qualityOf(word) };
};

/** Words before the head, in groups that are one quality, without sizes, numbers and measures. */
export const modifiersOf = (words: readonly NameWord[], head: NameWord): readonly Modifier[] => {
  const modifiers: Modifier[] = [];
  let and: Word | undefined;
  for (let i = 0; i < words.length; ) {
    const word = itemAt(words, i);
    const end = measureEnd(words, i);
    if (end > i) i = end;
    else if (fallsAway(words, i) || (word.folded === 'and' && modifiers.length === 0)) i++;
    else if (word.folded === 'and') {
      and = word;
      i++;
    } else {
      const modifier = modifierAt(words, i, head);
      i += modifier.words.length;
      const before = and && modifiers.pop();
      modifiers.push(
        and && before
          ? {
              words: [...before.words, and, ...modifier.words],
              quality:
                before.quality === modifier.quality && modifier.quality !== 'name'
                  ? modifier.quality
                  : 'other',
            }
          : modifier,
      );
      and = undefined;
    }
  }
  return modifiers;
};
