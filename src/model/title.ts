/** A title that names the things, for a cycle whose record gives none. */
import { listInWords } from '../text/list-in-words.ts';
import { monthName } from './calendar.ts';

/** Where a card begins to add to a name what a headline leaves out: ", 300 ml", " (bare)". */
const ADDED = /,|\s[([]/;

/** "Brass plant mister" of "Brass plant mister, 300 ml"; a name that is nothing but what a card adds stays whole. */
export const shortName = (name: string): string => name.split(ADDED)[0]?.trim() || name;

/** A short name as it stands inside a sentence; "Bee Meadow seeds" is a name of its own and keeps its capitals. */
export const nameInSentence = (name: string, lang: string): string => {
  const short = shortName(name);
  return /^\S+ \p{Lu}/u.test(short) ? short : short.charAt(0).toLocaleLowerCase(lang) + short.slice(1);
};

/** "Wooden seed tray, seed packets and wooden dibber": names as one run of words, without what a card adds to them. */
export const namesInLine = (names: readonly string[], lang: string): string => {
  const [first = '', ...others] = names;
  return listInWords([shortName(first), ...others.map((name) => nameInSentence(name, lang))], lang);
};

/** What a language calls a box with some things in it, or with a theme, and its month in words. */
export type SayTitle = (things: string, month: string) => string;

/** A title of the first three names, lead item first, or of the theme where there are none. */
export const titleOf = (
  names: readonly string[],
  { theme, ...month }: { readonly year: number; readonly month: number; readonly theme: string },
  lang: string,
  sayTitle: SayTitle,
): string => {
  const things = names.length === 0 ? theme : namesInLine(names.slice(0, 3), lang);
  return sayTitle(things, monthName(month, lang));
};
