/** A title that names the things, for a cycle whose record gives none. */
import { listInWords } from '../text/list-in-words.ts';
import { monthName } from './calendar.ts';
import type { InText } from './in-text.ts';

/** A thing in a row of things. */
type Named = Pick<InText, 'short' | 'name'>;

/**
 * "Wooden seed tray, seed packets and wooden dibber": things as one run of words, without what a card adds to them. Where
 * a name has a comma of its own, semicolons part them, in every language alike.
 */
export const namesInLine = (things: readonly Named[], lang: string): string => {
  const names = things.map(({ short, name }, i) => (i === 0 ? short : name));
  return names.length > 1 && names.some((name) => name.includes(','))
    ? names.join('; ')
    : listInWords(names, lang);
};

/** What a language calls a box with some things in it, or with a theme, and its month in words. */
export type SayTitle = (things: string, month: string) => string;

/** A title of the first three things, lead item first, or of the theme where there are none. */
export const titleOf = (
  things: readonly Named[],
  { theme, ...month }: { readonly year: number; readonly month: number; readonly theme: string },
  lang: string,
  sayTitle: SayTitle,
): string =>
  sayTitle(things.length === 0 ? theme : namesInLine(things.slice(0, 3), lang), monthName(month, lang));
