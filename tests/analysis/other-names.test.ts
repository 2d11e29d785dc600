import { describe, expect, test } from 'vitest';
import { otherNames } from '../../src/analysis/coverage/phrases/other-names.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { Item } from '../../src/model/box.ts';
import { item } from '../support/box.ts';
import { wordnet } from '../support/dictionary.ts';

const english = await languageFor('en-GB');
const named = (kind: string, also: readonly string[] = []): Item => item({ name: kind, kind, also });
const of = (kind: string, also: readonly string[] = []): readonly string[] =>
  otherNames([named(kind, also)], english, wordnet).get(kind) ?? [];

// WordNet 3.1 (Princeton University).
describe('other names', () => {
  test('are a thing’s synonyms, and the broader or narrower name that is meant by it', async () => {
    expect(of('secateurs')).toEqual(['pruning shears']);
    expect(of('pruning shears')).toEqual(['secateurs']);
    expect(of('twine')).toEqual(['string']);
    expect(of('tea towel')).toContain('dishtowel');
  });

  test('leave out what the record has, in any spacing and number', async () => {
    expect(of('tea towel', ['dish towels'])).toEqual([]);
    expect(of('watering can', ['wateringpot'])).toEqual([]);
  });

  test('of a kind that no dictionary has are those of its head, where that has one meaning', async () => {
    expect(of('seed sieve')).toEqual(['seed screen']);
    expect(of('plant tie')).toEqual([]);
    expect(of('nest box')).toEqual([]);
  });

  test('are of goods alone: a planter is no plantation’s owner, a mug no fool', async () => {
    expect(of('planter')).toEqual([]);
    expect(of('mug')).toEqual([]);
  });

  test.each(['', ' ', '🌱', '12', 'no such thing', 'Bücher', 'constructor', '__proto__'])(
    'of “%s” are none',
    async (kind) => {
      expect(of(kind)).toEqual([]);
    },
  );

  test('are few, plain and lower case', async () => {
    const kinds = [
      'candle',
      'wreath',
      'thermometer',
      'lantern',
      'scarf',
      'notebook',
      'basket',
      'soap',
      'tulip',
      'jam',
    ];
    for (const [, names] of otherNames(
      kinds.map((kind) => named(kind)),
      english,
      wordnet,
    )) {
      expect(names.length).toBeLessThanOrEqual(4);
      for (const name of names) expect(name).toMatch(/^[a-z][a-z' -]+$/);
      expect(new Set(names).size).toBe(names.length);
    }
  });

  test('are offered in English alone', async () => {
    expect(otherNames([named('secateurs')], await languageFor('de'), wordnet)).toEqual(new Map());
  });

  test('leave no listener behind', async () => {
    const before = process.eventNames().map((name) => [name, process.listenerCount(name as string)]);
    of('secateurs');
    expect(process.eventNames().map((name) => [name, process.listenerCount(name as string)])).toEqual(before);
  });
});
