import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { pairsOnDemand, wordsOnDemand } from '../../src/analysis/language/lexicon/on-demand.ts';
import { classes, sourceOf } from '../support/wordnet-classes.ts';

const folder = join(import.meta.dirname, '../../src/analysis/language/lexicon/wordnet');
const all = classes();

test('a lexicon is asked for words and for pairs', () => {
  const words = wordsOnDemand(' teapot\n  whisk ');
  expect(['teapot', 'whisk', 'pot', ''].filter((word) => words.has(word))).toEqual(['teapot', 'whisk']);
  const pairs = pairsOnDemand(' table coffee\n  dining | bag sleeping');
  const asked = ['coffee_table', 'dining_table', 'sleeping_bag', 'table_coffee', 'bag', 'coffee_bag'];
  expect(asked.filter((pair) => pairs.has(pair))).toEqual(asked.slice(0, 3));
});

describe('the word lists from WordNet', () => {
  test.each(Object.keys(all))('%s are what its classes give', async (file) => {
    await expect(sourceOf(file)).toMatchFileSnapshot(join(folder, `${file}.ts`));
  });

  test.each([
    ['wearables', ['sweatshirt', 'necklace', 'cardigan'], ['brush', 'teapot']],
    ['homeware', ['teapot', 'backpack', 'armchair'], ['sweatshirt', 'cathedral', 'velvet']],
    ['devices', ['sunglasses', 'bookend', 'bandanna'], ['cathedral', 'street', 'soup']],
    ['foods', ['caramel', 'oolong', 'shortbread'], ['whisk']],
    ['stuffs', ['velvet', 'rosewood', 'pewter'], ['teapot', 'bandanna']],
    ['places', ['galveston', 'fiji'], ['china', 'jersey', 'turkey']],
    ['peoples', ['norwegian', 'moroccan'], ['china']],
  ])('%s hold what belongs to them and nothing else', (name, inside, outside) => {
    const words = new Set(
      Object.values(all).flatMap((sets) => sets.find(([one]) => one === name)?.[2] ?? []),
    );
    expect(inside.filter((word) => !words.has(word))).toEqual([]);
    expect(outside.filter((word) => words.has(word))).toEqual([]);
  });
});
