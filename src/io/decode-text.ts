/** Bytes of a text file → text, whatever program saved it. */

const utf8 = new TextDecoder('utf-8', { fatal: true });

/** Text as it was written, line ends and all, so that offsets into it are those of the file. */
export const decodeAsWritten = (bytes: Uint8Array): string => {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  try {
    return utf8.decode(bytes);
  } catch {
    // Not UTF-8: older spreadsheets save CSV in the encoding of Western Windows.
    return new TextDecoder('windows-1252').decode(bytes);
  }
};

/**
 * Text without byte order mark and with `\n` line ends. UTF-8, UTF-16 with a mark, else windows-1252
 * (WHATWG Encoding Standard; its decoders drop the mark).
 */
export const decodeText = (bytes: Uint8Array): string => decodeAsWritten(bytes).replace(/\r\n?/g, '\n');
