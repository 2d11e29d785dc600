import { describe, expect, test } from 'vitest';
import { languageFor } from '../../../src/analysis/language/language.ts';
import {
  BASIC_COLOURS,
  basicColoursOf,
  nearestBasicColour,
} from '../../../src/analysis/search/basic-colours.ts';
import { item, picture } from '../../support/box.ts';

const english = await languageFor('en-GB');

describe('a basic colour', () => {
  test('is one of eleven (Berlin & Kay 1969)', () => {
    expect(BASIC_COLOURS).toHaveLength(11);
  });

  // CSS Color 4, 6.1: each of these names is the term itself.
  test.each([
    ['#000000', 'black'],
    ['#ffffff', 'white'],
    ['#808080', 'grey'],
    ['#ff0000', 'red'],
    ['#ffa500', 'orange'],
    ['#ffff00', 'yellow'],
    ['#008000', 'green'],
    ['#0000ff', 'blue'],
    ['#800080', 'purple'],
    ['#ffc0cb', 'pink'],
    ['#8b4513', 'brown'],
    // Of photographs: sage tissue, a terracotta pot, pine boards, an enamel jug at dusk.
    ['#8a9a7b', 'green'],
    ['#a97f4f', 'brown'],
    ['#4a6f8f', 'blue'],
    ['#6b3f56', 'purple'],
  ])('of %s is %s', (hex, term) => {
    expect(nearestBasicColour(hex)).toBe(term);
  });

  test('is the one that the record says, in any shade', () => {
    const of = (color: string) => basicColoursOf(item({ color, pictures: [picture()] }), english);
    expect(of('cream with a cornflower blue band')).toEqual(['white', 'blue']);
    expect(of('dark green')).toEqual(['green']);
    expect(of('Gray')).toEqual(['grey']);
  });

  test('is its picture’s where the record says none', () => {
    expect(basicColoursOf(item({ pictures: [picture({ dominant: '#3f7d4a' })] }), english)).toEqual([
      'green',
    ]);
    expect(basicColoursOf(item(), english)).toEqual([]);
  });

  test('is left to the record’s own words in another language', async () => {
    const german = await languageFor('de');
    expect(basicColoursOf(item({ color: 'salbeigrün', pictures: [picture()] }), german)).toEqual([
      'salbeigrün',
    ]);
  });
});
