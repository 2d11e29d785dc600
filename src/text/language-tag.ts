/** Language tags, BCP 47. */

/** The language that a tag names, whatever its script and region: "en" of "en-GB". In small letters. */
export const primaryLanguage = (tag: string): string => tag.toLowerCase().split('-')[0] ?? '';
