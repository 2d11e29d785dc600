/** Names of the major allergens, as records state them. */

/**
 * US FDA's nine (FASTER Act, 2023): milk, eggs, fish, crustacean shellfish, tree nuts, peanuts, wheat, soybeans,
 * sesame. EU 1169/2011 Annex II's fourteen: cereals with gluten, crustaceans, eggs, fish, peanuts, soybeans, milk,
 * nuts, celery, mustard, sesame, sulphites, lupin, molluscs.
 */
export const ALLERGENS: readonly string[] = [
  'celery',
  'crustaceans',
  'eggs',
  'fish',
  'gluten',
  'lupin',
  'milk',
  'molluscs',
  'mustard',
  'peanuts',
  'sesame',
  'soybeans',
  'sulphites',
  'tree nuts',
  'wheat',
  // Cereals with gluten that Annex II names besides wheat.
  'barley',
  'oats',
  'rye',
  'spelt',
];
