/** Currencies as people say them, "pounds", "US dollars", "kr": which of ISO 4217 may be meant. */
import { codes } from 'currency-codes';
import { foldCase } from '../text/fold.ts';
import { currencyDecimals } from './codes.ts';

/** What somebody may say of a currency in a language: its whole names, what they end in, and its signs. */
interface Sayings {
  readonly whole: ReadonlyMap<string, readonly string[]>;
  readonly ending: ReadonlyMap<string, readonly string[]>;
  readonly sign: ReadonlyMap<string, readonly string[]>;
}

/** Metals, units of account, funds and codes for tests, which are in ISO 4217 and in nobody's purse. */
const NO_MONEY = /^X(?:A[GU]|B.|DR|P[DT]|SU|TS|UA|XX)$|^(?:BOV|CH[EW]|CLF|COU|MXV|USN|UY[IW])$/;

/** The name of a currency in a language, as the runtime's CLDR has it: "British Pound". */
export const currencyName = (code: string, lang: string): string =>
  new Intl.DisplayNames([lang, 'en'], { type: 'currency' }).of(code) ?? code;

const said = (
  code: string,
  lang: string,
  currencyDisplay: 'name' | 'symbol' | 'narrowSymbol',
  count: number,
): string =>
  new Intl.NumberFormat(lang, { style: 'currency', currency: code, currencyDisplay })
    .formatToParts(count)
    .find(({ type }) => type === 'currency')?.value ?? code;

const ofLanguage = new Map<string, Sayings>();

const sayingsOf = (lang: string): Sayings => {
  const known = ofLanguage.get(lang);
  if (known) return known;
  const maps = {
    whole: new Map<string, string[]>(),
    ending: new Map<string, string[]>(),
    sign: new Map<string, string[]>(),
  };
  const put = (map: Map<string, string[]>, key: string, code: string): void => {
    const all = map.get(key) ?? [];
    if (!all.includes(code)) map.set(key, [...all, code]);
  };
  for (const code of codes()) {
    if (NO_MONEY.test(code)) continue;
    for (const name of [currencyName(code, lang), said(code, lang, 'name', 1), said(code, lang, 'name', 2)]) {
      put(maps.whole, foldCase(name), code);
      put(maps.ending, foldCase(name).split(/\s+/).at(-1) ?? '', code);
    }
    for (const display of ['symbol', 'narrowSymbol'] as const)
      put(maps.sign, said(code, lang, display, 1), code);
  }
  ofLanguage.set(lang, maps);
  return maps;
};

/**
 * Currencies that some words or a sign may mean, ISO 4217: by their whole names, else by what names end in ("dollars"); in
 * English and in these languages (BCP 47). Nothing for words that mean none.
 */
export const currenciesMeant = (typed: string, langs: readonly string[] = []): readonly string[] => {
  const text = typed.trim();
  const upper = text.toUpperCase();
  if (currencyDecimals(upper) !== undefined) return [upper];
  // Canada's English calls its neighbour's dollars US$.
  const all = ['en', 'en-CA', ...langs].map(sayingsOf);
  return (
    (['sign', 'whole', 'ending'] as const)
      .map((way) => [
        ...new Set(all.flatMap((sayings) => sayings[way].get(way === 'sign' ? text : foldCase(text)) ?? [])),
      ])
      .find((some) => some.length > 0) ?? []
  );
};
