/** A text or a page brought down to its bare words, so that two tellings of one thing can be compared. */

const named: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  shy: '',
};

/** Character references (HTML Living Standard, 13.5) that our own serialisers write. */
const withoutReferences = (text: string): string =>
  text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|([a-z]+));/gi, (whole, hex, decimal, name) => {
    if (name !== undefined) return named[name.toLowerCase()] ?? whole;
    return String.fromCodePoint(Number.parseInt(hex ?? decimal, hex === undefined ? 10 : 16));
  });

/** Elements that stand inside a word's line: taking their tags away leaves no gap. */
const INLINE = /<\/?(?:a|abbr|b|bdi|code|em|i|mark|q|s|small|span|strong|sub|sup|u|wbr)(?:\s[^>]*)?>/gi;

/**
 * What a visitor reads of a page, and where its links lead; not its head, scripts and styles, nor a section of notes
 * to the owner, `<section data-notes>`.
 */
const wordsOfPage = (html: string): string => {
  const body = html
    .replace(/<head[\s>][\s\S]*?<\/head>/i, ' ')
    .replace(/<section data-notes>[\s\S]*?<\/section>/gi, ' ')
    .replace(/<!--[\s\S]*?-->/g, ' ')
    .replace(/<(script|style)[\s>][\s\S]*?<\/\1>/gi, ' ');
  const links = [...body.matchAll(/\shref="([^"]*)"/g)].map(([, href]) => href);
  return withoutReferences([body.replace(INLINE, '').replace(/<[^>]*>/g, ' '), ...links].join(' \u0001 '));
};

/**
 * Words in lower case with single spaces between them: white space, quotes, dashes, soft hyphens and every other sign
 * are gone. `page` says that the text is HTML.
 */
export const plainWords = (text: string, page = false): string =>
  (
    (page ? wordsOfPage(text) : text)
      .replaceAll('\u00ad', '')
      .normalize('NFKC')
      .toLowerCase()
      .match(/[\p{L}\p{M}\p{N}]+/gu) ?? []
  ).join(' ');
