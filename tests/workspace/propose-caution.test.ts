import { describe, expect, test } from 'vitest';
import { proposeCaution } from '../../src/workspace/begin/propose-caution.ts';

const CASES: Readonly<Record<string, readonly (readonly [name: string, kind: string])[]>> = {
  food: [
    ['Venison salami snack sticks', 'snack stick'],
    ['Salted caramel fudge bites', 'fudge bite'],
    ['Liver bites for puppies', 'liver bite'],
    ['Pot de miel de châtaignier', ''],
    ['Kräutersalz vom Deich', ''],
  ],
  drink: [
    ['Darjeeling first flush, 50 g', 'darjeeling first'],
    ['Ceremonial grade matcha tin', 'matcha tin'],
    ['Chá verde dos Açores', ''],
  ],
  cosmetic: [
    ['Lavender pillow mist', 'lavender pillow'],
    ['Beard oil, cedar', 'beard oil'],
    ['Jabón de avena', ''],
  ],
  candle: [
    ['Storm matches in a tube', 'storm match'],
    ['Duftkerze Feige', ''],
    ['和ろうそく', ''],
  ],
  blade: [
    ['Linocut gouge set', 'linocut gouge set'],
    ['Ciseaux de couture', ''],
  ],
  plant: [
    ['Monstera deliciosa, 9 cm pot', 'monstera deliciosa'],
    ['Variegated string of hearts', 'heart'],
  ],
  children: [
    ['Wooden stacking rainbow for toddlers', 'stacking'],
    ['Amigurumi kit with safety eyes', 'amigurumi kit'],
  ],
  undefined: [
    ['Tea strainer', 'tea strainer'],
    ['Hand-dyed sock yarn, plum jam', 'sock yarn'],
    ['Knife roll in canvas', 'knife roll'],
    ['Feather wand for cats', 'feather wand'],
    ['Brass candlestick pair', 'candlestick pair'],
    ['Tasse à thé', ''],
    ['Seifenschale', ''],
  ],
};

describe.each(Object.entries(CASES))('proposed as %s', (category, things) => {
  test.each(things)('%s', (name, kind) => {
    expect(String(proposeCaution({ name, kind }))).toBe(category);
  });
});

test('what a list calls all its things is asked of those whose own name says nothing, or says a part', () => {
  const soaps = ['Oat bar', 'Charcoal no. 4', 'Soap dish', 'Cherry jam'];
  expect(soaps.map((name) => proposeCaution({ name, kind: '', among: 'Soap' }))).toEqual([
    'cosmetic',
    'cosmetic',
    undefined,
    'food',
  ]);
});
