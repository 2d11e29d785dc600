/** Kinds of thing that can hurt somebody, by the last word people say of them. Common practice, no source. */
import type { CATEGORIES } from './schemas.ts';

type Category = (typeof CATEGORIES)[number];

const words: Record<Exclude<Category, 'children'>, string> = {
  food: 'jam jelly marmalade chutney honey biscuit biscuits shortbread cookie cake chocolate fudge toffee caramel sweets candy granola nuts crackers cheese pickle sauce mustard spice salt sugar flour seasoning',
  drink: 'cordial tea coffee syrup juice cider beer wine gin liqueur cocoa tisane squash',
  cosmetic: 'soap salve balm cream lotion shampoo scrub perfume serum ointment',
  candle: 'candle candles tealight melt melts',
  blade: 'snips knife secateurs shears scissors pruner pruners saw sickle axe blade',
  plant: 'bulb bulbs seed seeds seedling plant cutting corm tuber houseplant succulent cactus',
};

/** Two words that mean another thing than the last of them alone. */
const phrases: Readonly<Record<string, Category | undefined>> = {
  'seed packet': 'plant',
  'seed ball': 'plant',
  'bird seed': undefined,
  'light bulb': undefined,
};

const byWord = new Map(
  Object.entries(words).flatMap(([category, list]) =>
    list.split(' ').map((word) => [word, category as Category] as const),
  ),
);

/** The category that a kind's head word suggests: the last word before the first preposition. */
export const suggestedCategory = (kind: string): Category | undefined => {
  const before = kind.toLowerCase().split(/ (?:for|of|with|in|on|from|to) /)[0] ?? '';
  const parts = before.split(/[\s-]+/).filter(Boolean);
  const two = parts.slice(-2).join(' ');
  if (two in phrases) return phrases[two];
  return byWord.get(parts.at(-1) ?? '');
};
