/** Whole sentences of a record that can stand by themselves, short enough for a place with little room. */
import type { Item } from './box.ts';

/** A sentence with a stop, where it has none of its own. */
export const endsSentence = (text: string): string =>
  /[.!?…。！？]["”’»)]*$/u.test(text) ? text : `${text}.`;

/** Whether a sentence says what it is about, so that it can stand by itself. */
export const namesIt = (
  sentence: string,
  { inText, kind, also }: Pick<Item, 'inText' | 'kind' | 'also'>,
  lang: string,
): boolean => {
  const text = sentence.toLocaleLowerCase(lang);
  return [inText.short, kind, ...also].some((one) => text.includes(one.toLocaleLowerCase(lang)));
};
