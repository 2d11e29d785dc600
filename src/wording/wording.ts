/** Every sentence and label that a person reads, as functions of data. One file a language has the same shape as English. */
import { primaryLanguage } from '../text/language-tag.ts';
import { type en, englishFor } from './en.ts';

/** The shape that every language has. */
export type Wording = typeof en;

/** The wording of a language. English until another is written, so a caller that needs the page's own language asks `lang` of it. */
export const wordingFor = (lang: string): Wording => englishFor(lang);

/** Whether a wording is in a language (BCP 47), whatever its region. */
export const isWordedIn = ({ lang }: Wording, wanted: string): boolean =>
  primaryLanguage(wanted) === primaryLanguage(lang);
