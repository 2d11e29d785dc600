/** A lexicon written as running text: one string is easier to read, and to add to, than a thousand quotes. */
export const wordSet = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

/** The words of several lists. */
export const wordsOfAll = (...lists: readonly ReadonlySet<string>[]): ReadonlySet<string> =>
  new Set(lists.flatMap((list) => [...list]));

/** Expressions of several words, divided by `|`. */
export const expressions = (text: string): readonly (readonly string[])[] =>
  text.split('|').map((expression) => expression.trim().split(/\s+/));
