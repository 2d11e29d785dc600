/**
 * The noun phrase that a word stands in, read from its neighbours by word lists. A tagger would know more of a sentence;
 * but a text is counted again for every change that is tried, and waits for no model.
 */
import { itemAt } from '../../../text/item-at.ts';
import { wordSet } from '../../../text/word-set.ts';
import { goods } from '../../language/lexicon/goods.ts';
import { counts } from '../../language/lexicon/measures.ts';
import { colours, materials } from '../../language/lexicon/qualities.ts';
import { NOUNS_IN_ING } from '../../language/word-classes.ts';
import { adjacent } from '../text/adjacent.ts';
import type { Passage, ZonedWord } from '../text/passage.ts';
import {
  AFTER_PLURALS,
  AFTER_VERBS,
  BEFORE_THING_AND_VERB,
  GENERAL,
  JOINING_PARTICIPLES,
  JOINING_PREPOSITIONS,
  NAMED_DOINGS,
  OPENERS,
  PASTS,
  PURPOSES,
  VERBS,
} from './neighbour-words.ts';
import {
  isAdverb,
  isBorder,
  isCapital,
  isCompared,
  isDoer,
  isGeneral,
  isParticiple,
  isPlural,
  isThirdPerson,
  type Nature,
  natureOf,
} from './word-nature.ts';

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
  /** The word that "and" joins to the last of them: the tulip of "tulip and hyacinth bulbs". */
  readonly paired?: number;
}

const HYPHEN = /^[-\u2010\u2011]$/;

/** Whether a word and the one after it belong together: a space or hyphen between them, and one sentence. */
const goesOn = (passage: Passage, word: number): boolean =>
  adjacent(passage, word) && passage.words[word]?.sentence === passage.words[word + 1]?.sentence;

/** In an address every word is followed by a hyphen, which means nothing. */
const isHyphened = ({ form, text, words }: Passage, word: number): boolean => {
  const [one, next] = [words[word], words[word + 1]];
  const both = one !== undefined && next !== undefined && form !== 'address';
  return both && HYPHEN.test(text.slice(one.end, next.start));
};

/** Whether a word says whose the next is: "the aunt's". */
const isOwner = ({ text, words }: Passage, at: number): boolean => {
  const word = itemAt(words, at);
  return /['’]s$/i.test(word.text) || (/s$/i.test(word.text) && /['’]/.test(text.charAt(word.end)));
};

/** Whether a word is a verb of which the noun after it is the object. */
const isVerbBefore = (passage: Passage, at: number): boolean => {
  const { words } = passage;
  const word = itemAt(words, at);
  const before = goesOn(passage, at - 1) ? words[at - 1] : undefined;
  const inSentence = words[at - 1]?.sentence === word.sentence;
  if (inSentence && isCapital(word)) return false;
  // "We felt", but a felt hat.
  if (PASTS.has(word.folded) && !materials.has(word.folded)) return true;
  if (before && OPENERS.has(before.folded)) return false;
  // An English modifier is singular: "she pours tea".
  if (isPlural(word)) return isThirdPerson(word);
  // An order, or what a subject does: "Brew tea", "to brew tea", "gardeners brew tea".
  const begins = before === undefined || isBorder(before) || isPlural(before);
  if (word.folded.endsWith('ing'))
    return begins && !NOUNS_IN_ING.has(word.folded) && !PURPOSES.has(word.folded);
  return begins && VERBS.has(word.folded);
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

/** "Ribbed, off-white planter": an adjective before a comma goes on with the one after it. */
const isListedOn = ({ text, words }: Passage, from: number, end: number): boolean => {
  const [before, word] = [words[from - 1], words[from]];
  return (
    from < end &&
    before !== undefined &&
    word !== undefined &&
    before.sentence === word.sentence &&
    /^,\s$/.test(text.slice(before.end, word.start)) &&
    !isBorder(before) &&
    natureOf(before) !== 'telling' &&
    natureOf(word) !== 'telling'
  );
};

/** Where the word stands that an "and" joins to the last modifier, if it is of the same sort. */
const pairedWith = (passage: Passage, from: number, last: Modifier | undefined): number | undefined => {
  const { words } = passage;
  const [other, and] = [words[from - 2], words[from - 1]];
  if (last?.nature !== 'telling' || !other || !and || !/^(?:and|or)$/.test(and.folded)) return undefined;
  if (!goesOn(passage, from - 1) || !goesOn(passage, from - 2)) return undefined;
  const isNoun = !isBorder(other) && !isPlural(other) && natureOf(other) === 'telling';
  return isNoun && !isVerbBefore(passage, from - 2) ? from - 2 : undefined;
};

/** What words that hyphens join tell: "two-metre" and "long-spouted" how a thing is, "washing-up" which. */
const hyphenedNature = ({ words }: Passage, first: number, last: number): Nature => {
  const [opens, ends] = [itemAt(words, first), itemAt(words, last)];
  if (/^\d/.test(opens.folded) || counts.has(opens.folded)) return 'general';
  return isBorder(ends) ? 'telling' : natureOf(ends);
};

/** The noun phrase that ends with a word, as far as its neighbours belong to it. */
export const nounPhraseAt = (passage: Passage, head: number): NounPhrase => {
  const { words } = passage;
  const modifiers: Modifier[] = [];
  let from = head;
  while (
    from > 0 &&
    (goesOn(passage, from - 1) || isOwnerBefore(passage, from) || isListedOn(passage, from, head))
  ) {
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
    const nature = first < last ? hyphenedNature(passage, first, last) : natureOf(word, words[from]);
    modifiers.push({ nature, from: first, to: from });
    from = first;
  }
  const paired = pairedWith(passage, from, modifiers.at(-1));
  return { from, head, modifiers, ...(paired !== undefined && { paired }) };
};

/** The word right before a noun phrase: its article, if it has one. */
export const openerOf = (passage: Passage, { from }: NounPhrase): ZonedWord | undefined =>
  goesOn(passage, from - 1) ? passage.words[from - 1] : undefined;

/** Whether a word of a sentence before another may have a bare verb after its object. */
const letsHappen = (words: readonly ZonedWord[], at: number): boolean => {
  const { sentence } = itemAt(words, at);
  for (let before = at - 1; words[before]?.sentence === sentence; before--)
    if (BEFORE_THING_AND_VERB.has(itemAt(words, before).folded)) return true;
  return false;
};

/** After them stands one thing, so that what ends in -s behind it is a verb: "an olla sweats". */
const OPENERS_OF_ONE = wordSet('a an this that each every another');

/** Whether a word that may be a noun stands before another noun and only says which: the tin of a tin opener. */
export const standsBeforeNoun = (passage: Passage, phrase: NounPhrase): boolean => {
  const { words } = passage;
  const at = phrase.head;
  const [head, next] = [itemAt(words, at), words[at + 1]];
  if (!next || !goesOn(passage, at) || isOwner(passage, at)) return false;
  if (isHyphened(passage, at)) return true;
  // An English modifier is singular: what follows a plural is a verb or begins anew.
  if (isPlural(head)) {
    // But what has no singular is a modifier as it is: a scissors case.
    const isGoodsOf = head.key === head.folded && goods.has(next.key) && !VERBS.has(next.key);
    return !isBorder(next) && (isGoodsOf || (isCapital(head) && isCapital(next)));
  }
  if (isBorder(next)) return false;
  if (NAMED_DOINGS.has(next.folded) || NOUNS_IN_ING.has(next.folded)) return true;
  if (PASTS.has(next.folded) || next.folded.endsWith('ing') || isParticiple(next.folded)) return false;
  if (isCapital(next) && !isCapital(head)) return false;
  if (materials.has(next.folded) && !GENERAL.has(next.folded)) return true;
  if (isGeneral(next) || colours.has(next.folded) || (isCompared(next) && !isDoer(next))) return false;
  const after = goesOn(passage, at + 1) ? words[at + 2] : undefined;
  if (isPlural(next) || /[^su]s$/.test(next.folded)) {
    const opener = openerOf(passage, phrase);
    if (opener && OPENERS_OF_ONE.has(opener.folded)) return false;
    if (after && (AFTER_VERBS.has(after.folded) || isAdverb(after.folded))) return false;
    // "Candle ends go back"
    if (!VERBS.has(next.key) || (after && AFTER_PLURALS.has(after.folded))) return true;
    return goods.has(next.key) && after !== undefined && !isBorder(after);
  }
  return !(VERBS.has(next.folded) && letsHappen(words, at));
};

/** Nouns joined by prepositions to a head that scattered words are looked for in: "labels of copper for the plants". */
const JOINED = 2;

/** Words of such a noun phrase. */
const MOST_IN_JOINED = 5;

/** They stand before a number. */
const ABOUT = wordSet('about around nearly almost roughly');

/** Where the phrase that a preposition joins ends, up to and without; `at` where there is none. */
const joinedEnd = (passage: Passage, at: number): number => {
  const { words } = passage;
  let end = at;
  const folded = (): string => (goesOn(passage, end - 1) ? (words[end]?.folded ?? '') : '');
  if (JOINING_PARTICIPLES.has(folded())) end += 1;
  if (!JOINING_PREPOSITIONS.has(folded())) return at;
  end += 1;
  while (OPENERS.has(folded()) || ABOUT.has(folded())) end += 1;
  const first = end;
  const last = Math.min(words.length, first + MOST_IN_JOINED);
  while (end < last && (goesOn(passage, end - 1) || (end > first && isListedOn(passage, end, last)))) {
    if (isBorder(itemAt(words, end))) break;
    end += 1;
  }
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
