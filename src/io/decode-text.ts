/** Bytes of a text file → text, whatever program saved it. */

import { isUtf8 } from 'node:buffer';

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** As much of a file as shows whether it is UTF-16. In bytes. */
export const SAMPLE = 4096;

/** Of ten signs one at least is a plain letter, digit or line end, in lists and records of any script. A choice of ours, no source. */
const LEAST_PLAIN = 0.1;

/** Signs that no text has: what has them was not text in that encoding. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const NO_TEXT = /[\0-\x08\x0e-\x1f\ufffd](?!$)/;

/** UTF-16 without a mark, by its zeros: every plain sign has one, before it or after it. */
const unmarkedUtf16 = (bytes: Uint8Array): Encoding | undefined => {
  const sample = bytes.subarray(0, Math.min(bytes.length, SAMPLE) & ~1);
  let [before, after] = [0, 0];
  for (let i = 0; i < sample.length; i += 2) {
    if (sample[i] === 0) before += 1;
    if (sample[i + 1] === 0) after += 1;
  }
  const least = Math.max(1, (sample.length / 2) * LEAST_PLAIN);
  if (Math.max(before, after) < least || before === after) return undefined;
  const encoding = after > before ? 'utf-16le' : 'utf-16be';
  return NO_TEXT.test(decoderOf(encoding).decode(sample)) ? undefined : encoding;
};

/** The encoding that the beginning of a file shows, by its mark or by its zeros; undefined where only the whole file can. */
export const encodingAtBeginning = (bytes: Uint8Array): Encoding | undefined => {
  const [first, second, third] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  if (first === 0xef && second === 0xbb && third === 0xbf) return 'utf-8';
  return unmarkedUtf16(bytes);
};

/** How a text file is encoded: by how it begins, else UTF-8 where it can be. */
export const encodingOf = (bytes: Uint8Array): Encoding =>
  // Older spreadsheets save CSV in the encoding of Western Windows.
  encodingAtBeginning(bytes) ?? (isUtf8(bytes) ? 'utf-8' : 'windows-1252');

/** What Windows has where Latin-1 has signs that nobody sees, from 0x80 on (WHATWG Encoding Standard, index windows-1252). */
const WESTERN = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** Makes text of bytes, also of one piece after the other. */
export interface Decoder {
  readonly decode: (bytes?: Uint8Array, options?: { readonly stream?: boolean }) => string;
}

/** A decoder that drops a mark; one of UTF-8 that is strict throws a TypeError at what is none. */
export const decoderOf = (encoding: Encoding, isStrict = false): Decoder =>
  // Node 20's own decoder of windows-1252 gives Latin-1: quotes and dashes would be lost.
  encoding === 'windows-1252'
    ? {
        decode: (bytes = new Uint8Array()) =>
          Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
            .toString('latin1')
            .replace(/[\x80-\x9f]/g, (sign) => WESTERN[sign.charCodeAt(0) - 0x80] ?? sign),
      }
    : new TextDecoder(encoding, { fatal: isStrict });

/** Text as it was written, line ends and all, so that offsets into it are those of the file. */
export const decodeAsWritten = (bytes: Uint8Array): string => decoderOf(encodingOf(bytes)).decode(bytes);

/**
 * Text without byte order mark and with `\n` line ends. UTF-8, UTF-16 with a mark or without, else windows-1252
 * (WHATWG Encoding Standard).
 */
export const decodeText = (bytes: Uint8Array): string => decodeAsWritten(bytes).replace(/\r\n?/g, '\n');
