/** What kind of thing a name names: in the words that the box has for such things, else by the name's own noun. */
import { readName } from '../../analysis/coverage/phrases/name.ts';
import { languageFor } from '../../analysis/language/language.ts';
import { slugOf } from '../../model/slug.ts';
import { primaryLanguage } from '../../text/language-tag.ts';
import { singularOf } from '../../text/singular.ts';
import type { KnownBox } from './known-box.ts';

/** Words of a name or kind, in one number where the language is English. */
const keysOf = (text: string, isEnglish: boolean): readonly string[] =>
  slugOf(text)
    .split('-')
    .filter(Boolean)
    .map((word) => (isEnglish ? singularOf(word) : word));

/** Whether some words stand together in others, and end where `last` does, if it is one of them. */
const holds = (words: readonly string[], part: readonly string[], last: string | undefined): boolean =>
  part.length > 0 &&
  words.some((_, at) => part.every((word, i) => words[at + i] === word)) &&
  (last === undefined || part.at(-1) === last);

/** A kind for each name, in their order; empty where nobody can tell. */
export const proposeKinds = async (
  names: readonly string[],
  { lang, cycles }: Pick<KnownBox, 'lang' | 'cycles'>,
): Promise<readonly string[]> => {
  const isEnglish = primaryLanguage(lang) === 'en';
  const kinds = [...new Set(cycles.flatMap(({ things }) => things.map(({ kind }) => kind)))]
    .map((kind) => ({ kind, words: keysOf(kind, isEnglish) }))
    // The longest says most.
    .sort((a, b) => b.words.length - a.words.length);
  const language = isEnglish ? await languageFor('en') : undefined;
  return names.map((name) => {
    const read = language && readName(name, language);
    const noun = read ? keysOf(read.kind, true) : [];
    const words = keysOf(name, isEnglish);
    const used = kinds.find((one) => holds(words, one.words, noun.at(-1)));
    return used?.kind ?? read?.kind ?? '';
  });
};
