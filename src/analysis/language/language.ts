/** What the analysis knows of a language: its words, and which of them are one. */
import { fold } from '../../text/fold.ts';
import { primaryLanguage } from '../../text/language-tag.ts';
import { wordsIn } from '../../text/segments.ts';
import { singularOf } from '../../text/singular.ts';
import { stemmerFor } from './stemmer.ts';

/** One word of a text. `start` and `end` are offsets into it in UTF-16 units. */
export interface Word {
  /** As it is written. */
  readonly text: string;
  /** Case, accents and apostrophes folded; a possessive 's is dropped in English. */
  readonly folded: string;
  /** The same for singular and plural. */
  readonly key: string;
  /** The same for what grows from one stem; two words of one stem are not always one thing. */
  readonly stem: string;
  readonly start: number;
  readonly end: number;
}

/** A language as the analysis uses it: how its words are cut, folded and stemmed. */
export interface Language {
  /** BCP 47. */
  readonly tag: string;
  /** Names can be taken apart, sentences tagged and reading measured in English alone. */
  readonly english: boolean;
  /** Whether the first word of a noun phrase says what the thing is, and not the last: a "stylo plume" is a stylo. */
  readonly headFirst: boolean;
  /** Whether there is a stemmer: without one, words are compared as they are written. */
  readonly stems: boolean;
  readonly words: (text: string) => readonly Word[];
  /** One word by itself. */
  readonly word: (text: string) => Word;
}

/** Romance languages, in which a noun stands before what describes it. Common knowledge, no source. */
const HEAD_FIRST = new Set(['fr', 'es', 'it', 'pt', 'ca', 'gl', 'ro']);

type Forms = Pick<Word, 'folded' | 'key' | 'stem'>;

const withoutPossessive = (folded: string): string => folded.replace(/'s$|(?<=s)'$/, '');

/**
 * The language of a BCP 47 tag. Words are those of UAX #29 as the runtime has it; stems are
 * Porter's (1980) for English, natural's for the languages it has. Nothing is loaded but that one stemmer.
 */
export const languageFor = async (tag: string): Promise<Language> => {
  const primary = primaryLanguage(tag);
  const english = primary === 'en';
  const stemmer = await stemmerFor(primary);
  // A shop writes the same few thousand words all year: each is folded and stemmed once.
  const known = new Map<string, Forms>();

  const formsOf = (text: string): Forms => {
    const seen = known.get(text);
    if (seen) return seen;
    const folded = english ? withoutPossessive(fold(text)) : fold(text);
    const stem = stemmer ? stemmer(english ? singularOf(folded) : folded) : folded;
    // Other languages' plurals are as varied as their stems: there, one key serves both.
    const forms = { folded, key: english ? singularOf(folded) : stem, stem };
    known.set(text, forms);
    return forms;
  };
  const word = (text: string, start = 0): Word => {
    const { folded, key, stem } = formsOf(text);
    return { text, folded, key, stem, start, end: start + text.length };
  };

  return {
    tag,
    english,
    headFirst: HEAD_FIRST.has(primary),
    stems: stemmer !== undefined,
    words: (given) => {
      // UAX #29 joins over a narrow no-break space, which our authors type before a unit: "300 ml" is two words.
      return wordsIn(given.replaceAll('\u202f', ' '), tag).map(({ text, index }) => word(text, index));
    },
    word: (text) => word(text),
  };
};
