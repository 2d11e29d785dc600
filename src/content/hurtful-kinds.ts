/** Kinds of thing that can hurt somebody, by the last word people say of them. Common practice, no source. */
import { CATEGORIES } from './schemas.ts';

type KindCategory = (typeof CATEGORIES)[number];

const words: Record<Exclude<KindCategory, 'children'>, string> = {
  food: 'jam jelly marmalade chutney honey biscuit shortbread cookie cake chocolate fudge toffee caramel sweet candy granola nut cracker cheese pickle relish sauce mustard vinegar oil spice salt sugar syrup flour seasoning truffle brownie',
  drink: 'cordial tea coffee juice cider beer wine gin liqueur cocoa tisane squash',
  cosmetic: 'soap salve balm cream lotion shampoo conditioner scrub perfume serum ointment',
  candle: 'candle tealight melt',
  blade: 'snip knife secateur shear scissor pruner lopper saw sickle scythe billhook hatchet axe razor blade',
  plant:
    'bulb seed seedling plant cutting corm tuber houseplant succulent cactus amaryllis crocus daffodil hyacinth lily snowdrop tulip',
};

/** Two words that mean another thing than the last of them alone. */
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
  CATEGORIES.flatMap((category) =>
    category === 'children' ? [] : words[category].split(' ').map((word) => [word, category] as const),
  ),
);

/** The word as the lists have it, whether one thing is meant or several. */
const singulars = (word: string): readonly string[] => [
  word,
  word.replace(/s$/, ''),
  word.replace(/es$/, ''),
  word.replace(/ies$/, 'y'),
  word.replace(/ves$/, 'fe'),
];

/** A jar of honey is honey: what holds or counts the thing is not the thing. */
const CONTAINER =
  /^(?:an? )?(?:bag|bar|bottle|box|bundle|card|jar|packet|pair|pot|roll|sachet|sack|set|tin|tube)s? of /;

/** The category that a kind's head word suggests: the last word before the first preposition. */
export const suggestedCategory = (kind: string): KindCategory | undefined => {
  const before =
    kind
      .toLowerCase()
      .replace(CONTAINER, '')
      .split(/ (?:for|of|with|in|on|from|to) /)[0] ?? '';
  const parts = before.split(/[\s-]+/).filter(Boolean);
  const heads = singulars(parts.at(-1) ?? '');
  const two = heads.map((head) => [...parts.slice(-2, -1), head].join(' '));
  const phrase = two.find((words) => Object.hasOwn(phrases, words));
  if (phrase !== undefined) return phrases[phrase];
  return heads.map((head) => byWord.get(head)).find((category) => category !== undefined);
};
