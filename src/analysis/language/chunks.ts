/** Base noun phrases of running English text. */
import { itemAt } from '../../text/item-at.ts';
import { NAMELIKE, plain, putRight } from './tag-rules.ts';
import { loadTagger, type Tagged } from './tagger.ts';
import {
  BE_FORMS,
  DAYS,
  DETERMINERS,
  MULTIPLIERS,
  POSSESSIVE_FORMS,
  STANDING_ALONE,
  TIMES,
} from './word-classes.ts';

/** A noun phrase without the determiners and possessives in front. Offsets in UTF-16 units. */
export interface Chunk {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** A letter for what a word can do in a phrase, so that the grammar is a regular expression. */
const letterOf = (tagged: readonly Tagged[], words: readonly string[], i: number): string => {
  const { text, pos } = itemAt(tagged, i);
  const word = itemAt(words, i);
  const next = words[i + 1] ?? '';
  const before = tagged[i - 1];
  const after = tagged[i + 1];
  if (DETERMINERS.has(word) || POSSESSIVE_FORMS.has(word)) return 'D';
  if (DAYS.has(word)) return 'T';
  if ((word === 'last' || word === 'next') && TIMES.has(next)) return 'W';
  if (word === 'not' || word === "n't") return 'B';
  if (text === ',') return 'Q';
  if (text === '&') return [before, after].every((one) => NAMELIKE.test(one?.text ?? '')) ? '&' : 'K';
  if (word === 'per' && next === 'cent') return '%';
  if (/^\p{Sc}$/u.test(text)) return '$';
  if (text === '%') return '%';
  if (!/[\p{L}\p{N}]/u.test(text)) return '-';
  switch (pos) {
    case 'NOUN':
      if (after?.pos === 'PROPN' && NAMELIKE.test(after.text) && /^\p{Ll}/u.test(text)) return 'A';
      return /[^sui']s$/.test(word) ? 'L' : 'N';
    case 'PROPN':
      return 'M';
    case 'ADJ':
      return 'J';
    case 'NUM':
      return MULTIPLIERS.has(word) ? 'H' : 'C';
    case 'ADV':
      return STANDING_ALONE.has(word) ? '-' : 'R';
    case 'CCONJ':
      return word === 'but' ? '-' : 'K';
    case 'AUX':
      return BE_FORMS.has(word) ? 'B' : '-';
    default:
      return '-';
  }
};

/**
 * N noun, L plural, M name, A noun before a name, J adjective, C number, H hundred or million, $ currency, % percent, R
 * adverb, K and, & in a name, Q comma, B is or not, T today, W last or next. Every letter can be taken in one way alone and
 * what stands before the noun has a bound, so that no text makes the search long.
 */
const PHRASE = new RegExp(
  [
    // "$40", "$ 3.39 billion", and "a $40 voucher"
    /\$CH{0,3}[NML]*/,
    // "Route 66", but not "June 21 times"
    /M+C(?![NML%H])/,
    // "very good, cheap work standards", "good quality Indian food"; an adjective after a plural begins a new one, and
    // so does a name after the noun that says who bears it: "my sister", "Ann"
    /W?(?:R{0,3}J(?:[QK](?=R{0,3}J))?|[CH]H{0,3}(?!H)%?){0,12}(?:[NML]*A|[NML]+(?:&[NML]+)*(?:(?<!L)J{1,4}[NML]+)*)/,
    // "10%", a share by itself
    /C%/,
    /T/,
  ]
    .map(({ source }) => source)
    .join('|'),
  'g',
);

/** A name that describes a thing parts nothing: "an oak Windsor chair". */
const NAME_INSIDE = /A(?=M+[NLA])/g;

/** After "is" and "not" a list of adjectives says something by itself up to its last comma. */
const PREDICATE = /(?<=B)R*J(?:[QK]?R*J)*/g;

/** The noun phrases of tagged words; `text` is what the words' offsets count in. */
const chunksOf = (text: string, tagged: readonly Tagged[]): readonly Chunk[] => {
  const words = tagged.map((one) => plain(one.text));
  const letters = tagged
    .map((_, i) => letterOf(tagged, words, i))
    .join('')
    .replace(NAME_INSIDE, 'N')
    .replace(PREDICATE, (list) => list.replaceAll('Q', '-'));
  return [...letters.matchAll(PHRASE)].map(({ index, 0: { length } }) => {
    const { start } = itemAt(tagged, index);
    const { end } = itemAt(tagged, index + length - 1);
    return { start, end, text: text.slice(start, end) };
  });
};

/** One or more empty lines. */
const BETWEEN_PARAGRAPHS = /\n(?:[^\S\n]*\n)+/g;

/** The paragraphs of a text with where they start. */
const paragraphsOf = (text: string): readonly { readonly start: number; readonly paragraph: string }[] => {
  const gaps = [...text.matchAll(BETWEEN_PARAGRAPHS)];
  const starts = [0, ...gaps.map(({ index, 0: gap }) => index + gap.length)];
  const ends = [...gaps.map(({ index }) => index), text.length];
  return starts.map((start, i) => ({ start, paragraph: text.slice(start, ends[i]) }));
};

/**
 * The words and the base noun phrases of an English text, in its order: determiners, possessives and pronouns left out
 * of the phrases, an "of" or "and" between nouns parts them ("a tin of seeds" gives two), a possessor stands by itself.
 * Offsets are exact in `text` whatever is in it. Base phrases as in Ramshaw and Marcus 1995; the grammar is ours.
 */
export const phrasesAmongWords = async (
  text: string,
): Promise<{ readonly words: readonly Tagged[]; readonly phrases: readonly Chunk[] }> => {
  const tag = await loadTagger();
  const paragraphs = paragraphsOf(text).map(({ start: offset, paragraph }) => {
    const tagged = putRight(tag(paragraph));
    const moved = <T extends Chunk | Tagged>(one: T): T => ({
      ...one,
      start: one.start + offset,
      end: one.end + offset,
    });
    return { words: tagged.map(moved), phrases: chunksOf(paragraph, tagged).map(moved) };
  });
  return {
    words: paragraphs.flatMap(({ words }) => words),
    phrases: paragraphs.flatMap(({ phrases }) => phrases),
  };
};

/** The base noun phrases alone. */
export const nounPhrases = async (text: string): Promise<readonly Chunk[]> =>
  (await phrasesAmongWords(text)).phrases;
