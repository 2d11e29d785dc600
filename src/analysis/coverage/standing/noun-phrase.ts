/**
 * The noun phrase that a word stands in, read from its neighbours by word lists. A tagger would know more of a sentence;
 * but a text is counted again for every change that is tried, and waits for no model.
 */
import { itemAt } from '../../../text/item-at.ts';
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
import { NOUNS_IN_ING, PARTICIPLES } from '../../language/word-classes.ts';
import { adjacent } from '../text/adjacent.ts';
import type { Passage, ZonedWord } from '../text/passage.ts';
import {
  AFTER_PLURALS,
  BEFORE_THING_AND_VERB,
  BORDERS,
  GENERAL,
  JOINING_PARTICIPLES,
  JOINING_PREPOSITIONS,
  NAMED_DOINGS,
  OPENERS,
  PASTS,
  VERBS,
} from './neighbour-words.ts';

/** What a word before a noun tells: how anything may be, its colour, or which one it is. */
type Nature = 'general' | 'color' | 'telling';

/** What stands before a noun and belongs to it: one word, or several that hyphens join. */
export interface Modifier {
  readonly nature: Nature;
  /** Its words in the passage, up to and without `to`. */
  readonly from: number;
  readonly to: number;
}

/** A noun with what stands before it. */
export interface NounPhrase {
  /** Its first word in the passage. */
  readonly from: number;
  readonly head: number;
  /** The nearest to the head first. */
  readonly modifiers: readonly Modifier[];
}

const HYPHEN = /^[-\u2010\u2011]$/;

/** Whether a word and the one after it belong together: a space or hyphen between them, and one sentence. */
const goesOn = (passage: Passage, word: number): boolean =>
  adjacent(passage, word) && passage.words[word]?.sentence === passage.words[word + 1]?.sentence;

const isHyphened = ({ text, words }: Passage, word: number): boolean => {
  const [one, next] = [words[word], words[word + 1]];
  return one !== undefined && next !== undefined && HYPHEN.test(text.slice(one.end, next.start));
};

const isBorder = ({ folded, text }: ZonedWord): boolean =>
  BORDERS.has(text.toLowerCase().replace('’', "'")) || BORDERS.has(folded) || isAdverb(folded);

/** Words in -ly that are no adverbs. */
const NO_ADVERBS = /^(?:fl|jel|bel|fami|hol|li|ral|al|bul|dol|curl|wool|love|live|friend|like|daily|week|month|year|ug|sil|smel|hil|ear|on|ho|p|wobb|bubb|cudd|mea|pear|cost|elder)/;

/** "Gently", but not "jelly" or "lovely". Common practice, no source. */
const isAdverb = (folded: string): boolean =>
  folded.length > 4 && folded.endsWith('ly') && !NO_ADVERBS.test(folded);

/** The adjective that a comparative or a superlative is of, in the ways English spells them. */
const positivesOf = (folded: string): readonly string[] => {
  const stem = /^(.{2,})(?:er|est)$/.exec(folded)?.[1];
  if (!stem) return [];
  return [stem, `${stem}e`, stem.replace(/i$/, 'y'), stem.replace(/(.)\1$/, '$1')];
};

const isListed = (folded: string): boolean => GENERAL.has(folded) || adjectives.has(folded);

const isParticiple = (folded: string): boolean =>
  PARTICIPLES.has(folded) ||
  (folded.length > 3 && folded.endsWith('ed') && !folded.endsWith('eed') && !notAdjectives.has(folded));

/** Whether a word says how a thing is, and nothing of which it is. */
export const isGeneral = ({ folded, key }: Pick<ZonedWord, 'folded' | 'key'>): boolean =>
  isListed(folded) ||
  /^\d/.test(folded) ||
  counts.has(folded) ||
  (!notAdjectives.has(key) && !goods.has(key) && (adjectiveEndings.test(folded) || isParticiple(folded)));

/** "Older", "finest". Some in -er are things behind a noun: a tin opener. */
const isCompared = ({ folded, key }: ZonedWord): boolean =>
  !goods.has(key) && positivesOf(folded).some(isListed);

/** "Wooden" is no other material than "pine": such words stand among the general ones. */
const natureOf = (word: ZonedWord, next?: ZonedWord): Nature => {
  if (GENERAL.has(word.folded)) return 'general';
  // "Bottle green" is a colour, a bottle brush has none.
  const shade = shades.has(word.folded) && next !== undefined && colours.has(next.folded);
  if (shade || colours.has(word.folded)) return 'color';
  if (materials.has(word.folded)) return 'telling';
  return isGeneral(word) || isCompared(word) ? 'general' : 'telling';
};

const isOwner = ({ text, words }: Passage, at: number): boolean => {
  const word = itemAt(words, at);
  return /['’]s$/i.test(word.text) || (/s$/i.test(word.text) && /^['’]/.test(text.slice(word.end)));
};

const isCapital = ({ text }: ZonedWord): boolean => /^\p{Lu}/u.test(text);

const isPlural = ({ key, folded }: ZonedWord): boolean => key !== folded;

/** "Leaves" is the plural of "leaf", and a form of "leave". */
const isThirdPerson = ({ folded, key }: ZonedWord): boolean =>
  folded.endsWith('s') &&
  (VERBS.has(key) || VERBS.has(folded.slice(0, -1)) || (folded.endsWith('es') && VERBS.has(folded.slice(0, -2))));

/** Whether a word is a verb of which the noun after it is the object. */
const isVerbBefore = (passage: Passage, at: number): boolean => {
  const { words } = passage;
  const word = itemAt(words, at);
  const before = goesOn(passage, at - 1) ? words[at - 1] : undefined;
  const inSentence = words[at - 1]?.sentence === word.sentence;
  if (inSentence && isCapital(word)) return false;
  if (PASTS.has(word.folded)) return true;
  if (before && OPENERS.has(before.folded)) return false;
  // An English modifier is singular: "she pours tea".
  if (isPlural(word)) return isThirdPerson(word);
  if (word.folded.endsWith('ing'))
    return !NOUNS_IN_ING.has(word.folded) && !(before !== undefined && natureOf(before) !== 'telling');
  if (!VERBS.has(word.folded)) return false;
  // An order, or what a subject does: "Brew tea", "to brew tea", "gardeners brew tea".
  return before === undefined || isBorder(before) || isPlural(before);
};

/** The noun phrase that ends with a word; undefined where an owner or a verb makes the word something else. */
export const nounPhraseAt = (passage: Passage, head: number): NounPhrase => {
  const { words } = passage;
  const modifiers: Modifier[] = [];
  let from = head;
  while (from > 0 && (goesOn(passage, from - 1) || isOwnerBefore(passage, from))) {
    const last = from - 1;
    let first = last;
    while (isHyphened(passage, first - 1) && goesOn(passage, first - 1)) first -= 1;
    const word = itemAt(words, last);
    if (first === last) {
      if (isOwner(passage, last) && !isBorder(word)) {
        modifiers.push({ nature: 'telling', from: last, to: from });
        from = last;
        break;
      }
      if (!GENERAL.has(word.folded) && isBorder(word)) break;
      if (natureOf(word) === 'telling' && isVerbBefore(passage, last)) break;
    }
    const opens = itemAt(words, first);
    const compound = first < last && (/^\d/.test(opens.folded) || counts.has(opens.folded));
    modifiers.push({ nature: compound ? 'general' : natureOf(word, words[from]), from: first, to: from });
    from = first;
  }
  return { from, head, modifiers };
};

/** "The aunts’ novels": the sign of an owner in the plural stands between two words. */
const isOwnerBefore = ({ text, words }: Passage, at: number): boolean => {
  const [before, word] = [words[at - 1], words[at]];
  return (
    before !== undefined &&
    word !== undefined &&
    before.sentence === word.sentence &&
    /s$/i.test(before.text) &&
    /^['’]\s$/.test(text.slice(before.end, word.start))
  );
};

/** Whether a word of a sentence before another may have a bare verb after its object. */
const letsHappen = (words: readonly ZonedWord[], at: number): boolean => {
  const { sentence } = itemAt(words, at);
  for (let before = at - 1; words[before]?.sentence === sentence; before--)
    if (BEFORE_THING_AND_VERB.has(itemAt(words, before).folded)) return true;
  return false;
};

/** Whether a word that may be a noun stands before another noun and only says which: the tin of a tin opener. */
export const standsBeforeNoun = (passage: Passage, at: number): boolean => {
  const { words } = passage;
  const [head, next] = [itemAt(words, at), words[at + 1]];
  if (!next || !goesOn(passage, at) || isOwner(passage, at)) return false;
  if (isHyphened(passage, at)) return true;
  // An English modifier is singular: what follows a plural is a verb or begins anew.
  if (isPlural(head)) return isCapital(head) && isCapital(next) && !isBorder(next);
  if (isBorder(next)) return false;
  if (NAMED_DOINGS.has(next.folded) || NOUNS_IN_ING.has(next.folded)) return true;
  if (PASTS.has(next.folded) || next.folded.endsWith('ing')) return false;
  if (isCapital(next) && !isCapital(head)) return false;
  if (materials.has(next.folded) && !GENERAL.has(next.folded)) return true;
  if (isGeneral(next) || colours.has(next.folded)) return endsInNoun(passage, at + 1);
  const after = goesOn(passage, at + 1) ? words[at + 2] : undefined;
  if (isPlural(next) || /[^su]s$/.test(next.folded)) {
    if (after && OPENERS.has(after.folded)) return false;
    // "Candle ends go back"
    if (!isThirdPerson(next) || (after && AFTER_PLURALS.has(after.folded))) return true;
    return goods.has(next.key) && after !== undefined && !isBorder(after);
  }
  return !(VERBS.has(next.folded) && letsHappen(words, at));
};

/** Whether a describing word is followed by a noun of its own: "the old candle cold ends" hardly, "tea green tin" yes. */
const endsInNoun = (passage: Passage, at: number): boolean => {
  const next = goesOn(passage, at) ? passage.words[at + 1] : undefined;
  return next !== undefined && !isBorder(next) && goods.has(next.key);
};

/** Nouns joined by prepositions to a head that scattered words are looked for in: "labels of copper for the plants". */
const JOINED = 2;

/** Words of such a noun phrase. */
const MOST_IN_JOINED = 4;

/** Where the phrase that a preposition joins ends, up to and without; `at` where there is none. */
const joinedEnd = (passage: Passage, at: number): number => {
  const { words } = passage;
  let end = at;
  const folded = (): string => (goesOn(passage, end - 1) ? (words[end]?.folded ?? '') : '');
  if (JOINING_PARTICIPLES.has(folded())) end += 1;
  if (!JOINING_PREPOSITIONS.has(folded())) return at;
  end += 1;
  while (OPENERS.has(folded())) end += 1;
  const first = end;
  while (end - first < MOST_IN_JOINED && folded() !== '' && !isBorder(itemAt(words, end))) end += 1;
  // "For watering the sill": what is done, and to what, is one thing still.
  return end > first ? end : at;
};

/**
 * The words around a head that speak of the same thing: its noun phrase, those that prepositions join to it, and the
 * one that it says more of with "of". Up to and without `to`.
 */
export const stretchAround = (
  passage: Passage,
  { from, head }: NounPhrase,
): { readonly from: number; readonly to: number } => {
  let to = head + 1;
  for (let joined = 0; joined < JOINED; joined++) to = joinedEnd(passage, to);
  const { words } = passage;
  let first = from;
  while (goesOn(passage, first - 1) && OPENERS.has(words[first - 1]?.folded ?? '')) first -= 1;
  const of = first - 1;
  if (words[of]?.folded !== 'of' || !goesOn(passage, of) || !goesOn(passage, of - 1)) return { from, to };
  return { from: nounPhraseAt(passage, of - 1).from, to };
};
