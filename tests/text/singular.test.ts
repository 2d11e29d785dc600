import { join } from 'node:path';
import pluralize from 'pluralize';
import { describe, expect, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import { singularOf } from '../../src/text/singular.ts';
import { checksFile } from '../support/checks-folder.ts';
import { rowsOf } from '../support/language-checks.ts';

const goods = rowsOf(join(import.meta.dirname, '../fixtures/language/goods-plurals.tsv'));

describe('a singular', () => {
  test('of 88 plurals of goods is the word itself', () => {
    expect(goods).toHaveLength(88);
    expect(goods.filter(([plural = '', one = '']) => singularOf(plural) !== singularOf(one))).toEqual([]);
    expect(goods.filter(([, one = '']) => singularOf(one) !== one)).toEqual([]);
  });

  test('of different goods is different', () => {
    const singulars = new Set(goods.map(([, one]) => one));
    expect(new Set([...singulars].map((one) => singularOf(one as string))).size).toBe(singulars.size);
  });

  test.each(
    `glass brass bass grass scissors secateurs canvas iris lens gas series tongs moss cactus trellis couscous hibiscus
    citrus compass harness mattress tennis chassis bellows cosmos pothos thermos asparagus eucalyptus clematis oasis
    axis molasses species citrus cress atlas christmas jeans trousers tweezers cyclamen stamen rooibos coreopsis`
      .trim()
      .split(/\s+/),
  )('%s stays as it is', (word) => {
    expect(singularOf(word)).toBe(word);
  });

  test.each([
    ['salves', 'salve'],
    ['valves', 'valve'],
    ['mousses', 'mousse'],
    ['trellises', 'trellis'],
    ['lenses', 'lens'],
    ['canvases', 'canvas'],
    ['quiches', 'quiche'],
    ['smoothies', 'smoothie'],
    ['rutabagas', 'rutabaga'],
    ['corgis', 'corgi'],
    ['taxis', 'taxi'],
    ['kids', 'kid'],
    ['secateur', 'secateurs'],
    ['mosquitoes', 'mosquito'],
    ['clothes', 'clothes'],
    ['irises', 'iris'],
    ['waltzes', 'waltz'],
    ['tealeaves', 'tealeaf'],
    ['penknives', 'penknife'],
  ])('of %s is %s', (plural, one) => {
    expect(singularOf(plural)).toBe(one);
  });

  test('of a singular is itself, however often it is asked', () => {
    for (const [plural = ''] of goods) expect(singularOf(singularOf(plural))).toBe(singularOf(plural));
  });

  test('leaves the library’s own rules as they were for everybody else in the process', () => {
    expect(pluralize.singular('trellis')).toBe('trelli');
  });

  // Universal Dependencies English EWT, development part, plural nouns with their lemmas (CC BY-SA 4.0).
  const file = checksFile('language/ewt-dev-plurals.tsv');
  test.skipIf(file === undefined)('shares a key with its plural in the nouns of running text', async () => {
    const english = await languageFor('en');
    const apart = rowsOf(file as string).filter(
      ([plural = '', lemma = '']) => english.word(plural).key !== english.word(lemma).key,
    );
    // Reached: 431 of 431.
    expect(apart.length).toBeLessThanOrEqual(4);
  });
});
