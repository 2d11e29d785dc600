/** Slips within one text: quotes, braces and signs that mean something else. */

import { literal } from '../text/literal-pattern.ts';
import { depthOf, fieldLine, keysOf, pathAt, STRANGE_BLANKS } from './record-lines.ts';
import { named, oneLine, QUOTES_ROUND, quoted, type Slip, unquoted, within } from './slip.ts';

const OPEN = '“”„‟«»‘‚‹';
const CLOSE = '“”«»’‘›';
const ROUND = new RegExp(
  `^(?:[${OPEN}]([^${OPEN}${CLOSE.replace('’', '')}]*)["${CLOSE}]|["']([^${OPEN}"]*)[${CLOSE}])$`,
);
const ROUND_WITHIN = new RegExp(
  `(?<=[\\[{:,]\\s*)[${OPEN}]([^${OPEN}${CLOSE}"]*)[${CLOSE}](?=\\s*[,\\]}])`,
  'g',
);
const KEY_ROUND = new RegExp(
  `^([ \\t]*(?:-[ \\t]+)*)[${OPEN}](\\p{L}[\\p{L}\\p{N}_-]*)[${CLOSE}][ \\t]*:[ \\t]*`,
  'u',
);

const STRANGE_KEY = new RegExp(`^[\\s${STRANGE_BLANKS}]`);

/** Whether a key was taken with quotes or blanks that are none of its letters. */
export const isDressed = (key: string): boolean => isTypographic(key) || STRANGE_KEY.test(key);

/** Whether a text stands between typographic quotes as a whole. */
export const isTypographic = (text: string): boolean => ROUND.test(text) && !/^["']/.test(text);

export const typographicQuotes: Slip = (lines, at) => {
  const line = lines[at] ?? '';
  const message = 'Unexpected typographic quotes, expected straight ones: "';
  const fix =
    'Quotes round a field’s text are typed straight; where the curly ones belong to the text, put straight ones outside them';
  const bare = line.replace(KEY_ROUND, '$1$2: ');
  if (bare !== line)
    return oneLine(
      at,
      bare,
      depthOf(line) + 1,
      'Unexpected quotes round a field’s name, expected the name alone',
      'Take the quotes out',
    );
  const { head, value } = fieldLine(line);
  const [, inner, other] = ROUND.exec(value) ?? [];
  const text = inner ?? other;
  if (text !== undefined) return oneLine(at, head + quoted(text), head.length + 1, message, fix);
  const within = /^[[{]/.test(value) ? value.replace(ROUND_WITHIN, (_, one: string) => quoted(one)) : value;
  return within === value ? [] : oneLine(at, head + within, head.length + 1, message, fix);
};

export const quotes: Slip = (lines, at) => {
  const { head, key, value } = fieldLine(lines[at] ?? '');
  if (!/^["']/.test(value)) return [];
  const comma = /^(?:"[^"\\]*"|'[^']*'),$/.test(value);
  if (comma)
    return oneLine(
      at,
      head + value.slice(0, -1),
      head.length + value.length,
      'Unexpected comma after the quotes, expected nothing after them',
      'Take the comma out',
    );
  const quote = value.slice(0, 1);
  const text = unquoted(value);
  const isOpen = value.indexOf(quote, 1) < 0;
  const message = isOpen
    ? `Unexpected quote \`${quote}\` that is not closed, expected one at the end of ${named(key)} too`
    : value.includes('\\') && quote === '"' && !/"./.test(value.slice(1))
      ? `Unexpected backslash in ${named(key)}, expected single quotes round it`
      : `Unexpected quote within ${named(key)}, expected other quotes round it: ${quote === '"' ? "'" : '"'}`;
  const fix = isOpen ? 'Close the quote' : 'Put quotes of the other kind round the whole text';
  return oneLine(at, head + quoted(text), head.length + 1, message, fix);
};

/** Whether a text ends with a quote that nothing opens; after a number it stands for inches. */
export const isHalfQuoted = (text: string): boolean => /^[^"]*[^"\d\s]"$/.test(text);

/** What stands within braces or brackets, its own quotes taken off, be it only one. */
const bare = (text: string): string => {
  const trimmed = text.trim();
  if (/^(?:"[^"\\]*"|'[^']*')$/.test(trimmed) || isHalfQuoted(trimmed))
    return trimmed.replace(/^["']/, '').slice(0, -1);
  return /^(?:"[^"]*|'[^']*)$/.test(trimmed) ? trimmed.slice(1) : trimmed;
};

/** The texts within brackets. A quote that nothing closes runs to the end, or to the comma before the next quote. */
const textsWithin = (inner: string): readonly string[] => {
  const texts: string[] = [];
  let rest = inner;
  while (rest.trim() !== '') {
    const [, whole = '', quote] = /^(\s*(?:(["'])(?:(?!\2\s*(?:,|$)).)*\2\s*(?=,|$))?)/.exec(rest) ?? [];
    const isOpen = quote === undefined ? /^\s*["']/.test(rest) : new RegExp(`,\\s*${quote}`).test(whole);
    const next = /,(?=\s*["'])/.exec(rest)?.index;
    const end =
      quote !== undefined && !isOpen ? whole.length : isOpen ? (next ?? rest.length) : rest.indexOf(',');
    texts.push(bare(rest.slice(0, end < 0 ? undefined : end)));
    rest = end < 0 ? '' : rest.slice(end + 1);
  }
  return texts;
};

/** Within braces: a key that the schema knows begins a part, and what stands before the next is its text. */
export const braces: Slip = (lines, at, schema) => {
  const { head, value } = fieldLine(lines[at] ?? '');
  if (!value.startsWith('{')) return [];
  const known = keysOf(schema, pathAt(lines, at));
  if (known.length === 0) return [];
  const inner = value.slice(1).replace(/\}?$/, '');
  const begins = [
    ...inner.matchAll(new RegExp(`(?<=^|[,\\s])(${known.map(literal).join('|')})[ \\t]*:`, 'g')),
  ];
  const first = begins[0];
  if (!first || inner.slice(0, first.index).trim() !== '') return [];
  const parts = begins.map((match, i) => {
    const text = inner.slice(match.index + match[0].length, begins[i + 1]?.index ?? inner.length);
    return `${match[1]}: ${within(bare(text.trim().replace(/,$/, '')))}`;
  });
  const isOpen = !value.endsWith('}');
  return oneLine(
    at,
    `${head}{${parts.join(', ')}}`,
    head.length + 1,
    isOpen
      ? 'Unexpected `{` that is not closed, expected `}` at the end'
      : 'Unexpected comma, colon or quote in a text within braces, expected quotes round that text',
    isOpen
      ? 'Close the brace, or give each field a line of its own'
      : 'Within braces a comma begins the next field: put quotes round a text that has one, or give each field a line of its own',
  );
};

export const brackets: Slip = (lines, at) => {
  const { head, value } = fieldLine(lines[at] ?? '');
  if (!value.startsWith('[') || /\]./.test(value)) return [];
  const isOpen = !value.endsWith(']');
  const inner = value.slice(1, isOpen ? undefined : -1);
  const parts = textsWithin(inner).map(within);
  const hasOpenQuote = /(?:^|,)\s*(?:"[^"]*$|'[^']*$)/.test(inner) || inner.split('"').length % 2 === 0;
  return oneLine(
    at,
    `${head}[${parts.join(', ')}]`,
    head.length + 1,
    isOpen
      ? 'Unexpected `[` that is not closed, expected `]` at the end'
      : hasOpenQuote
        ? 'Unexpected quote within brackets without another, expected quotes in pairs'
        : 'Unexpected colon, quote or `#` within brackets, expected quotes round that text',
    isOpen
      ? 'Close the bracket'
      : hasOpenQuote
        ? 'Let a quote stand before the text and another after it, or none'
        : 'Put quotes round what has such a sign in it',
  );
};

/** A sign that keeps a text from being taken as it stands. */
interface Sign {
  /** Where it stands in the text. */
  readonly at: number;
  readonly said: string;
  readonly why: string;
}

const signIn = (text: string): Sign => {
  if (/^[@%`*&!|>?,[\]{}-]/.test(text)) {
    const sign = text.startsWith('`') ? 'backtick' : `\`${[...text][0]}\``;
    const why = 'The text begins with a sign that means something else here';
    return { at: 0, said: `${sign} at the beginning of`, why };
  }
  const colonAt = text.search(/:(?:\s|$)/);
  if (colonAt >= 0) return { at: colonAt, said: 'colon in', why: 'There is a colon in the text' };
  if (/\s#/.test(text)) {
    const why = 'What stands after a blank and `#` is a remark, and left out';
    return { at: text.indexOf('#'), said: '`#` in', why };
  }
  return { at: 0, said: 'sign in', why: 'There is a sign in the text that means something else here' };
};

export const quoteAll: Slip = (lines, at) => {
  const { head, key, value } = fieldLine(lines[at] ?? '');
  const after = value.search(/(?<!\s)\s+#\s/);
  const [text, remark] = after < 0 ? [value, ''] : [value.slice(0, after), value.slice(after)];
  if (text === '' || /^["']/.test(text)) return [];
  const sign = signIn(text);
  return oneLine(
    at,
    head + quoted(text) + remark,
    head.length + 1 + sign.at,
    `Unexpected ${sign.said} ${named(key)}, expected quotes round the text`,
    `${sign.why}: ${QUOTES_ROUND}`,
  );
};
