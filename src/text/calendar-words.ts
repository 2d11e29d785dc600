/** Months and days of the week by their names, in the languages of the trade that the runtime knows. */
import { dayNumber, MS_A_DAY } from './days.ts';
import { fold } from './fold.ts';
import { lazily } from './lazy.ts';

const LANGUAGES = ['en', 'de', 'fr', 'es', 'it', 'nl', 'sv', 'da', 'nb', 'fi', 'pl', 'pt'];

/** Some languages shorten a month to its number: "15.3." in Finnish. */
const IS_WORD = /^\p{L}/u;

const nameOf = (word: string): string => fold(word).replace(/\.$/, '');

const namesIn = (options: Intl.DateTimeFormatOptions, days: readonly number[]): ReadonlyMap<string, number> =>
  new Map(
    LANGUAGES.flatMap((lang) => {
      const format = new Intl.DateTimeFormat(lang, { ...options, timeZone: 'UTC' });
      return days.map((day, i) => {
        const parts = format.formatToParts(day * MS_A_DAY);
        const name = parts.find(({ type }) => type === 'month' || type === 'weekday')?.value ?? '';
        return [nameOf(name), i + 1] as const;
      });
    }).filter(([name]) => IS_WORD.test(name)),
  );

/** With a day beside it a month has the form that it has in a date: "3 kwietnia". */
const months = lazily(() => {
  const days = Array.from({ length: 12 }, (_, i) => dayNumber(2026, i + 1, 15) ?? 0);
  return new Map([
    ...namesIn({ month: 'long' }, days),
    ...namesIn({ month: 'long', day: 'numeric' }, days),
    ...namesIn({ month: 'short', day: 'numeric' }, days),
  ]);
});

/** From a Monday on. */
const WEEK = Array.from({ length: 7 }, (_, i) => i + 4);
const weekdays = lazily(
  () =>
    new Set([...namesIn({ weekday: 'long' }, WEEK).keys(), ...namesIn({ weekday: 'short' }, WEEK).keys()]),
);

/** The number of a month, from 1, by its name or a beginning of it, of three letters or more, that is no other month's; 0 for another word. */
export const monthOfWord = (word: string): number => {
  const name = nameOf(word);
  const whole = months().get(name);
  if (whole !== undefined || name.length < 3) return whole ?? 0;
  const meant = new Set([...months()].flatMap(([one, number]) => (one.startsWith(name) ? [number] : [])));
  return meant.size === 1 ? ([...meant][0] ?? 0) : 0;
};

/** Whether a word is the name of a day of the week, or its short form. */
export const isDayOfWeek = (word: string): boolean => weekdays().has(nameOf(word));
