/** True apostrophes, quotes, dashes and ellipses, by language. Addresses keep every character. */

import { primaryLanguage } from '../text/language-tag.ts';

interface Quotes {
  /** Opening and closing, outer and inner. */
  readonly outer: readonly [string, string];
  readonly inner: readonly [string, string];
}

const NARROW_SPACE = '\u202f';

/** CLDR's quotation delimiters; French has its spaces from the Lexique of the Imprimerie nationale. */
const quotesByLanguage: Record<string, Quotes> = {
  en: { outer: ['“', '”'], inner: ['‘', '’'] },
  de: { outer: ['„', '“'], inner: ['‚', '‘'] },
  fr: { outer: [`«${NARROW_SPACE}`, `${NARROW_SPACE}»`], inner: ['“', '”'] },
};

/** Addresses of pages and of people, which are to be copied as they are. */
const ADDRESS = /(?:https?:\/\/|www\.)[^\s<>"]+|(?<![\w.+-])[\w.+-]+@[\w-]+(?:\.[\w-]+)+/giu;

const OPENS_AFTER = /^$|[\s([{<–—‘“„‚«/\u202f]/u;
const LETTER = /[\p{L}\p{N}]/u;
/** Words that lose their first letters: their mark is an apostrophe, though it stands where a quote opens. */
const CLIPPED = /^(?:tis|twas|twere|til|em|cause|n|\d\ds?)(?![\p{L}\p{N}])/iu;

/** Which quotes stand open: carried from one run of a paragraph to the next. */
interface Open {
  outer: boolean;
  inner: boolean;
}

const doubleQuote = (quotes: Quotes, open: Open, before: string, after: string): string => {
  if (/\p{N}/u.test(before) && !open.outer) return '″';
  const opens = !open.outer && OPENS_AFTER.test(before) && !/\s/.test(after);
  open.outer = opens;
  return quotes.outer[opens ? 0 : 1];
};

const singleQuote = (quotes: Quotes, open: Open, before: string, rest: string): string => {
  const after = rest.charAt(0);
  if (OPENS_AFTER.test(before) && !CLIPPED.test(rest) && LETTER.test(after)) {
    open.inner = true;
    return quotes.inner[0];
  }
  if (LETTER.test(before) && LETTER.test(after)) return '’';
  if (open.inner && before !== '' && !/\s/.test(before)) {
    open.inner = false;
    return quotes.inner[1];
  }
  return /\p{N}/u.test(before) ? '′' : '’';
};

const dashed = (text: string): string =>
  text
    .replace(/(?<!-)---(?!-)/g, '—')
    .replace(/(?<!-)--(?!-)/g, '–')
    .replace(/(?<=\S) - (?=\S)/g, ' – ')
    .replace(/(?<!\.)\.\.\.(?!\.)/g, '…');

const spaced = (text: string): string => text.replace(/(?<=\S)[ \u00a0](?=[;:!?](?:\s|$))/g, NARROW_SPACE);

const words = (text: string, lang: string, open: Open, before: string, after: string): string => {
  const language = primaryLanguage(lang);
  const quotes = quotesByLanguage[language];
  const plain = language === 'fr' ? spaced(dashed(text)) : dashed(text);
  let set = '';
  for (let i = 0; i < plain.length; i += 1) {
    const sign = plain.charAt(i);
    const previous = i > 0 ? plain.charAt(i - 1) : before;
    const rest = plain.slice(i + 1) || after;
    if (sign === '"' && quotes) set += doubleQuote(quotes, open, previous, rest.charAt(0));
    else if (sign === "'" && quotes) set += singleQuote(quotes, open, previous, rest);
    else if (sign === "'" && LETTER.test(previous) && LETTER.test(rest.charAt(0))) set += '’';
    else set += sign;
  }
  return set;
};

/**
 * The runs of one paragraph (text broken by emphasis, links, code), each typeset with its neighbours in sight,
 * so that a quotation may begin in one run and end in another. A run marked `asIs` is only looked at.
 */
export const typesetRuns = (
  runs: readonly { readonly text: string; readonly asIs: boolean }[],
  lang: string,
): readonly string[] => {
  const open: Open = { outer: false, inner: false };
  const pieces = runs.flatMap(({ text, asIs }, run) => {
    if (asIs) return [{ run, text, asIs }];
    const addresses = [...text.matchAll(ADDRESS)];
    let at = 0;
    const cut: { run: number; text: string; asIs: boolean }[] = [];
    for (const found of addresses) {
      cut.push({ run, text: text.slice(at, found.index), asIs: false }, { run, text: found[0], asIs: true });
      at = found.index + found[0].length;
    }
    return [...cut, { run, text: text.slice(at), asIs: false }];
  });
  // What follows each piece, in its neighbours' own signs: empty pieces are looked through.
  const following = pieces.map(() => '');
  for (let i = pieces.length - 2, next = ''; i >= 0; i -= 1) {
    next = pieces[i + 1]?.text.charAt(0) || next;
    following[i] = next;
  }
  const set = runs.map(() => '');
  let before = '';
  pieces.forEach((piece, i) => {
    set[piece.run] += piece.asIs ? piece.text : words(piece.text, lang, open, before, following[i] ?? '');
    before = piece.text.slice(-1) || before;
  });
  return set;
};

/** One piece of plain text, typeset. Languages other than English, German and French keep their quotes. */
export const typeset = (text: string, lang: string): string =>
  typesetRuns([{ text, asIs: false }], lang)[0] ?? '';
