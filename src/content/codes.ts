/** Codes and dates that a published standard decides. */
import { codes, code as currencyByCode } from 'currency-codes';
import { dayNumber } from '../text/days.ts';
import { lazily } from '../text/lazy.ts';

/** Whether a GTIN of 8, 12, 13 or 14 digits ends in its check digit. GS1 General Specifications, 7.9. */
export const isGtin = (text: string): boolean => {
  if (!/^(?:\d{8}|\d{12,14})$/.test(text)) return false;
  const digits = [...text].map(Number).reverse();
  const sum = digits.slice(1).reduce((total, digit, i) => total + digit * (i % 2 === 0 ? 3 : 1), 0);
  return (10 - (sum % 10)) % 10 === digits[0];
};

/** Decimals of an ISO 4217 currency, undefined for an unknown code. The library lacks XCG (in force since 2025). */
export const currencyDecimals = (code: string): number | undefined =>
  code === 'XCG' ? 2 : codes().includes(code) ? currencyByCode(code)?.digits : undefined;

/** Whether an ISO 8601 calendar date exists. `Date.parse` would take 30 February for 2 March. */
export const isDate = (text: string): boolean => {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return false;
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
  return dayNumber(year, month, day) !== undefined;
};

/** Whether a text is a date, or a date and time of day with or without an offset, and exists. ISO 8601. */
export const isDateTime = (text: string): boolean => {
  const [date = '', time] = text.split('T');
  if (!isDate(date)) return false;
  return (
    time !== undefined &&
    /^(?:[01]\d|2[0-3]):[0-5]\d(?::[0-5]\d)?(?:Z|[+-](?:0\d|1[0-4]):[0-5]\d)?$/.test(time)
  );
};

const accepted = (make: () => unknown): boolean => {
  try {
    make();
    return true;
  } catch {
    return false;
  }
};

/** Whether the IANA time zone is known. */
export const isTimeZone = (text: string): boolean =>
  accepted(() => new Intl.DateTimeFormat('en', { timeZone: text }));

/** Made once, because making them takes longer than all the asking, and only where a code is checked. */
const namesOf = {
  language: lazily(() => new Intl.DisplayNames(['en'], { type: 'language', fallback: 'none' })),
  region: lazily(() => new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' })),
} as const;

const hasName = (type: keyof typeof namesOf, code: string): boolean => namesOf[type]().of(code) !== undefined;

/** Two letters that ISO 3166-1 reserves for other uses, and Unicode gives a name. */
const NO_COUNTRY = new Set(['EU', 'EZ', 'QO', 'UN', 'XA', 'XB', 'ZZ']);

/** Whether an ISO 3166-1 alpha-2 code names a country. A code that was replaced (UK by GB) does not. */
export const isCountry = (text: string): boolean =>
  /^[A-Z]{2}$/.test(text) &&
  !NO_COUNTRY.has(text) &&
  new Intl.Locale(`und-${text}`).region === text &&
  hasName('region', text);

/** Whether the BCP 47 language tag is well formed, and its language and region are known. */
export const isLanguage = (text: string): boolean =>
  accepted(() => new Intl.Locale(text)) &&
  hasName('language', new Intl.Locale(text).language) &&
  text
    .split('-')
    .slice(1)
    .filter((part) => /^[a-z]{2}$/i.test(part))
    .every((part) => isCountry(part.toUpperCase()));

/** Whether a text is an absolute http or https address. RFC 3986. */
export const isAddress = (text: string): boolean => /^https?:\/\/[^\s/?#]+/i.test(text) && URL.canParse(text);
