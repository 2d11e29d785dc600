/** Prices as people type them into a list: signs of currencies, thousands and decimals of any sort. */
import { codes } from 'currency-codes';

/** An amount in digits with a point, and the currency that its sign or letters name. */
export interface TypedPrice {
  /** As a record has it: `1234.50`. */
  readonly amount: string;
  /** ISO 4217, where only one currency is meant. */
  readonly currency?: string;
}

/** Signs of currencies, each with all that it may mean: CLDR's narrow symbols, by the runtime. */
const bySign = (): ReadonlyMap<string, readonly string[]> => {
  const signs = new Map<string, string[]>();
  for (const currency of codes()) {
    const parts = new Intl.NumberFormat('en', {
      style: 'currency',
      currency,
      currencyDisplay: 'narrowSymbol',
    }).formatToParts(1);
    const sign = parts.find(({ type }) => type === 'currency')?.value ?? currency;
    if (sign !== currency) signs.set(sign, [...(signs.get(sign) ?? []), currency]);
  }
  return signs;
};
let signs: ReadonlyMap<string, readonly string[]> | undefined;

/** Where a sign by itself means several, the one that most people mean. Common usage, no source. */
const MOSTLY: Readonly<Record<string, string>> = { $: 'USD', '£': 'GBP', '€': 'EUR', '¥': 'JPY', kr: 'SEK' };
const LETTERS: Readonly<Record<string, string>> = {
  US$: 'USD',
  A$: 'AUD',
  C$: 'CAD',
  CA$: 'CAD',
  AU$: 'AUD',
  NZ$: 'NZD',
  EURO: 'EUR',
  EUROS: 'EUR',
  SFR: 'CHF',
  FR: 'CHF',
  円: 'JPY',
  ZŁ: 'PLN',
};

/** The currency that a sign or some letters name; the box's own where they may mean it. */
export const currencyNamed = (sign: string, own: string): string | undefined => {
  const word = sign.trim().replace(/\.$/, '');
  if (word === '') return undefined;
  const upper = word.toUpperCase();
  if (codes().includes(upper)) return upper;
  if (LETTERS[upper] !== undefined) return LETTERS[upper];
  signs ??= bySign();
  const meant = signs.get(word) ?? signs.get(word.toLowerCase()) ?? [];
  if (meant.includes(own)) return own;
  return MOSTLY[word.toLowerCase()] ?? (meant.length === 1 ? meant[0] : undefined);
};

const AMOUNT = /^([^\d\s-]{0,5}?)\s*(\d[\d.,'’\s]*?)(?:[.,:]?[-–—]{1,2})?\s*([^\d\s-]{0,5})$/u;

/** The sign of decimals in an amount that has both signs, or one that can be nothing else; undefined where it may be either. */
const decimalSign = (digits: string): '.' | ',' | 'none' | undefined => {
  const [point, comma] = [digits.lastIndexOf('.'), digits.lastIndexOf(',')];
  if (point < 0 && comma < 0) return 'none';
  if (point >= 0 && comma >= 0) return point > comma ? '.' : ',';
  const sign = point >= 0 ? '.' : ',';
  const groups = digits.split(sign);
  if (groups.length > 2) return 'none';
  // Three digits after one sign are thousands to most and decimals to nobody who sells in pounds.
  return /^\d{3}$/.test(groups[1] ?? '') ? (groups[0] === '0' ? sign : undefined) : sign;
};

/** The sign that the prices of a column have before their decimals, where any of them shows it. */
export const decimalsOf = (cells: readonly string[]): '.' | ',' | undefined => {
  const shown = cells.flatMap((cell) => {
    const digits = AMOUNT.exec(cell)?.[2];
    const sign = digits === undefined ? undefined : decimalSign(digits.replace(/['’\s]/g, ''));
    return sign === '.' || sign === ',' ? [sign] : [];
  });
  return shown.length > 0 && shown.every((sign) => sign === shown[0]) ? shown[0] : undefined;
};

/** A price as it was typed; undefined for a range, for words, and for whatever is no one amount. */
export const readPrice = (
  cell: string,
  { own, decimals }: { readonly own: string; readonly decimals?: '.' | ',' | undefined },
): TypedPrice | undefined => {
  const [, before = '', typed = '', after = ''] = AMOUNT.exec(cell.trim()) ?? [];
  if (typed === '') return undefined;
  const sign = before || after;
  const currency = sign === '' ? undefined : currencyNamed(sign, own);
  if (sign !== '' && currency === undefined) return undefined;
  const digits = typed.replace(/['’\s]/g, '').replace(/[.,]$/, '');
  // One that may be either is thousands, unless its column writes decimals with that sign.
  const mark = decimalSign(digits) ?? decimals;
  const at = mark === '.' || mark === ',' ? digits.lastIndexOf(mark) : -1;
  const whole = (at < 0 ? digits : digits.slice(0, at)).replace(/[.,]/g, '');
  const part = at < 0 ? '' : digits.slice(at + 1);
  const amount = part === '' ? whole : `${whole}.${part}`;
  return { amount, ...(currency !== undefined && { currency }) };
};
