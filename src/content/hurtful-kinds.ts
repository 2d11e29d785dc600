/**
 * Which kinds of thing can hurt somebody. A kind is known by its head, the word that says what the thing is: "honey" in
 * "a jar of heather honey". Common practice, no source.
 */
import { singularOf } from '../text/singular.ts';
import type { CATEGORIES } from './vocabulary.ts';

type KindCategory = (typeof CATEGORIES)[number];

const words: Record<Exclude<KindCategory, 'children'>, string> = {
  food: 'jam jelly marmalade chutney honey biscuit shortbread cookie cake chocolate fudge toffee caramel sweet candy granola nut cracker cheese pickle relish sauce mustard vinegar oil spice salt sugar syrup flour seasoning truffle brownie',
  drink: 'cordial tea coffee juice cider beer wine gin liqueur cocoa tisane squash',
  cosmetic: 'soap salve balm cream lotion shampoo conditioner scrub perfume serum ointment',
  candle: 'candle tealight melt',
  blade:
    'snip snips knife secateur shear scissor pruner lopper saw sickle scythe billhook hatchet axe razor blade',
  plant:
    'bulb seed seedling plant cutting corm tuber houseplant succulent cactus amaryllis crocus daffodil hyacinth lily snowdrop tulip',
};

/** Two words that mean another thing than the last of them alone; undefined is harmless. */
const phrases: Readonly<Record<string, KindCategory | undefined>> = {
  'seed packet': 'plant',
  'seed ball': 'plant',
  'seed mix': 'plant',
  'soap bar': 'cosmetic',
  'shampoo bar': 'cosmetic',
  'chocolate bar': 'food',
  'tea bag': 'drink',
  'coffee bean': 'drink',
  'tea light': 'candle',
  'bath salt': 'cosmetic',
  'bath bomb': 'cosmetic',
  'body oil': 'cosmetic',
  'essential oil': 'cosmetic',
  'linseed oil': undefined,
  'tool oil': undefined,
  'bird seed': undefined,
  'light bulb': undefined,
};

const byWord = new Map(
  Object.entries(words).flatMap(([category, list]) =>
    list.split(' ').map((word) => [singularOf(word), category as KindCategory] as const),
  ),
);

/** A jar of honey is honey: what holds or counts the thing is not the thing. */
const CONTAINER =
  /^(?:an? )?(?:bag|bar|bottle|box|bundle|card|jar|packet|pair|pot|roll|sachet|sack|set|tin|tube)s? of /;

/** Words of a kind up to the first preposition, in small letters. */
const wordsBefore = (kind: string): readonly string[] =>
  (
    kind
      .toLowerCase()
      .replace(CONTAINER, '')
      .split(/ (?:for|of|with|in|on|from|to) /)[0] ?? ''
  )
    .split(/[\s-]+/)
    .filter(Boolean);

/** The word that says what a thing of this kind is: the last before the first preposition, in the singular. */
export const headOf = (kind: string): string => singularOf(wordsBefore(kind).at(-1) ?? '');

/** The category that a kind's head word suggests. */
export const suggestedCategory = (kind: string): KindCategory | undefined => {
  const parts = wordsBefore(kind);
  const head = headOf(kind);
  const two = [...parts.slice(-2, -1), head].join(' ');
  return Object.hasOwn(phrases, two) ? phrases[two] : byWord.get(head);
};

/** Tools whose two blades meet and can be closed or locked. */
const CLOSING = new Set(
  'snip snips secateur shear scissor pruner lopper clipper nipper multitool'.split(' ').map(singularOf),
);

const FOLDING = /\b(?:folding|fold-up|retractable|(?:clasp|pocket|pen|jack|lock|locking)[- ]?knife)\b/i;

/** Whether the blade of a thing folds or closes, by any name that it goes by; of one that does not, the edge is covered. */
export const bladeCloses = (names: readonly string[]): boolean =>
  names.some((name) => FOLDING.test(name) || CLOSING.has(headOf(name)));
