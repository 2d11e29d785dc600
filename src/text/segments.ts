/** Words, sentences and signs of a text as UAX #29 cuts them in a language. */

type Granularity = 'sentence' | 'word' | 'grapheme';

/** What lies between two breaks. `index` is where it begins, in UTF-16 units. */
export interface Segment {
  readonly segment: string;
  readonly index: number;
  /** Whether it is a word; in sentences and signs, false. */
  readonly isWordLike: boolean;
}

const segmenters = new Map<string, Intl.Segmenter>();

/** The runtime's segmenter of a language (BCP 47), made once, because making one costs more than using it. */
const segmenterFor = (lang: string, granularity: Granularity): Intl.Segmenter => {
  const key = `${lang} ${granularity}`;
  const made = segmenters.get(key) ?? new Intl.Segmenter(lang, { granularity });
  segmenters.set(key, made);
  return made;
};

/**
 * UTF-16 units that the runtime is given at once: what it takes for a text grows with the square of its length (a
 * text of 256,000 units took it two minutes, Node 20). No sentence is as long as the second.
 */
const ENOUGH: Readonly<Record<Granularity, number>> = { word: 1000, grapheme: 1000, sentence: 4000 };
const MOST: Readonly<Record<Granularity, number>> = { word: 2000, grapheme: 2000, sentence: 16_000 };

/**
 * Where every rule of UAX #29 breaks: before a plain letter or digit that comes after white space or after a Chinese
 * or Japanese stop (words, signs), and after the end of a paragraph (sentences).
 */
const BETWEEN_WORDS =
  /[\s。、！？](?=[A-Za-z0-9\u00c0-\u00d6\u0400-\u0482\u3041-\u3096\u30a1-\u30fa\u4e00-\u9fff])/g;
const SURE: Readonly<Record<Granularity, RegExp>> = {
  word: BETWEEN_WORDS,
  grapheme: BETWEEN_WORDS,
  sentence: /\n(?=[^\n])/g,
};

/** Where a text is cut that has nothing sure: best between words, never within a pair. */
const unsureCut = (text: string, from: number, to: number): number => {
  // Sought in this piece alone: a text without a space would be read to its beginning for each of them.
  const space = text.slice(from, to).lastIndexOf(' ');
  if (space > 0) return from + space + 1;
  return /[\udc00-\udfff]/.test(text.charAt(to)) ? to - 1 : to;
};

/** The end of the next piece of a text that the runtime is given, from `start` on. */
const pieceEnd = (text: string, start: number, granularity: Granularity): number => {
  const most = start + MOST[granularity];
  if (text.length <= start + ENOUGH[granularity]) return text.length;
  const sure = SURE[granularity];
  sure.lastIndex = 0;
  const window = text.slice(start + ENOUGH[granularity], most);
  const found = sure.exec(window);
  if (found) return start + ENOUGH[granularity] + found.index + 1;
  return text.length <= most ? text.length : unsureCut(text, start, most);
};

/** The segments of a text, in order; put together they are the text. A word of thousands of letters is cut into several. */
export function* segmentsOf(text: string, lang: string, granularity: Granularity): Generator<Segment> {
  const segmenter = segmenterFor(lang, granularity);
  for (let start = 0; start < text.length; ) {
    const end = pieceEnd(text, start, granularity);
    for (const { segment, index, isWordLike = false } of segmenter.segment(text.slice(start, end)))
      yield { segment, index: start + index, isWordLike };
    start = end;
  }
}

/**
 * Text of Latin letters and common signs alone, in which every run of letters is a word: there the breaks of
 * UAX #29 are found five times as fast by a pattern. Figures, and stops and colons between letters, are left to
 * the runtime.
 */
const PLAIN_TEXT =
  /^(?:[A-Za-z\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u00ff '’"“”‘,;!?()–—…-]|[.:](?![A-Za-z\u00c0-\u00ff]))*$/;
const PLAIN_WORD = /[A-Za-z\u00c0-\u00ff]+(?:['’‘][A-Za-z\u00c0-\u00ff]+)*/g;

/** What stands between two sure breaks: one figure in a text leaves no more to the runtime than its own piece. */
const PIECE = /[\s\S]*?(?:\s(?=[A-Za-z0-9])|$)/y;

/** A word with the place at which it begins, in UTF-16 units. */
interface FoundWord {
  readonly text: string;
  readonly index: number;
}

const plainWords = (piece: string, from: number): readonly FoundWord[] =>
  Array.from(piece.matchAll(PLAIN_WORD), ({ 0: text, index }) => ({ text, index: from + index }));

/** The words of a text in a language (BCP 47), also of one that writes none apart. */
export const wordsIn = (text: string, lang: string): readonly FoundWord[] => {
  if (PLAIN_TEXT.test(text)) return plainWords(text, 0);
  const words: FoundWord[] = [];
  for (let from = 0; from < text.length; from = PIECE.lastIndex) {
    PIECE.lastIndex = from;
    const piece = PIECE.exec(text)?.[0] ?? '';
    if (PLAIN_TEXT.test(piece)) words.push(...plainWords(piece, from));
    else
      for (const { segment, index, isWordLike } of segmentsOf(piece, lang, 'word'))
        if (isWordLike) words.push({ text: segment, index: from + index });
  }
  return words;
};

/** How many words a text has. */
export const wordCount = (text: string, lang: string): number => wordsIn(text, lang).length;

/** The language's words with the signs between them, which put together are the text. */
export const wordPieces = (
  text: string,
  lang: string,
): readonly { readonly text: string; readonly isWord: boolean }[] =>
  [...segmentsOf(text, lang, 'word')].map(({ segment, isWordLike }) => ({
    text: segment,
    isWord: isWordLike,
  }));

/** What a reader takes for single signs, extended grapheme clusters. */
export const graphemesOf = (text: string, lang: string): readonly string[] =>
  [...segmentsOf(text, lang, 'grapheme')].map(({ segment }) => segment);

/** Printable ASCII never joins into one sign, and asking the segmenter costs. */
const PLAIN = /^[\x20-\x7e]*$/;

/** How many signs a reader sees in a text. */
export const graphemeCount = (text: string, lang: string): number =>
  PLAIN.test(text) ? text.length : graphemesOf(text, lang).length;
