import { describe, expect, test } from 'vitest';
import { isPointed, suggestedCategory } from '../../src/content/hurtful-kinds.ts';

/** What a record has to warn of, by heads that people write; written apart from the program's own table. */
const HEADS: Readonly<Record<string, string>> = {
  food: `jam, jelly, marmalade, chutney, honey, biscuit, shortbread, cookie, cake, chocolate, fudge, toffee, caramel,
    sweet, candy, granola, nut, cracker, cheese, pickle, relish, sauce, mustard, vinegar, oil, spice, salt, sugar, syrup,
    flour, seasoning, truffle, brownie, chocolate bar, candies, nuts, cookies, spices`,
  drink: `cordial, tea, coffee, juice, cider, beer, wine, gin, liqueur, cocoa, tisane, squash, tea bag, coffee bean,
    tea bags, coffee beans, wines`,
  cosmetic: `soap, salve, balm, cream, lotion, shampoo, conditioner, scrub, perfume, serum, ointment, soap bar,
    shampoo bar, bath salt, bath bomb, body oil, essential oil, bath salts, bath bombs, soaps, salves`,
  candle: 'candle, tealight, melt, tea light, tea lights, candles, wax melts',
  blade: `snip, snips, knife, knives, secateurs, shears, scissors, pruner, loppers, saw, sickle, scythe, billhook,
    hatchet, axe, axes, razor, blade, secateur, lopper, scissor`,
  plant: `bulb, seed, seedling, plant, cutting, corm, tuber, houseplant, succulent, cactus, cacti, amaryllis, crocus,
    crocuses, daffodil, hyacinth, lily, lilies, snowdrop, tulip, seed packet, seed ball, seed mix, seed balls`,
};

const cases = Object.entries(HEADS).flatMap(([category, heads]) =>
  heads.split(',').map((head): [string, string] => [head.trim(), category]),
);

describe('a kind that can hurt somebody', () => {
  test.each(cases)('"%s" is known as %s', (kind, category) => {
    expect(suggestedCategory(kind)).toBe(category);
    expect(suggestedCategory(`Old ${kind} for the garden`)).toBe(category);
  });

  test.each([
    ['jar of honey', 'food'],
    ['a pair of scissors', 'blade'],
    ['bag of bath salts', 'cosmetic'],
    ['seed-packet', 'plant'],
  ])('is looked for past what holds it: "%s"', (kind, category) => {
    expect(suggestedCategory(kind)).toBe(category);
  });

  test.each([
    ...[
      'linseed oil',
      'tool oil',
      'bird seed',
      'light bulb',
      'light bulbs',
      'candle holder',
      'plant mister',
      'knife roll',
    ],
    ...[
      'seed tray',
      'tea towel',
      'jam jar',
      'honey dipper',
      'holder for candles',
      'constructor',
      'toString',
      '',
    ],
  ])('is not seen in "%s"', (kind) => {
    expect(suggestedCategory(kind)).toBeUndefined();
  });
});

test('what pricks is told from what cuts', () => {
  const kinds = ['sewing needles', 'dry fly', 'fishing hook', 'hook knife', 'fly tying scissors', 'scalpel'];
  expect(kinds.map(isPointed)).toEqual([true, true, true, false, false, false]);
});

test.each([
  ['fudge bite', 'food'],
  ['cheese wedges', 'food'],
  ['candle making set', undefined],
  ['tea set', undefined],
  ['beard oil', 'cosmetic'],
  ['silk eye mask', undefined],
  ['hoya kerrii', 'plant'],
  ['fern print', undefined],
  ['cookie cutter', undefined],
  ['dog toy', undefined],
  ['bougie parfumée', 'candle'],
  ['Früchtetee', 'drink'],
  ['Käsebrett', undefined],
])('of the kind “%s” comes %s', (kind, category) => {
  expect(suggestedCategory(kind)).toBe(category);
});
