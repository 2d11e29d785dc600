/** Which words tell an item from others: those that its record knows, and those that mean it when they stand alone. */
import type { Word } from '../../language/language.ts';
import { colours, materials, shades } from '../../language/lexicon/qualities.ts';
import type { Phrase } from '../phrases/phrase.ts';
import type { Named } from './known-words.ts';
import { BORDERS } from './neighbour-words.ts';
import { COMES_IN_SORTS, SPEAKS_FOR_ITSELF } from './sorts.ts';
import { isGeneral } from './word-nature.ts';

/** What is known of an item, ready to be asked. */
export interface KnownItem {
  /** Stems of all words that it is known by. */
  readonly stems: ReadonlySet<string>;
  /** Whether a colour is among them: then another colour is another thing's. */
  readonly coloured: boolean;
}

/** What is known of each item, by its phrases and its record. */
export const knownItemsOf = (items: readonly Named[]): readonly KnownItem[] =>
  items.map(({ phrases, record }) => {
    const words = [...phrases.flatMap((phrase) => phrase.words), ...(record?.known ?? [])];
    return {
      stems: new Set(words.map(({ stem }) => stem)),
      coloured: words.some(({ folded }) => colours.has(folded)),
    };
  });

/** Phrases that are names; the others were put together, or typed by somebody. */
const isName = ({ origins }: Phrase): boolean =>
  origins.some(({ from }) => from === 'kind' || from === 'name' || from === 'also');

/** Shorter words are parts of measures and abbreviations. */
const SHORTEST = 3;

/**
 * Whether a word before the head of a name can be the name of a sort, as "hoop" is one of earrings: not what says how a
 * thing is, what is done with it, or something of its own that it is for.
 */
const isSort = (word: Word): boolean =>
  word.key.length >= SHORTEST &&
  !word.folded.endsWith('ing') &&
  ![word.key, word.folded].some(
    (form) =>
      SPEAKS_FOR_ITSELF.has(form) ||
      BORDERS.has(form) ||
      colours.has(form) ||
      shades.has(form) ||
      materials.has(form),
  ) &&
  !isGeneral(word);

/** For each item the keys of the words that mean it when they stand alone, and can mean no other of the items. */
export const tellingWordsOf = (items: readonly Named[]): readonly ReadonlySet<string>[] => {
  const shared = new Map<string, number>();
  for (const { phrases } of items)
    for (const key of new Set(phrases.flatMap(({ words }) => words.map((word) => word.key))))
      shared.set(key, (shared.get(key) ?? 0) + 1);
  return items.map(({ phrases, record }) => {
    const names = new Set(record?.names.flat().map(({ key }) => key));
    return new Set(
      phrases
        .filter((phrase) => isName(phrase) && COMES_IN_SORTS.has(phrase.words[phrase.head]?.key ?? ''))
        .flatMap(({ words, head }) => words.slice(0, head))
        .filter((word) => isSort(word) && shared.get(word.key) === 1 && !names.has(word.key))
        .map(({ key }) => key),
    );
  });
};
