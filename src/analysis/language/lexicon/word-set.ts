/** A lexicon written as running text: one string is easier to read, and to add to, than a thousand quotes. */
export const wordSet = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));
