/** What is typed in small letters, as it is to be written. */

const WORD = /[\p{L}\p{M}\p{N}’']+/gu;

/**
 * The words with a capital in some texts as they stand inside a sentence, each under its small letters. One that another
 * text has in small letters has its capital from a title: "Harbor Sock pattern" of kind sock pattern.
 */
export const capitalsIn = (texts: readonly string[]): ReadonlyMap<string, string> => {
  const words = texts.flatMap((text) => text.match(WORD) ?? []);
  const small = new Set(words.filter((word) => word === word.toLowerCase()));
  return new Map(
    words
      .filter((word) => /\p{Lu}/u.test(word) && !small.has(word.toLowerCase()))
      .map((word) => [word.toLowerCase(), word]),
  );
};

/** "danish dough whisk" as "Danish dough whisk". */
export const withCapitals = (typed: string, capitals: ReadonlyMap<string, string>): string =>
  capitals.size === 0 ? typed : typed.replace(WORD, (word) => capitals.get(word) ?? word);
