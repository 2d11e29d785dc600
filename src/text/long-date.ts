/** Dates as a language writes them. */
import { MS_A_DAY } from './days.ts';

/** The formats of each language: made once, because making one takes far longer than using it. */
const formatsIn = (options: Intl.DateTimeFormatOptions): ((lang: string) => Intl.DateTimeFormat) => {
  const formats = new Map<string, Intl.DateTimeFormat>();
  return (lang) => {
    const format = formats.get(lang) ?? new Intl.DateTimeFormat(lang, { ...options, timeZone: 'UTC' });
    formats.set(lang, format);
    return format;
  };
};

const dayFormat = formatsIn({ dateStyle: 'long' });
const monthFormat = formatsIn({ month: 'long', year: 'numeric' });

/** "19 March 2026" of a date that exists, `YYYY-MM-DD`; `lang` is a BCP 47 tag. */
export const longDate = (date: string, lang: string): string =>
  dayFormat(lang).format(Date.parse(`${date}T00:00:00Z`));

/** The same of a day number, whole days since 1970-01-01. */
export const longDay = (day: number, lang: string): string => dayFormat(lang).format(day * MS_A_DAY);

/** "March 2026"; `month` from 1 to 12. */
export const longMonth = (year: number, month: number, lang: string): string =>
  monthFormat(lang).format(Date.UTC(year, month - 1, 1));
