/**
 * The usual cautions, as data made from what a record states: which there are and with which values. Their sentences
 * are the wording's, and no legal advice: what a label must say is local law.
 */
import type { Category, Hazards, Item } from './box.ts';

/** One caution by its sort. An item has at most one of each. */
export type Caution =
  | {
      readonly sort: 'allergens';
      /** As US FDA's nine and EU 1169/2011 Annex II's fourteen name them; see content/allergens.ts. */
      readonly contains: readonly string[];
      readonly mayContain: readonly string[];
    }
  | { readonly sort: 'ingredients'; readonly ingredients: string }
  | { readonly sort: 'skin' }
  | { readonly sort: 'flame' }
  /** `closes`: it folds or closes. `isPointed`: its point is sharp, and it has no edge. */
  | { readonly sort: 'blade'; readonly closes: boolean; readonly isPointed?: boolean }
  /** `toxicTo` names animals, at least one. */
  | { readonly sort: 'pets'; readonly toxicTo: readonly string[] }
  /** Years of age, and dangers by name; at least one of the two. */
  | { readonly sort: 'children'; readonly minAge?: number; readonly hazards: readonly string[] }
  /** The owner's own lines, at least one. */
  | { readonly sort: 'more'; readonly lines: readonly string[] };

/** A caution in words. */
export interface CautionText {
  readonly label: string;
  /** Whole sentences, at least one. */
  readonly lines: readonly string[];
}

/** Gives a caution's words: the wording's part in what the model and the analysis say of an item. */
export type CautionWords = (caution: Caution) => CautionText;

const ingredientsOf = ({ ingredients }: Hazards): readonly Caution[] =>
  ingredients ? [{ sort: 'ingredients', ingredients }] : [];

const eaten = (hazards: Hazards): readonly Caution[] => {
  const { allergens = [], mayContain = [] } = hazards;
  return [{ sort: 'allergens', contains: allergens, mayContain }, ...ingredientsOf(hazards)];
};

const rules: Readonly<Record<Category, (hazards: Hazards) => readonly Caution[]>> = {
  food: eaten,
  drink: eaten,
  cosmetic: (hazards) => [...ingredientsOf(hazards), { sort: 'skin' }],
  candle: () => [{ sort: 'flame' }],
  blade: ({ closes = false, isPointed = false }) => [
    { sort: 'blade', closes, ...(isPointed && { isPointed }) },
  ],
  // Which plants are toxic is the record's statement.
  plant: ({ toxicTo = [] }) => (toxicTo.length > 0 ? [{ sort: 'pets', toxicTo }] : []),
  children: ({ minAge, hazards = [] }) =>
    minAge || hazards.length > 0 ? [{ sort: 'children', ...(minAge ? { minAge } : {}), hazards }] : [],
};

/** Everything an item must be shown with, in the order of harm; empty for an item that hurts nobody. */
export const cautionsOf = ({ hazards }: Pick<Item, 'hazards'>): readonly Caution[] => {
  const all = hazards.categories.flatMap((category) => rules[category](hazards));
  const own: readonly Caution[] = hazards.more.length > 0 ? [{ sort: 'more', lines: hazards.more }] : [];
  const seen = new Set<string>();
  return [...all, ...own].filter(({ sort }) => !seen.has(sort) && seen.add(sort));
};

/** Whether a caution tells of a danger: that is said aloud and under a video, while ingredients are read on the card. */
export const isDanger = ({ sort }: Pick<Caution, 'sort'>): boolean => sort !== 'ingredients';
