/** Which of the qualities that a record states a shopper would type before a noun: most are description. */
import type { Item } from '../../../model/box.ts';
import type { Language, Word } from '../../language/language.ts';
import { sown, titledGoods } from '../../language/lexicon/goods.ts';
import {
  naturalColours,
  shades,
  thingColours,
  unsoughtMaterials,
  woods,
} from '../../language/lexicon/qualities.ts';
import { trades } from '../../language/lexicon/settings.ts';
import { foods } from '../../language/lexicon/wordnet/foods.ts';
import { qualitiesIn } from '../../language/qualities.ts';
import { textOf } from './name-phrases.ts';
import {
  endsAsParticiple,
  isAdjective,
  isChosenByColour,
  isColour,
  isListedGoods,
  isMaterial,
  isWorn,
} from './name-words.ts';

/** Longer materials, colours and makers are descriptions: nobody types them before a noun. */
const MOST_WORDS = 3;

/** A thing of more materials is called by none of them, unless its name says it. */
const MOST_MATERIALS = 2;

/** A thing of more colours is looked for by none of them. */
const MOST_COLOURS = 2;

/** A quality as it is written before a noun, and what the record says there. */
export interface StatedQuality {
  readonly from: 'material' | 'color' | 'brand';
  readonly text: string;
  readonly value: string;
}

/** What is eaten, drunk, sown or read has its colour and its stuff by nature, and the record speaks of the packet. */
const isConsumed = (head: Word): boolean =>
  foods.has(head.key) || titledGoods.has(head.key) || sown.has(head.key);

const materialOf = ({ material }: Item, head: Word, language: Language): string => {
  const [first = ''] = material;
  if (material.length > MOST_MATERIALS || isConsumed(head)) return '';
  const [text = ''] = qualitiesIn(first);
  // "Glazed stoneware" is typed as stoneware. "Tulip bulbs" and "cotton cord" are parts, not what it is made of.
  const words = language
    .words(text)
    .filter(
      (word) => isMaterial(word) || !(endsAsParticiple(word.folded) || naturalColours.has(word.folded)),
    );
  const last = words.at(-1);
  if (last === undefined || last.key !== last.folded || !isMaterial(last)) return '';
  return words.every(({ folded }) => unsoughtMaterials.has(folded)) ? '' : textOf(words);
};

/** What is made of one wood is looked for as wooden far more than by the name of the tree. */
const woodenOf = (item: Item, head: Word, language: Language): string => {
  const last = language.words(materialOf(item, head, language)).at(-1);
  return last && woods.has(last.folded) ? 'wooden' : '';
};

/** "Cream" and "dark green" are colours; "clay" and "brick" before a noun are what it is made of. */
const colourOf = ({ color = '' }: Item, head: Word, language: Language): string => {
  const stated = qualitiesIn(color);
  const [text = ''] = stated;
  const words = language.words(text);
  const last = words.at(-1);
  if (last === undefined || stated.length > MOST_COLOURS || isConsumed(head)) return '';
  if (!isChosenByColour(head) || !(isColour(last) || thingColours.has(last.folded)) || isMaterial(last))
    return '';
  if (naturalColours.has(last.folded) && !isWorn(head)) return '';
  return words.slice(0, -1).every((word) => shades.has(word.folded) || isColour(word)) ? text : '';
};

/** "Marrowby Soapworks" as people speak of it: without what it makes. */
const isTrade = (word: Word): boolean =>
  isMaterial(word) || isListedGoods(word) || trades.has(word.folded) || TRADE.test(word.folded);
const TRADE = /(?:works|makers?|smiths?|wares?|craft)$/;

/** "Tolley of Cable Steps": the maker, without the address. */
const makerOf = ({ brand }: Item, language: Language): string => {
  const [maker = ''] = brand.split(/\s(?:of|at|in|from|by)\s|[,;(]/i);
  // "Hesk & Daughters" is one name.
  if (/[&+]|\sand\s/i.test(maker)) return maker;
  const words = language.words(maker);
  const named = words.findLastIndex((word) => !isTrade(word));
  const last = words[named];
  return last === undefined || words.slice(0, named + 1).every(isAdjective)
    ? maker
    : maker.slice(0, last.end);
};

/** The material, colour and maker that people may type before a thing with this head, each where there is one. */
export const statedQualities = (item: Item, head: Word, language: Language): readonly StatedQuality[] => {
  const found: readonly StatedQuality[] = [
    { from: 'material', text: materialOf(item, head, language), value: item.material[0] ?? '' },
    { from: 'material', text: woodenOf(item, head, language), value: item.material[0] ?? '' },
    { from: 'color', text: colourOf(item, head, language), value: item.color ?? '' },
    { from: 'brand', text: makerOf(item, language), value: item.brand },
  ];
  return found.filter(({ text }) => {
    const { length } = language.words(text);
    return length > 0 && length <= MOST_WORDS;
  });
};
