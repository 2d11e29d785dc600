/** A text as a sentence begins. */

/** The text with a capital first letter, as the language (BCP 47) has it: Turkish has two letters i. */
export const capitalised = (text: string, lang: string): string => {
  const [first = '', ...rest] = text;
  return first.toLocaleUpperCase(lang) + rest.join('');
};
