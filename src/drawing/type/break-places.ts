/** Where a text may be broken into lines, and how willingly. */
import LineBreaker from 'linebreak';
import { graphemesOf, wordPieces } from '../../text/segments.ts';
import { PARTS_WORD } from './balance.ts';

/** A place where a line may end. */
export interface Place {
  /** Where the line ends and where the next one begins, UTF-16: spaces between them are on neither. */
  readonly end: number;
  readonly next: number;
  /** What breaking here is as bad as: 1 is a line that is a tenth of the width too short. */
  readonly cost: number;
  /** A hyphen is added to the line. */
  readonly hyphen: boolean;
}

const COSTS = {
  /** A number is read with the thing or the unit that it counts. */
  afterNumber: 12,
  /** "a", "the", "of" at the end of a line lead into the void. */
  afterShort: 2,
  /** Inside "co-op", or at a hyphen that the author allows. */
  insideWord: 8,
  /** Between two letters of one Chinese or Japanese word. */
  insideHanWord: PARTS_WORD,
  syllable: 20,
  anywhere: 200,
} as const;

/** Scripts that write no spaces and whose words only a dictionary knows (UAX #14, class SA). */
const UNSPACED = /[\p{Script=Thai}\p{Script=Lao}\p{Script=Khmer}\p{Script=Myanmar}]/u;
const HAN = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u;

/** Scripts that a hyphen parts. */
const HYPHENATED = /[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}]/u;

const SOFT_HYPHEN = '\u00ad';

/** Places inside a text where one of its words begins, as the language's dictionary knows them. */
const wordStarts = (text: string, lang: string): ReadonlySet<number> => {
  const starts = new Set<number>();
  let at = 0;
  for (const piece of wordPieces(text, lang)) {
    starts.add(at);
    at += piece.text.length;
  }
  return starts;
};

const graphemeEnds = (text: string, lang: string): ReadonlySet<number> => {
  const ends = new Set<number>();
  let at = 0;
  for (const grapheme of graphemesOf(text, lang)) {
    at += grapheme.length;
    ends.add(at);
  }
  return ends;
};

/** An address, which no hyphen may be added to. */
const ADDRESS = /^(?:\w+:\/\/|www\.)|@|[\p{L}\p{N}]\.\p{L}{2}|[\p{L}\p{N}]\/[\p{L}\p{N}]+\//u;

/** A number, and what it is read with: "1.2 litre", "40 × 60 cm", "50 %". */
const NUMBER = /^\p{Sc}?\d[\d.,/\u2013-]*$/u;
const COUNTED = /^[\p{L}%°×]/u;
/** What is nothing without the next word: a sign between two, and "No." or "№" before a number. */
const LEADS_ON = /^(?:[&+×\p{Sc}№#]|\p{Lu}\p{L}{0,2}\.)$/u;
/** A sign between two that are one name or one measure. */
const JOINS = /^[&+×]\s/u;
/** "a", "the", "of". */
const SHORT = /^[(“‘«"']*\p{Ll}{1,3}$/u;

const costAt = (text: string, end: number, next: number, words: ReadonlySet<number>): number => {
  const before = text.slice(0, end);
  const after = text.slice(next);
  if (next > end) {
    const word = /\S*$/u.exec(before)?.[0] ?? '';
    if (NUMBER.test(word) && COUNTED.test(after)) return COSTS.afterNumber;
    if (LEADS_ON.test(word) && (/^\d/.test(after) || /^[&+×]$/u.test(word))) return COSTS.afterNumber;
    if (JOINS.test(after)) return COSTS.insideWord;
    return SHORT.test(word) && HYPHENATED.test(word) ? COSTS.afterShort : 0;
  }
  const [last = '', first = ''] = [[...before.slice(-2)].at(-1), [...after.slice(0, 2)].at(0)];
  if (HAN.test(last) && HAN.test(first)) return words.has(next) ? 0 : COSTS.insideHanWord;
  if (UNSPACED.test(last) || HAN.test(last) || HAN.test(first)) return 0;
  return /[\u2013\u2014]/u.test(last) ? 0 : COSTS.insideWord;
};

/**
 * Places by the Unicode line breaking algorithm (UAX #14) and, for scripts without spaces, between words. The text's
 * end is the last one. Inside an address there are none: `innerPlaces` has them.
 */
export const placesOf = (text: string, lang: string): readonly Place[] => {
  const graphemes = graphemeEnds(text, lang);
  const words = wordStarts(text, lang);
  const found = new Set<number>();
  const breaker = new LineBreaker(text);
  for (let one = breaker.nextBreak(); one; one = breaker.nextBreak()) found.add(one.position);
  for (const start of words)
    if (UNSPACED.test(text.charAt(start)) && UNSPACED.test(text.charAt(start - 1))) found.add(start);
  const addresses = [...text.matchAll(/\S+/gu)].filter(([word]) => ADDRESS.test(word));
  const isInAddress = (at: number): boolean =>
    addresses.some(({ index, 0: word }) => at > index && at < index + word.length);
  const isInNumber = (at: number): boolean =>
    /\d[\u2010-\u2013-]$/u.test(text.slice(0, at)) && /^\d/u.test(text.slice(at));
  const places = [...found]
    .filter((at) => at > 0 && at < text.length && graphemes.has(at) && !isInAddress(at) && !isInNumber(at))
    .sort((a, b) => a - b)
    .map((next): Place => {
      const end = text.slice(0, next).trimEnd().length;
      const hyphen = text.charAt(end - 1) === SOFT_HYPHEN;
      return { end, next, cost: costAt(text, end, next, words), hyphen };
    });
  return [...places, { end: text.length, next: text.length, cost: 0, hyphen: false }];
};

/** Letters that carry a syllable. */
const VOWEL = /^[aeiouyæœøıаеиоуыэюяієαεηιουω]/iu;
/** Consonants that begin a syllable together, the longest first; common practice of Latin alphabets, no source. */
const ONSET = /(?:sch[lmnrw]?|s[pt]r|spl|scr|[cpst]h|[bcdfgkptv]r|[bcfgkp]l|[kgw]n|s[pt]|qu|\p{L})$/iu;
/** Letters that stay together at either end of a word. */
const STAYS = 3;

const bare = (letter: string): string => letter.normalize('NFD').charAt(0);

/** Where syllables of a word begin, counted in graphemes: before the consonants that its vowels are spoken with. */
const syllableStarts = (graphemes: readonly string[]): ReadonlySet<number> => {
  const starts = new Set<number>();
  const letters = graphemes.map(bare);
  for (let vowel = 1; vowel < letters.length; vowel += 1) {
    if (!VOWEL.test(letters[vowel] ?? '') || VOWEL.test(letters[vowel - 1] ?? '')) continue;
    let from = vowel;
    while (from > 0 && /\p{L}/u.test(letters[from - 1] ?? '') && !VOWEL.test(letters[from - 1] ?? ''))
      from -= 1;
    const consonants = letters.slice(from, vowel).join('');
    const start = vowel - (ONSET.exec(consonants)?.[0].length ?? 0);
    // Without a vowel before it there is no syllable before it.
    if (from > 0 && start >= STAYS && letters.length - start >= STAYS) starts.add(start);
  }
  return starts;
};

/**
 * Places inside one word (its slice of the text, without spaces), to be used where it is wider than a line. An address
 * is broken before its signs and without a hyphen; a word of an alphabet after a syllable, with one; any other only
 * where nothing else helps. `anywhere` adds a place after every grapheme.
 */
export const innerPlaces = (
  text: string,
  from: number,
  to: number,
  lang: string,
  anywhere: boolean,
): readonly Place[] => {
  const word = text.slice(from, to);
  const graphemes = graphemesOf(word, lang);
  const isAddress = ADDRESS.test(word);
  const syllables = syllableStarts(graphemes);
  const places: Place[] = [];
  let at = from;
  for (const [i, grapheme] of graphemes.entries()) {
    at += grapheme.length;
    const next = graphemes[i + 1];
    if (next === undefined) break;
    if (isAddress) {
      const isSign = /[./?&=#_@-]/.test(next) && !/[./?&=#_@:-]/.test(grapheme);
      if (isSign || anywhere)
        places.push({ end: at, next: at, cost: isSign ? COSTS.syllable : COSTS.anywhere, hyphen: false });
      continue;
    }
    const hyphen = HYPHENATED.test(grapheme) && HYPHENATED.test(next);
    const isSyllable = hyphen && syllables.has(i + 1);
    if (isSyllable) places.push({ end: at, next: at, cost: COSTS.syllable, hyphen });
    else if (anywhere) places.push({ end: at, next: at, cost: COSTS.anywhere, hyphen });
  }
  return places;
};
