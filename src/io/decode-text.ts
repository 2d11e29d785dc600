/** Bytes of a text file → text, whatever program saved it. */

import { isUtf8 } from 'node:buffer';

type Encoding = 'utf-8' | 'utf-16le' | 'windows-1252';

/** How a text file is encoded: by its mark, else UTF-8 where it can be. */
export const encodingOf = (bytes: Uint8Array): Encoding => {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  // Older spreadsheets save CSV in the encoding of Western Windows.
  return isUtf8(bytes) ? 'utf-8' : 'windows-1252';
};

/** Text as it was written, line ends and all, so that offsets into it are those of the file. */
export const decodeAsWritten = (bytes: Uint8Array): string =>
  new TextDecoder(encodingOf(bytes)).decode(bytes);

/**
 * Text without byte order mark and with `\n` line ends. UTF-8, UTF-16 with a mark, else windows-1252
 * (WHATWG Encoding Standard; its decoders drop the mark).
 */
export const decodeText = (bytes: Uint8Array): string => decodeAsWritten(bytes).replace(/\r\n?/g, '\n');
