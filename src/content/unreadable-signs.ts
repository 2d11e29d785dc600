/** Signs that stand where a file was read in another encoding than it was saved in, or is no text at all. */
export const UNREADABLE = /[\0\x80-\x84\x86-\x9f\ufffd]/;

/** Signs that no page may have and nobody sees: they come along when text is copied (HTML Standard, parse errors of the input stream). */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is meant
const UNSEEN = /[\x01-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\ufdd0-\ufdef\ufffe\uffff]/g;

/** The same text with a space for each of them, so that every word stays in its column. */
export const withoutUnseen = (text: string): string => text.replace(UNSEEN, ' ');
