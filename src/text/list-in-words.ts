/** Several things as one run of words. */

const formats = new Map<string, Intl.ListFormat>();

/** The format of a language, made once, because making one takes longer than using it. */
const formatOf = (lang: string): Intl.ListFormat => {
  const format = formats.get(lang) ?? new Intl.ListFormat(lang, { type: 'conjunction' });
  formats.set(lang, format);
  return format;
};

/** "cats, dogs and rabbits", as the language (BCP 47) joins them: CLDR's patterns by Intl.ListFormat, ECMA-402 §14. */
export const listInWords = (parts: readonly string[], lang: string): string => formatOf(lang).format(parts);

/** The word that joins the last two: "and", "und". */
export const conjunctionOf = (lang: string): string =>
  formatOf(lang)
    .formatToParts(['1', '2'])
    .filter(({ type }) => type === 'literal')
    .map(({ value }) => value.trim())
    .join(' ');
