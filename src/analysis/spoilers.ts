/** What would give a box away before its reveal: names of its things, met in a text that is shown earlier. */
import type { Item } from '../model/box.ts';
import type { Language } from './language/language.ts';

/** Every name that an item goes by, and who made it. */
export const namesOf = ({ inText, kind, also, brand }: Item): readonly string[] => [
  ...new Set([inText.short, kind, ...also, brand]),
];

const stemsOf = (text: string, language: Language): readonly string[] =>
  language.words(text).map(({ stem }) => stem);

const stands = (phrase: readonly string[], text: readonly string[]): boolean =>
  phrase.length > 0 && text.some((_, start) => phrase.every((stem, offset) => text[start + offset] === stem));

/**
 * For a text, the names of the items that stand in it in any form of their words: "bee hotels" gives away the bee
 * hotel. Words in the language's sense, stems as its stemmer has them.
 */
export const spoilersIn = (
  items: readonly Item[],
  language: Language,
): ((text: string) => readonly string[]) => {
  const names = [...new Set(items.flatMap(namesOf))].map((name) => ({
    name,
    stems: stemsOf(name, language),
  }));
  return (text) => {
    const stems = stemsOf(text, language);
    return names.filter((one) => stands(one.stems, stems)).map(({ name }) => name);
  };
};
