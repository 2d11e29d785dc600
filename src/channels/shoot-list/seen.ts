/** What is to be seen in the pictures that a cycle's records name, as far as the records say it. */
import type { Cycle, Item, Picture } from '../../model/box.ts';
import { foldCase } from '../../text/fold.ts';
import { primaryLanguage } from '../../text/language-tag.ts';
import { remembered } from '../../text/remembered.ts';
import { singularOf } from '../../text/singular.ts';
import type { Need, View } from './needs.ts';

/** A picture with the item whose record or story names it. */
interface Named {
  readonly picture: Picture;
  readonly item?: Item;
}

/** How it is known what a picture shows: by its place in a record, or by the words of its text and caption alone. */
type KnownBy = 'place' | 'words';

export interface Candidate {
  readonly picture: Picture;
  readonly by: KnownBy;
}

/**
 * Words with which a picture's text says what it shows, in English, each in the singular or as it is written. In
 * another language a picture's words tell only of the things that they name.
 */
const SAYING: Readonly<Record<'hands' | 'in use' | 'closed' | 'box', ReadonlySet<string>>> = {
  hands: new Set('hand finger thumb palm fist fingertip'.split(' ')),
  'in use': new Set(
    'use using used pouring cutting snipping sowing planting watering digging stirring spreading writing wearing worn wears pours cuts sows plants waters digs stirs spreads writes holding brushing mixing lighting opening'.split(
      ' ',
    ),
  ),
  closed: new Set('closed shut unopened taped sealed'.split(' ')),
  box: new Set('box parcel carton'.split(' ')),
};

/** What speaks of a tool called so, and of no hand: "hand rake". */
const HAND_OF_A_NAME = /\bhand[- ](?=\p{L})/giu;

const wordsOf = remembered(
  ({ alt, caption = '' }: Picture): readonly string[] =>
    foldCase(`${alt} ${caption}`.replace(HAND_OF_A_NAME, '')).match(/[\p{L}\p{M}]+/gu) ?? [],
);

const says = (words: readonly string[], one: ReadonlySet<string>): boolean =>
  words.some((word) => one.has(word) || one.has(singularOf(word)));

/** The last word of a thing's kind: what a picture's text would call it. */
const headOf = remembered(({ kind }: Item): string => singularOf(foldCase(kind).split(/\s+/).at(-1) ?? ''));

const names = (words: readonly string[], item: Item): boolean =>
  words.some((word) => singularOf(word) === headOf(item));

const picturesIn = ({ resolved = [] }: Cycle['story']): readonly Picture[] =>
  resolved.filter((one): one is Picture => 'hash' in one);

/** Every picture that a cycle's records and stories name, each once, the open box apart. */
export const namedIn = remembered(({ hero, peek, story, items, wholeBox }: Cycle): readonly Named[] => {
  const all: readonly Named[] = [
    ...items.flatMap((item) =>
      [...item.pictures, ...picturesIn(item.story)].map((picture) => ({ picture, item })),
    ),
    ...[hero, peek?.picture, ...picturesIn(story)].flatMap((picture) => (picture ? [{ picture }] : [])),
  ];
  const known = new Set<string>(wholeBox ? [wholeBox.file] : []);
  return all.filter(({ picture: { file } }) => !known.has(file) && known.add(file));
});

/** What a picture's words say of it. */
const toldBy = (picture: Picture, lang: string): ReadonlySet<View> => {
  if (primaryLanguage(lang) !== 'en') return new Set();
  const words = wordsOf(picture);
  const told = new Set<View>();
  if (says(words, SAYING.hands)) told.add('hands');
  if (says(words, SAYING['in use']) || told.has('hands')) told.add('in use');
  if (says(words, SAYING.closed) && says(words, SAYING.box)) told.add('closed');
  return told;
};

const byWords = (some: readonly Named[]): readonly Candidate[] =>
  some.map(({ picture }) => ({ picture, by: 'words' }));

/** The pictures that may be what is wanted, those known by their place first. Never more than the records say. */
export const candidatesFor = (need: Need, cycle: Cycle, lang: string): readonly Candidate[] => {
  const { view, item } = need;
  const named = namedIn(cycle);
  switch (view) {
    case 'open':
      return cycle.wholeBox ? [{ picture: cycle.wholeBox, by: 'place' }] : [];
    case 'alone':
      // Lists show the first, so that is what its author took for the thing itself.
      return (item?.pictures ?? []).map((picture) => ({ picture, by: 'place' }));
    case 'with lead': {
      const lead = cycle.items.find((one) => one.lead);
      if (!lead || !item || headOf(lead) === headOf(item)) return [];
      return byWords(
        named.filter(({ picture, item: of }) => {
          const words = wordsOf(picture);
          return (
            (of === item && names(words, lead)) ||
            (of === lead && names(words, item)) ||
            (names(words, lead) && names(words, item))
          );
        }),
      );
    }
    case 'in use':
      return byWords(
        named.filter(({ picture, item: of }) => of === item && toldBy(picture, lang).has('in use')),
      );
    case 'hands':
    case 'closed':
      return byWords(named.filter(({ picture }) => toldBy(picture, lang).has(view)));
  }
};
