/** What English writes differently by region, as far as our own words have it. */

/** The words of one way to write English, as they stand inside a sentence. */
export interface Spelling {
  /** BCP 47: how rows of things are joined. */
  readonly tag: 'en-GB' | 'en-US';
  readonly colour: string;
  readonly catalogue: string;
  readonly draughts: string;
  /** A small child's bed. */
  readonly cot: string;
  /** Allergens that are spelled otherwise than in a record. */
  readonly allergens: ReadonlyMap<string, string>;
  /** How short a candle's wick is to be cut. */
  readonly wick: string;
}

export const british: Spelling = {
  tag: 'en-GB',
  colour: 'colour',
  catalogue: 'catalogue',
  draughts: 'draughts',
  cot: 'cot',
  allergens: new Map(),
  wick: '6 mm',
};

export const american: Spelling = {
  tag: 'en-US',
  colour: 'color',
  catalogue: 'catalog',
  draughts: 'drafts',
  cot: 'crib',
  allergens: new Map([
    ['molluscs', 'mollusks'],
    ['sulphites', 'sulfites'],
  ]),
  wick: 'a quarter of an inch',
};

/**
 * Regions whose English descends in CLDR from American and not from "English of the world" (supplemental data,
 * parentLocales, from memory).
 */
const AMERICAN: ReadonlySet<string> = new Set('AS BI GU MH MP PH PR UM US VI'.split(' '));

/**
 * The spelling of an English tag (BCP 47). `en` without a region is American, as CLDR's likely subtags have it and as
 * dates are written by it. What is no English gets the British.
 */
export const spellingFor = (lang: string): Spelling => {
  const { language, region = '' } = new Intl.Locale(lang).maximize();
  return language === 'en' && AMERICAN.has(region) ? american : british;
};
