/** Text as mail carries it, in 7 bits: headers (RFC 5322, RFC 2047) and bodies (RFC 2045). */
import { utf8Bytes, utf8Length } from '../../text/utf8.ts';

/** RFC 2047 §2 allows an encoded word 75 characters; a shorter one fits behind `Subject: ` without a fold. */
const WORD_LENGTH = 66;
/** RFC 5322 §2.1.1: a line should be no longer than 78 characters; two are kept for a fold. */
const HEADER_LENGTH = 76;
/** RFC 2045 §6.7 (5) allows 76 characters a line; here a line's end is counted with it. */
const BODY_LENGTH = 74;

const WORD_BEGIN = '=?UTF-8?B?';
const WORD_END = '?=';
/** Bytes of text whose base64 (four signs for three bytes) fits into one encoded word. */
const WORD_BYTES = Math.floor((WORD_LENGTH - WORD_BEGIN.length - WORD_END.length) / 4) * 3;

/** Base64 of a text's UTF-8 bytes (RFC 4648 §4). */
const base64 = (text: string): string => Buffer.from(text, 'utf8').toString('base64');

/** A text as encoded words of RFC 2047, a space between two; no character is cut in two. */
export const encodedWords = (text: string): string => {
  const chunks: string[] = [];
  let chunk = '';
  for (const character of text) {
    if (chunk !== '' && utf8Length(chunk + character) > WORD_BYTES) {
      chunks.push(chunk);
      chunk = '';
    }
    chunk += character;
  }
  return [...chunks, chunk].map((one) => `${WORD_BEGIN}${base64(one)}${WORD_END}`).join(' ');
};

/** A header's line, broken before a space where it is too long (RFC 5322 §2.2.3); a word that is longer stays whole. */
export const foldedHeader = (line: string): string => {
  const lines: string[] = [];
  let rest = line;
  while (rest.length >= HEADER_LENGTH) {
    const last = rest.lastIndexOf(' ', HEADER_LENGTH - 1);
    // The space that a folded line begins with is no place to break it.
    const at = last > 0 ? last : rest.indexOf(' ', HEADER_LENGTH);
    if (at < 0) break;
    lines.push(rest.slice(0, at));
    rest = rest.slice(at);
  }
  return [...lines, rest].join('\r\n');
};

const escaped = (byte: number): string => `=${byte.toString(16).toUpperCase().padStart(2, '0')}`;

/** Printable ASCII but `=` (RFC 2045 §6.7, rules 1 and 2). */
const isLiteral = (byte: number): boolean =>
  byte === 0x20 || byte === 0x09 || (byte > 0x20 && byte < 0x7f && byte !== 0x3d);

/** Of each of the 256 bytes, because it is asked for every sign of a letter. */
const WRITTEN: readonly string[] = Array.from({ length: 256 }, (_, byte) =>
  isLiteral(byte) ? String.fromCharCode(byte) : escaped(byte),
);

const encodedLine = (line: string): string => {
  let encoded = '';
  for (const byte of utf8Bytes(line)) encoded += WRITTEN[byte];
  // A blank that ends the line would be lost on the way (rule 3).
  return encoded.replace(/[\t ]$/, (blank) => escaped(blank.charCodeAt(0)));
};

/** How far from a line's end a place between words is looked for. A choice of ours, no source. */
const NEAR_END = 25;
const ENDS_WORD = new Set([' ', '\t', '.', ',', '!', '?']);
/** A byte that goes on with the character before it: `10xxxxxx` in UTF-8 (RFC 3629 §3). */
const GOES_ON = /^=[89AB][\dA-F]/;

/** Where to end a line that is too long: after a word where one ends near, else not inside an escape or a character. */
const breakOf = (line: string): number => {
  const most = BODY_LENGTH + 1;
  for (let at = most; at > most - NEAR_END; at -= 1)
    if (ENDS_WORD.has(line.charAt(at))) return Math.min(at + 1, most);
  let at = most;
  for (const back of [1, 2]) if (line.charAt(at - back) === '=') at -= back;
  while (at > 3 && GOES_ON.test(line.slice(at))) at -= 3;
  return at;
};

/** A line with soft breaks, `=` at the end of all but the last. */
const softBroken = (line: string): string => {
  const lines: string[] = [];
  let rest = line;
  while (rest.length > BODY_LENGTH) {
    const at = breakOf(rest);
    lines.push(rest.slice(0, at));
    rest = rest.slice(at);
  }
  return [...lines, rest].join('=\r\n');
};

/** A text as quoted-printable (RFC 2045 §6.7), its lines ended by CRLF. */
export const quotedPrintable = (text: string): string =>
  text
    .split(/\r?\n/)
    .map((line) => softBroken(encodedLine(line)))
    .join('\r\n');
