/** Dates as a language writes them. */
import { MS_A_DAY } from './days.ts';

const formats = new Map<string, Intl.DateTimeFormat>();

/** The format of a language: made once, because making one takes far longer than using it. */
const formatOf = (lang: string): Intl.DateTimeFormat => {
  const format = formats.get(lang) ?? new Intl.DateTimeFormat(lang, { dateStyle: 'long', timeZone: 'UTC' });
  formats.set(lang, format);
  return format;
};

/** "19 March 2026" of a date that exists, `YYYY-MM-DD`; `lang` is a BCP 47 tag. */
export const longDate = (date: string, lang: string): string =>
  formatOf(lang).format(Date.parse(`${date}T00:00:00Z`));

/** The same of a day number, whole days since 1970-01-01. */
export const longDay = (day: number, lang: string): string => formatOf(lang).format(day * MS_A_DAY);
