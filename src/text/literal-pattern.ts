/** Texts as parts of patterns. */

/** The source of a pattern that matches a text as it stands, with the flag `u` and without. */
export const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
