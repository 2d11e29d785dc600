/** Words and signs of a text as UAX #29 cuts them in a language. */

const segmenters = new Map<string, Intl.Segmenter>();

/** The runtime's segmenter of a language (BCP 47), made once, because making one costs more than using it. */
export const segmenterFor = (lang: string, granularity: 'sentence' | 'word' | 'grapheme'): Intl.Segmenter => {
  const key = `${lang} ${granularity}`;
  const made = segmenters.get(key) ?? new Intl.Segmenter(lang, { granularity });
  segmenters.set(key, made);
  return made;
};

/** How many words a text has, in languages that write none apart too. */
export const wordCount = (text: string, lang: string): number => {
  let count = 0;
  for (const { isWordLike } of segmenterFor(lang, 'word').segment(text)) if (isWordLike) count += 1;
  return count;
};

/** The language's words with the signs between them, which put together are the text. */
export const wordPieces = (
  text: string,
  lang: string,
): readonly { readonly text: string; readonly isWord: boolean }[] =>
  [...segmenterFor(lang, 'word').segment(text)].map(({ segment, isWordLike }) => ({
    text: segment,
    isWord: isWordLike ?? false,
  }));

/** What a reader takes for single signs, extended grapheme clusters. */
export const graphemesOf = (text: string, lang: string): readonly string[] =>
  [...segmenterFor(lang, 'grapheme').segment(text)].map(({ segment }) => segment);

/** Printable ASCII never joins into one sign, and asking the segmenter costs. */
const PLAIN = /^[\x20-\x7e]*$/;

/** How many signs a reader sees in a text. */
export const graphemeCount = (text: string, lang: string): number =>
  PLAIN.test(text) ? text.length : graphemesOf(text, lang).length;
