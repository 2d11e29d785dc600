/** Countries as people name them → the two capital letters of ISO 3166-1. */
import { foldCase } from '../../text/fold.ts';
import { isCountry } from '../codes.ts';

/** What no list of countries has, because it is a part of one or said short. Common usage, no source. */
const ALSO: Readonly<Record<string, string>> = {
  uk: 'GB',
  'u.k.': 'GB',
  'great britain': 'GB',
  britain: 'GB',
  england: 'GB',
  scotland: 'GB',
  wales: 'GB',
  'northern ireland': 'GB',
  usa: 'US',
  'u.s.a.': 'US',
  'u.s.': 'US',
  america: 'US',
  holland: 'NL',
  korea: 'KR',
  czechia: 'CZ',
  'czech republic': 'CZ',
  turkey: 'TR',
};

/** Languages in which countries are known by name. */
const LANGUAGES = ['en', 'de', 'fr', 'es', 'it', 'nl', 'pt', 'sv', 'da', 'nb', 'fi', 'pl', 'ja'];

let known: ReadonlyMap<string, string> | undefined;

const countries = (): ReadonlyMap<string, string> => {
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
  const all = letters.flatMap((a) => letters.map((b) => a + b)).filter(isCountry);
  const names = new Map<string, string>();
  for (const lang of [...LANGUAGES].reverse()) {
    const name = new Intl.DisplayNames([lang], { type: 'region' });
    for (const code of all) names.set(foldCase(name.of(code) ?? code), code);
  }
  return names;
};

/** The country that a text names, by its letters or in words ("Made in Portugal"); undefined where it names none. */
export const countryNamed = (text: string): string | undefined => {
  const bare = foldCase(text)
    .replace(/^(?:made|grown|woven|printed|designed|produced) in /, '')
    .replace(/^the /, '');
  if (Object.hasOwn(ALSO, bare)) return ALSO[bare];
  if (isCountry(bare.toUpperCase())) return bare.toUpperCase();
  known ??= countries();
  // "Stoke-on-Trent, England": the last part is the widest.
  return (
    known.get(bare) ??
    (bare.includes(',') ? countryNamed(bare.slice(bare.lastIndexOf(',') + 1).trim()) : undefined)
  );
};
