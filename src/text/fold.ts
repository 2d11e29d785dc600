/** One spelling for what a reader takes as the same, in two strengths: names keep their accents, words lose them. */

/**
 * A name or a cell folded for comparing: NFKC, lower case, runs of white space as one space, none at the ends.
 * Accents stay, because two names that differ in one are two names.
 */
export const foldCase = (text: string): string =>
  text.normalize('NFKC').replace(/\s+/g, ' ').trim().toLowerCase();

/** Letters that no decomposition takes apart, as people type them without a special key. */
const PLAIN: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
};

/**
 * A word or text folded for comparing: NFKD, the combining marks of Latin, Greek and Cyrillic dropped (U+0300 to
 * U+036F; marks of other scripts are letters to their readers), lower case, straight apostrophes, soft hyphens
 * and zero-width signs removed. The result is in NFC.
 */
export const fold = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[\u0300-\u036f\u00ad\u200b-\u200d\u2060\ufeff]/g, '')
    .toLowerCase()
    .replace(/[\u2018\u2019\u02bc\u2032`´]/g, "'")
    .replace(/[ßæœøłđðþı]/g, (letter) => PLAIN[letter] as string)
    .normalize('NFC');

/** A cell's or a phrase's words folded for comparing, both ways: without accents, and one space between words. */
export const foldWords = (text: string): string => fold(foldCase(text));
