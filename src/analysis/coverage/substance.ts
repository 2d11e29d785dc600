/** Whether a part of an article says enough to be worth finding, whatever it names. */
import type { Location } from '../../diagnostics/diagnostic.ts';
import type { Language, Word } from '../language/language.ts';
import { TELLING } from '../language/lexicon/telling.ts';
import { isNumber } from './phrases/name-words.ts';
import { type Passage, whereIs } from './text/passage.ts';

/** What the author's own running text of a part comes to. */
export interface Substance {
  readonly words: number;
  readonly sentences: number;
  /** Different words that no field of the item's record has; of the opening, different words. */
  readonly beyond: number;
  /** Words that tell of use, care, making or measure; of the opening, and where nobody knows the language's, at least 1. */
  readonly telling: number;
}

/**
 * The least that an opening has to say. Common practice, no source: below two sentences of a dozen words nobody is told
 * why to read on.
 */
export const LEAST_OPENING: Substance = { words: 25, sentences: 2, beyond: 10, telling: 0 };

/**
 * The least that an item's own section has to say. Common practice, no source: in fewer than some sixty words nobody can
 * say how a thing is used, made or cared for, and who searches for it finds a better page.
 */
export const LEAST_SECTION: Substance = { words: 60, sentences: 3, beyond: 10, telling: 1 };

/** Whether a part says less than it has to. */
export const isThin = (substance: Substance, least: Substance): boolean =>
  substance.words < least.words ||
  substance.sentences < least.sentences ||
  substance.beyond < least.beyond ||
  substance.telling < least.telling;

/** What a part has to say: the opening, which is no item's, less than an item's section. */
export const leastOf = (item: string | undefined): Substance =>
  item === undefined ? LEAST_OPENING : LEAST_SECTION;

/** A part that says too little. */
export interface ThinPart {
  /** Slug of the item; absent for the opening. */
  readonly item?: string;
  readonly substance: Substance;
  /** Where it begins, or its file where there is no word of it. */
  readonly at: Location;
}

const isStory = ({ form, field, written }: Passage): boolean =>
  form === 'paragraph' && field === undefined && written;

/** Whether a word tells of use, care, making or measure. */
const tellingIn = ({ english, words }: Pick<Language, 'english' | 'words'>): ((word: Word) => boolean) => {
  // Of another language nobody here knows the words.
  if (!english) return () => true;
  const stems = new Set(words(TELLING).map(({ stem }) => stem));
  return (word) => isNumber(word) || stems.has(word.stem);
};

const substanceOf = (
  passages: readonly Passage[],
  known: ReadonlySet<string>,
  tells: (word: Word) => boolean,
): Substance => ({
  words: passages.reduce((sum, { words }) => sum + words.length, 0),
  sentences: passages.reduce((sum, { words }) => sum + new Set(words.map((word) => word.sentence)).size, 0),
  beyond: new Set(
    passages.flatMap(({ words }) => words.map(({ key }) => key)).filter((key) => !known.has(key)),
  ).size,
  telling: passages.reduce((sum, { words }) => sum + words.filter(tells).length, 0),
});

const beginningOf = (passages: readonly Passage[], file: string): Location => {
  const [first] = passages;
  const word = first?.words[0];
  return first && word ? whereIs(first, word) : { file, line: 1, column: 1 };
};

/** The running text that stands before the first item's section. */
const openingOf = (passages: readonly Passage[]): readonly Passage[] => {
  const end = passages.findIndex(({ item, words }) => item !== undefined && words[0]?.zone === 'section');
  return passages
    .slice(0, end < 0 ? passages.length : end)
    .filter((passage) => passage.item === undefined && isStory(passage));
};

/** The parts of an article that say too little: items' own sections, and the opening first. */
export const thinPartsOf = (
  cycle: { readonly id: string; readonly items: readonly { readonly slug: string; readonly file: string }[] },
  passages: readonly Passage[],
  language: Pick<Language, 'english' | 'words'>,
): readonly ThinPart[] => {
  const tells = tellingIn(language);
  const opening = openingOf(passages);
  const openingPart: ThinPart = {
    substance: substanceOf(opening, new Set(), tells),
    at: beginningOf(opening, `cycles/${cycle.id}/cycle.md`),
  };
  const parts = cycle.items.map(({ slug, file }): ThinPart => {
    const own = passages.filter(({ item }) => item === slug);
    const story = own.filter(isStory);
    const known = new Set(
      own.filter(({ field }) => field !== undefined).flatMap(({ words }) => words.map(({ key }) => key)),
    );
    return { item: slug, substance: substanceOf(story, known, tells), at: beginningOf(story, file) };
  });
  return [openingPart, ...parts].filter(({ item, substance }) => isThin(substance, leastOf(item)));
};
