/** Bytes of a text in UTF-8 (RFC 3629). */

const encoder = new TextEncoder();

/** How many bytes a text takes. */
export const utf8Length = (text: string): number => encoder.encode(text).length;
