/** Whether a part of an article says enough to be worth finding, whatever it names. */
import type { Location } from '../../diagnostics/diagnostic.ts';
import { type Passage, whereIs } from './text/passage.ts';

/** What the author's own running text of a part comes to. */
export interface Substance {
  readonly words: number;
  readonly sentences: number;
  /** Different words that no field of the item's record has; of the opening, different words. */
  readonly beyond: number;
}

/**
 * The least that an opening has to say. Common practice, no source: below two sentences of a dozen words nobody is told
 * why to read on.
 */
export const LEAST_OPENING: Substance = { words: 25, sentences: 2, beyond: 10 };

/**
 * The least that an item's own section has to say. Common practice, no source: in fewer than some sixty words nobody can
 * say how a thing is used, made or cared for, and who searches for it finds a better page.
 */
export const LEAST_SECTION: Substance = { words: 60, sentences: 3, beyond: 10 };

/** Whether a part says less than it has to. */
export const isThin = (substance: Substance, least: Substance): boolean =>
  substance.words < least.words || substance.sentences < least.sentences || substance.beyond < least.beyond;

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

const substanceOf = (passages: readonly Passage[], known: ReadonlySet<string>): Substance => ({
  words: passages.reduce((sum, { words }) => sum + words.length, 0),
  sentences: passages.reduce((sum, { words }) => sum + new Set(words.map((word) => word.sentence)).size, 0),
  beyond: new Set(
    passages.flatMap(({ words }) => words.map(({ key }) => key)).filter((key) => !known.has(key)),
  ).size,
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
): readonly ThinPart[] => {
  const opening = openingOf(passages);
  const openingPart: ThinPart = {
    substance: substanceOf(opening, new Set()),
    at: beginningOf(opening, `cycles/${cycle.id}/cycle.md`),
  };
  const parts = cycle.items.map(({ slug, file }): ThinPart => {
    const own = passages.filter(({ item }) => item === slug);
    const story = own.filter(isStory);
    const known = new Set(
      own.filter(({ field }) => field !== undefined).flatMap(({ words }) => words.map(({ key }) => key)),
    );
    return { item: slug, substance: substanceOf(story, known), at: beginningOf(story, file) };
  });
  return [openingPart, ...parts].filter(({ item, substance }) => isThin(substance, leastOf(item)));
};
