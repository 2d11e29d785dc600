const encoder = new TextEncoder();

/** How many octets a text is in UTF-8. */
export const utf8Length = (text: string): number => encoder.encode(text).length;
