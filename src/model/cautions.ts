/**
 * The usual cautions, made from what a record states. The wording is ours and no legal advice: what a label must
 * say is local law.
 */
import type { Category, Hazards, Item } from './box.ts';

export interface Caution {
  readonly sort: string;
  readonly label: string;
  readonly lines: readonly string[];
}

const list = (words: readonly string[]): string => words.join(', ');

/** "cats, dogs and rabbits" */
const together = (words: readonly string[]): string =>
  new Intl.ListFormat('en-GB', { type: 'conjunction' }).format(words);

const HAZARD_LINES: ReadonlyMap<string, string> = new Map([
  ['small parts', 'Small parts can choke a child.'],
  ['cords', 'Cords can strangle a child; keep them short and out of a cot.'],
]);

/** What the record names is always said, in our words or in its own. */
const hazardLine = (hazard: string): string =>
  HAZARD_LINES.get(hazard.toLowerCase()) ?? `Beware of ${hazard}.`;

/** Allergens are named as US FDA's nine and EU 1169/2011 Annex II's fourteen name them; see content/allergens.ts. */
const allergenLines = ({ allergens = [], mayContain = [] }: Hazards): readonly string[] => [
  allergens.length > 0 ? `Contains ${list(allergens)}.` : 'None of the major allergens is an ingredient.',
  ...(mayContain.length > 0 ? [`May contain traces of ${list(mayContain)}.`] : []),
];

const eaten = (hazards: Hazards): readonly Caution[] => [
  { sort: 'allergens', label: 'Allergens', lines: allergenLines(hazards) },
  ...ingredients(hazards),
];

const ingredients = (hazards: Hazards): readonly Caution[] =>
  hazards.ingredients ? [{ sort: 'ingredients', label: 'Ingredients', lines: [hazards.ingredients] }] : [];

const rules: Record<Category, (hazards: Hazards) => readonly Caution[]> = {
  food: eaten,
  drink: eaten,
  // The patch test is common practice, no source.
  cosmetic: (hazards) => [
    ...ingredients(hazards),
    {
      sort: 'skin',
      label: 'On the skin',
      lines: [
        'Try a little on the inside of your arm and wait a day before you use it. Stop if it itches or reddens.',
      ],
    },
  ],
  // After ASTM F2058 (voluntary): within sight, away from things that catch fire, away from children and pets.
  // The wick's 6 mm are the quarter inch that makers' associations advise.
  candle: () => [
    {
      sort: 'flame',
      label: 'Burning',
      lines: [
        'Burn it within sight and put it out before you leave the room.',
        'Keep it away from anything that can catch fire, and from children and pets.',
        'If it has a wick, trim it to 6 mm each time before you light it.',
        'Stand it on something level that heat does not harm, and out of draughts.',
      ],
    },
  ],
  // Common practice, no source.
  blade: () => [
    {
      sort: 'blade',
      label: 'Sharp edge',
      lines: [
        'It is sharp. Cut away from yourself, close it after use and keep it out of the reach of children.',
      ],
    },
  ],
  // Which plants are toxic is the record's statement; the advice is common practice, no source.
  plant: ({ toxicTo = [] }) =>
    toxicTo.length > 0
      ? [
          {
            sort: 'pets',
            label: 'Pets',
            lines: [
              `Harmful to ${together(toxicTo)} if eaten. Keep it out of their reach, and ask a vet at once if some was.`,
            ],
          },
        ]
      : [],
  // After US 16 CFR 1501 (ages 3 to 6: from memory).
  children: ({ minAge, hazards = [] }) => [
    {
      sort: 'children',
      label: 'Small children',
      lines: [...(minAge ? [`Not for children under ${minAge}.`] : []), ...hazards.map(hazardLine)],
    },
  ],
};

/** Everything an item must be shown with, in the order of harm; empty for an item that hurts nobody. */
export const cautionsOf = ({ hazards }: Item): readonly Caution[] => {
  const all = hazards.categories.flatMap((category) => rules[category](hazards));
  const own = hazards.more.length > 0 ? [{ sort: 'more', label: 'Please note', lines: hazards.more }] : [];
  const seen = new Set<string>();
  return [...all, ...own].filter(({ sort, lines }) => lines.length > 0 && !seen.has(sort) && seen.add(sort));
};
