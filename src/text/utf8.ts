/** Text as bytes: UTF-8 (RFC 3629). */

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** A text's bytes; half a surrogate pair becomes U+FFFD. */
export const utf8Bytes = (text: string): Uint8Array<ArrayBuffer> => encoder.encode(text);

/** The text of bytes, without a byte order mark; what is not UTF-8 becomes U+FFFD. */
export const utf8Text = (bytes: Uint8Array): string => decoder.decode(bytes);

/** How many bytes a text has. */
export const utf8Length = (text: string): number => utf8Bytes(text).length;

/** The beginning of a text that has at most so many bytes; no sign is cut in two. */
export const cutToBytes = (text: string, most: number): string =>
  utf8Length(text) <= most ? text : utf8Text(utf8Bytes(text).subarray(0, most)).replace(/\ufffd+$/, '');
