/** Whether an item states what its cautions need. */

import { bladeCloses, isPointed, suggestedCategory } from '../content/hurtful-kinds.ts';
import type { Written } from '../content/read.ts';
import type { ItemRecord } from '../content/schemas.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { defined } from '../text/defined.ts';
import type { Category, Hazards } from './box.ts';

/** What each category's cautions are made of. */
export const needed: Record<Category, readonly (keyof ItemRecord)[]> = {
  food: ['allergens', 'ingredients'],
  drink: ['allergens', 'ingredients'],
  cosmetic: ['ingredients'],
  candle: [],
  blade: [],
  plant: ['toxicTo'],
  children: ['minAge', 'hazards'],
};

const categoriesOf = (record: ItemRecord): readonly Category[] =>
  (record.category ?? []).filter((category): category is Category => category !== 'none');

/** Findings about an item that can hurt somebody and does not say how. */
export const hazardFindings = ({ value, data, locationOf }: Written<ItemRecord>): readonly Diagnostic[] => {
  if (!value) return [];
  const suggested = suggestedCategory(value.kind);
  if (suggested !== undefined && data?.category === undefined) {
    const needs = needed[suggested];
    return [
      {
        weight: 'must fix',
        rule: 'category',
        location: locationOf(['kind']),
        adds: 'category',
        message: `Unexpected kind \`${value.kind}\` without a category, expected \`category: [${suggested}]\``,
        fix: `Add \`category: [${suggested}]\`${needs.length > 0 ? ` with its ${needs.join(' and ')}` : ''}, or \`category: none\` if it cannot hurt anybody`,
      },
    ];
  }
  return categoriesOf(value).flatMap((category) =>
    needed[category]
      .filter((key) => data?.[key] === undefined)
      .map(
        (key): Diagnostic => ({
          weight: 'must fix',
          rule: 'caution',
          location: locationOf(['category']),
          adds: key,
          message: `Unexpected category \`${category}\` without \`${key}\`, expected the field its caution is made of`,
          fix: `Add \`${key}: …\`${key === 'ingredients' ? '' : '; `[]` says that there is none'}`,
        }),
      ),
  );
};

/** What an item’s record states of how it can hurt. */
export const hazardsOf = (record: ItemRecord): Hazards => {
  const categories = categoriesOf(record);
  return defined({
    categories,
    closes: categories.includes('blade')
      ? bladeCloses([record.name, record.kind, ...(record.also ?? [])])
      : undefined,
    isPointed: (categories.includes('blade') && isPointed(record.kind)) || undefined,
    allergens: record.allergens ? record.allergens.map((name) => name.toLowerCase()) : undefined,
    mayContain: record.mayContain,
    ingredients: record.ingredients,
    toxicTo: record.toxicTo,
    minAge: record.minAge,
    hazards: record.hazards,
    more: record.cautions ?? [],
  });
};
