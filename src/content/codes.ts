/** Codes and dates that a published standard decides. */
import { codes, code as currencyByCode } from 'currency-codes';

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
  const [year = 0, month = 0, day = 0] = parts.slice(1).map(Number);
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1];
  return days !== undefined && day >= 1 && day <= days;
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

/** Made once: making them takes longer than all the asking. */
const NAMES = {
  language: new Intl.DisplayNames(['en'], { type: 'language', fallback: 'none' }),
  region: new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' }),
} as const;

const names = (type: keyof typeof NAMES, code: string): boolean => NAMES[type].of(code) !== undefined;

/** Two letters that ISO 3166-1 reserves for other uses, and Unicode gives a name. */
const NO_COUNTRY = new Set(['EU', 'EZ', 'QO', 'UN', 'XA', 'XB', 'ZZ']);

/** Whether an ISO 3166-1 alpha-2 code names a country. A code that was replaced (UK by GB) does not. */
export const isCountry = (text: string): boolean =>
  /^[A-Z]{2}$/.test(text) &&
  !NO_COUNTRY.has(text) &&
  new Intl.Locale(`und-${text}`).region === text &&
  names('region', text);

/** Whether the BCP 47 language tag is well formed, and its language and region are known. */
export const isLanguage = (text: string): boolean =>
  accepted(() => new Intl.Locale(text)) &&
  names('language', new Intl.Locale(text).language) &&
  text
    .split('-')
    .slice(1)
    .filter((part) => /^[a-z]{2}$/i.test(part))
    .every((part) => isCountry(part.toUpperCase()));

/** Whether a text is an absolute http or https address. RFC 3986. */
export const isAddress = (text: string): boolean => /^https?:\/\/[^\s/?#]+/i.test(text) && URL.canParse(text);
