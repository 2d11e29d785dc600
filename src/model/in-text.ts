/**
 * What running text calls a thing: its name without what a card adds, and name and kind as they stand inside a sentence.
 * A capital is taken away only where the word is known to be no name.
 */
import { headOf } from '../content/hurtful-kinds.ts';
import type { CaseOf } from '../text/letter-case.ts';
import { conjunctionOf } from '../text/list-in-words.ts';
import { singularOf } from '../text/singular.ts';

/** An item in running text. */
export interface InText {
  /** "Brass plant mister" of "Brass plant mister, 300 ml". */
  readonly short: string;
  /** The same as it stands inside a sentence: "brass plant mister", "Danish dough whisk". */
  readonly name: string;
  /** Its kind inside a sentence. */
  readonly kind: string;
}

/** What the words of a thing are judged by. */
export interface TextUse {
  /** BCP 47. */
  readonly lang: string;
  /** What a dictionary knows of the language's words; it knows nothing of most languages. */
  readonly caseOf: CaseOf;
  /** Running text that speaks of the thing, paragraph by paragraph. */
  readonly texts: readonly string[];
}

/** Words that say several things are one: what they end is a list of its contents. */
const COLLECTIVES = new Set(
  'set kit pack pair bundle box collection mix assortment selection trio duo'.split(' '),
);

const wordsIn = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{M}’']+/gu) ?? [];

const has = (text: string, noun: string): boolean => wordsIn(text).some((word) => singularOf(word) === noun);

/**
 * A name without what a card adds to it behind a comma or in brackets: ", 300 ml", " (bare)". Commas of a list before its
 * head add nothing ("Bun, muffin and pudding tin"): the kind says where the head stands, and where the name does not
 * have it, a list is known by its "and". A name that is nothing but what a card adds stays whole.
 */
export const shortName = (
  { name, kind }: { readonly name: string; readonly kind: string },
  lang: string,
): string => {
  const [bare = ''] = name.split(/\s[([]/);
  const parts = bare.split(',');
  const first = parts[0]?.trim() ?? '';
  if (first === '') return bare.trim() || name;
  if (parts.length === 1) return first;
  const upTo = (end: number): string =>
    parts
      .slice(0, end + 1)
      .join(',')
      .trim();
  // Amounts are never among the things of a list, nor is what follows one.
  const amount = parts.findIndex((part, i) => i > 0 && /\d/.test(part));
  const list = parts.slice(0, amount < 0 ? parts.length : amount);
  const joining = ` ${conjunctionOf(lang)} `;
  const last = list.findIndex((part, i) => i > 0 && (part.includes(joining) || part.includes(' & ')));
  if (last > 0 && COLLECTIVES.has(singularOf(wordsIn(list[last] ?? '').at(-1) ?? ''))) return upTo(last);
  const head = list.findIndex((part) => has(part, headOf(kind)));
  return upTo(head >= 0 ? head : Math.max(0, last));
};

/** Texts in small letters: a cycle's are asked for each of its things, and a language's own rules take their time. */
const smallTexts = new WeakMap<
  readonly string[],
  { readonly lang: string; readonly texts: readonly string[] }
>();

const inSmallLetters = (texts: readonly string[], lang: string): readonly string[] => {
  const known = smallTexts.get(texts);
  if (known?.lang === lang) return known.texts;
  const folded = texts.map((text) => text.toLocaleLowerCase(lang));
  smallTexts.set(texts, { lang, texts: folded });
  return folded;
};

/** Mentions of some words inside a sentence: how often their first letter is a small one, and how often a capital. */
const mentionsOf = (
  words: string,
  texts: readonly string[],
  lang: string,
): { small: number; capital: number } => {
  const found = { small: 0, capital: 0 };
  const sought = words.toLocaleLowerCase(lang);
  const foldedTexts = inSmallLetters(texts, lang);
  for (const [i, text] of texts.entries()) {
    const folded = foldedTexts[i] ?? '';
    // Where small letters take another length, places do not agree.
    if (folded.length !== text.length) continue;
    for (let at = folded.indexOf(sought); at >= 0; at = folded.indexOf(sought, at + 1)) {
      if (!/[\p{L}\p{N},;] $/u.test(text.slice(Math.max(0, at - 3), at))) continue;
      if (/^[\p{L}\p{N}]/u.test(text.slice(at + sought.length, at + sought.length + 2))) continue;
      found[text[at] === folded[at] ? 'small' : 'capital'] += 1;
    }
  }
  return found;
};

const isWholeWord = (word: string): boolean => /^\p{Lu}\p{Ll}[\p{Ll}\p{M}’'-]*$/u.test(word);

/** Of "Gardener's" and "Hand-thrown" by their parts: a name in front makes it one. */
const caseOfCompound = (word: string, caseOf: CaseOf): ReturnType<CaseOf> => {
  const whole = caseOf(word) ?? caseOf(word.replace(/['’]s$/, ''));
  if (whole !== undefined || !word.includes('-')) return whole;
  const parts = word.split('-').map(caseOf);
  return parts[0] === 'name' || parts[0] === 'proper noun'
    ? 'name'
    : parts.every((part) => part === 'common')
      ? 'common'
      : undefined;
};

/** Longest name of a thing that a dictionary has as one: "Dutch oven", "Earl Grey tea". */
const LONGEST_ENTRY = 3;

/** How a thing is spoken of: in its cycle, and in its own record. */
interface ItemUse extends TextUse {
  readonly own: readonly string[];
}

/** Whether the first of some words is a name; undefined where nothing says so. */
const startsWithName = (
  words: readonly string[],
  { caseOf, lang, texts, own }: ItemUse,
): boolean | undefined => {
  const [word = ''] = words;
  for (let length = Math.min(LONGEST_ENTRY, words.length); length > 1; length -= 1) {
    const found = caseOf(words.slice(0, length).join(' '));
    if (found !== undefined) return found !== 'common';
  }
  const found = caseOfCompound(word, caseOf);
  if (found === 'name') return true;
  for (const length of [2, 1]) {
    if (length > words.length) continue;
    const sought = words.slice(0, length).join(' ');
    const [there, here] = [mentionsOf(sought, texts, lang), mentionsOf(sought, own, lang)];
    const more = there.capital + here.capital - there.small - here.small;
    if (more !== 0) return more > 0;
  }
  if (found === undefined) return undefined;
  return found === 'proper noun' || (found === 'name before a noun' && words.length > 1);
};

/** Some words as they stand inside a sentence: the first letter is made small where its word is known to be no name. */
const insideSentence = (text: string, use: ItemUse): string => {
  const words = text.split(/[\s,]+/);
  const [first = '', second = ''] = words;
  // "iKA", "E-book", "A4", and what begins small already.
  if (!isWholeWord(first)) return text;
  // "Bee Meadow seeds" is a title of its own, "Small Japanese teapot" is not.
  if (
    /^\p{Lu}/u.test(second) &&
    isWholeWord(second) &&
    !startsWithName(words.slice(1), { ...use, texts: [], own: [] })
  )
    return text;
  if (startsWithName(words, use) !== false) return text;
  return first.charAt(0).toLocaleLowerCase(use.lang) + text.slice(1);
};

/** An item's name and kind in running text. `texts` are those of its cycle. */
export const inTextOf = (
  item: {
    readonly name: string;
    readonly kind: string;
    readonly brand: string;
    readonly also?: readonly string[] | undefined;
    readonly material?: readonly string[] | undefined;
  },
  use: TextUse,
): InText => {
  const short = shortName(item, use.lang);
  // Kinds and materials stand in records as they stand in a sentence: only a small letter says anything there.
  const written = [item.kind, ...(item.also ?? []), ...(item.material ?? [])].filter((text) =>
    /^\p{Ll}/u.test(text),
  );
  const itemUse = { ...use, own: written.map((text) => `a ${text}`) };
  const isMaker = short.startsWith(item.brand) && !/^[\p{L}\p{N}]/u.test(short.slice(item.brand.length));
  return {
    short,
    name: isMaker ? short : insideSentence(short, itemUse),
    kind: insideSentence(item.kind, itemUse),
  };
};
