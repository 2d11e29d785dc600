/** Several things as one run of words. */

/** "cats, dogs and rabbits", as the language (BCP 47) joins them: CLDR's patterns by Intl.ListFormat, ECMA-402 §14. */
export const listInWords = (parts: readonly string[], lang: string): string =>
  new Intl.ListFormat(lang, { type: 'conjunction' }).format(parts);
