/** A title that names the things, for a cycle whose record gives none. */
import { listInWords } from '../text/list-in-words.ts';
import { singularOf } from '../text/singular.ts';
import { monthName } from './calendar.ts';
import type { InText } from './in-text.ts';

/** A thing in a row of things. */
type Named = Pick<InText, 'short' | 'name'>;

/** A thing with what it is. */
type Kinded = Pick<InText, 'short' | 'name' | 'kind'>;

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

/** What a language calls a box by some things in it, its theme and its month in words. */
export interface TitleWords {
  /** `trade`: the word that most of the things share, where their names lack it. */
  readonly title: (things: string, theme: string, month: string, trade?: string) => string;
  readonly themeTitle: (theme: string, things: string) => string;
  readonly bareTitle: (theme: string, month: string) => string;
}

/** A result of a search shows about so many letters of a title. Common practice, no source. */
const LONGEST_TITLE = 65;

/** More things than this are a list and no title. A choice of ours. */
const MOST_THINGS = 3;

const wordsIn = (text: string): readonly string[] =>
  (text.toLowerCase().match(/\p{L}{3,}/gu) ?? []).map(singularOf);

/**
 * The word of the trade: one that stands in the kinds of half the things and more, two at least ("dog" of a dog toy and a
 * dog chew); undefined where none does.
 */
const tradeOf = (things: readonly Kinded[]): string | undefined => {
  const counts = new Map<string, number>();
  for (const { kind } of things)
    for (const word of new Set(wordsIn(kind))) counts.set(word, (counts.get(word) ?? 0) + 1);
  const [first] = [...counts].sort(([, a], [, b]) => b - a);
  return first && first[1] >= Math.max(2, things.length / 2) ? first[0] : undefined;
};

/** Words about as many of some things as fit, and about the first at least. */
const fitting = (things: readonly Named[], lang: string, words: (line: string) => string): string => {
  for (let count = Math.min(things.length, MOST_THINGS); count > 1; count -= 1) {
    const title = words(namesInLine(things.slice(0, count), lang));
    if (title.length <= LONGEST_TITLE) return title;
  }
  return words(namesInLine(things.slice(0, 1), lang));
};

/**
 * Titles for a cycle, lead item first: the things before the theme, the theme before the things, and the lead alone; or
 * the theme where there are none. The first is used where the record gives none; all are different.
 */
export const titlesOf = (
  things: readonly Kinded[],
  { theme, ...month }: { readonly year: number; readonly month: number; readonly theme: string },
  lang: string,
  words: TitleWords,
): readonly [string, ...string[]] => {
  const when = monthName(month, lang);
  if (things.length === 0) return [words.bareTitle(theme, when)];
  const trade = tradeOf(things);
  const title = (line: string): string =>
    words.title(line, theme, when, trade && !wordsIn(`${line} ${theme}`).includes(trade) ? trade : undefined);
  const first = fitting(things, lang, title);
  const inside = things.map(({ name }) => ({ short: name, name }));
  const others = [
    fitting(inside, lang, (line) => words.themeTitle(theme, line)),
    title(namesInLine(things.slice(0, 1), lang)),
  ];
  return [first, ...others.filter((title, i) => title !== first && others.indexOf(title) === i)];
};
