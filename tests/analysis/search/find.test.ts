import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { languageFor } from '../../../src/analysis/language/language.ts';
import { type FindOptions, find, type KnownWords } from '../../../src/analysis/search/find.ts';
import { HEAD_FIELDS, TEXT_FIELDS } from '../../../src/analysis/search/options.ts';
import { indexInParts } from '../../support/whole-index.ts';

const english = await languageFor('en-GB');

const searcher = (documents: readonly { name?: string; about?: string; story?: string }[]) => {
  const texts = documents.map(({ name = '', about = '', story = '' }) => ({
    name,
    about,
    text: [name, about, story].join('\n'),
  }));
  const indexes = [HEAD_FIELDS, TEXT_FIELDS].map((fields) => indexInParts(texts, fields, english));
  return (query: string, options?: FindOptions, known?: KnownWords) =>
    find(indexes, english, query, options, known);
};
const ids = (answer: ReturnType<ReturnType<typeof searcher>>): readonly number[] =>
  answer.found.map(({ id }) => id);

const shop = searcher([
  { name: 'Enamel watering can', about: 'Culverhythe Enamel · green' },
  { name: 'Brass plant mister', about: 'copper', story: 'It waters from above; no can is so gentle.' },
  { name: 'Terracotta pot with saucer', story: 'For a sill.' },
  { name: 'Macramé plant hanger', about: 'cotton' },
  { name: 'Secateurs', story: 'Two knives that meet.' },
]);

describe('what is asked is met', () => {
  test.each([
    ['as it is', 'mister', [1]],
    ['in another inflection', 'misters', [1]],
    ['in an irregular one', 'knife', [4]],
    ['without its accent', 'macrame', [3]],
    ['with an accent that is not there', 'sécateurs', [4]],
    ['in capitals', 'TERRACOTTA', [2]],
    ['by its beginning', 'terr', [2]],
    ['by a beginning that its stem has lost', 'waterin', [0, 1]],
    ['with a letter too few', 'teracotta', [2]],
    ['with two letters exchanged', 'msiter', [1]],
    ['with a slip in a beginning', 'terarco', [2]],
    ['among small words', 'the pot for my saucer', [2]],
    ['by a beginning before the last word', 'wat can', [0, 1]],
  ])('%s: %s', (_, query, expected) => {
    expect(ids(shop(query))).toEqual(expected);
  });

  test('by what its record and its story say', () => {
    expect(ids(shop('copper'))).toEqual([1]);
    expect(ids(shop('gentle'))).toEqual([1]);
  });

  test('not at all by what is too short to have a slip', () => {
    expect(ids(shop('pat'))).toEqual([]);
  });

  test('and no slip is looked for where the word itself is known', () => {
    expect(shop('pot').asked[0]?.guesses).toEqual([]);
    expect(shop('teracotta').asked[0]?.guesses.map(({ word }) => word)).toEqual(['terracotta']);
  });

  test('the same whether words were asked before or not', () => {
    const known: KnownWords = new Map();
    for (const query of ['w', 'wa', 'wat', 'water', 'watering c', 'watering can'])
      expect(ids(shop(query, {}, known))).toEqual(ids(shop(query)));
  });
});

describe('the order of answers', () => {
  const filler = fc.array(fc.constantFrom('oak', 'ash', 'elm', 'linen', 'twine'), { maxLength: 10 });
  const field = fc.constantFrom('name', 'about', 'story');
  const many = fc.array(fc.constantFrom('lamp', 'lampshades', 'lmap', 'oak', 'elm'), { maxLength: 8 });

  test('puts no beginning and no slip before the whole word', () => {
    fc.assert(
      fc.property(field, field, filler, many, (whole, other, padding, others) => {
        const documents = [
          {
            [other]: ['lampshade', 'lampshades', 'lampoon', ...others.filter((one) => one !== 'lamp')].join(
              ' ',
            ),
          },
          { [whole]: ['lamp', ...padding].join(' ') },
        ];
        for (const query of ['lamp', 'lamps']) expect(ids(searcher(documents)(query))[0]).toBe(1);
      }),
    );
  });

  test('puts no beginning before the whole words of the same several words', () => {
    fc.assert(
      fc.property(field, field, filler, fc.nat(6), (first, second, padding, more) => {
        const documents = [
          {
            [first]: ['lamp '.repeat(more + 1), 'shades', ...padding].join(' '),
            about: 'shades shades lamp',
          },
          { [second]: ['lamp', ...padding, 'shade'].join(' ') },
          { name: `${'lamp '.repeat(more + 1)} shadest`, about: 'shadest lamp' },
        ];
        const ranked = ids(searcher(documents)('lamp shade'));
        expect(ranked.indexOf(2)).toBe(2);
      }),
    );
  });

  test('puts a whole word before a beginning where neither has the other words', () => {
    const find = searcher([
      { name: 'Lampshade' },
      { name: `Lamp ${'of oak and brass with linen '.repeat(6)}` },
      { name: 'Zinnia' },
    ]);
    const ranked = ids(find('zinnia lamp')).filter((id) => id !== 2);
    expect(ranked).toEqual([1, 0]);
  });

  test('puts those that have every word first', () => {
    const find = searcher([
      { name: 'Lamp lamp lamp' },
      { name: 'Shade', story: 'shade shade' },
      {
        name: 'Oak box',
        story: 'Once it stood under a lamp, in the shade of a tree, with much else to say of it.',
      },
    ]);
    expect(ids(find('lamp shade'))[0]).toBe(2);
  });

  test('puts a name before a mention', () => {
    expect(ids(shop('can'))).toEqual([0, 1]);
  });

  test('is the catalogue’s own among equals', () => {
    const same = Array.from({ length: 5 }, () => ({ name: 'Oak tray' }));
    expect(ids(searcher(same)('tray'))).toEqual([0, 1, 2, 3, 4]);
  });
});
