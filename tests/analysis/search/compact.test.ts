import fc from 'fast-check';
import MiniSearch from 'minisearch';
import { describe, expect, test } from 'vitest';
import { languageFor } from '../../../src/analysis/language/language.ts';
import { type PackedForm, packIndex, unpackIndex } from '../../../src/analysis/search/compact.ts';
import { type IndexedDocument, indexOptions } from '../../../src/analysis/search/options.ts';
import { buildIndex } from '../../support/build-index.ts';

const english = await languageFor('en');

const word = fc.stringMatching(/^[a-zé冬ß]{1,6}$/u);
const text = fc.array(word, { minLength: 1, maxLength: 12 }).map((words) => words.join(' '));

describe('a packed index', () => {
  test('is the library’s own when it is unpacked', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ name: text, story: text }), { maxLength: 40 }),
        fc.nat(500),
        (documents, first) => {
          const fields = ['name', 'story'];
          const index = new MiniSearch<IndexedDocument>(indexOptions(fields));
          index.addAll(documents.map((one, i) => ({ ...one, id: first + i })));
          const words = new Set(documents.flatMap(({ name, story }) => `${name} ${story}`.split(' ')));
          const forms: PackedForm[] = [...words].map((one) => ({ word: one, stem: one }));
          const plain = index.toJSON();
          const { index: unpacked } = unpackIndex(packIndex(plain, forms, first));
          const sorted = (of: typeof plain) => ({
            ...of,
            index: Object.fromEntries(of.index),
            // Ours are counted in words, as the next test has them.
            fieldLength: undefined,
            averageFieldLength: undefined,
          });
          expect(sorted(unpacked)).toEqual(sorted(plain));
        },
      ),
      { numRuns: 60 },
    );
  });

  test('knows how many words each field has', () => {
    const { index } = unpackIndex(
      buildIndex([{ name: 'oak oak tray' }, { name: 'tray' }], ['name'], english),
    );
    expect(index.fieldLength).toEqual({ 0: [3], 1: [1] });
    expect(index.averageFieldLength).toEqual([2]);
  });

  test('keeps each word with its stem, whatever falls off and comes instead', () => {
    const forms = ['knives', 'knife', 'ponies', 'watering', 'water', 'macramé'].map((one) => {
      const { folded, stem } = english.word(one);
      return { word: folded, stem };
    });
    const packed = buildIndex(
      [{ name: 'Knives, a knife, ponies, watering, water, macramé' }],
      ['name'],
      english,
    );
    expect([...unpackIndex(packed).forms]).toEqual([...forms].sort((a, b) => (a.word < b.word ? -1 : 1)));
  });

  test('is of the same bytes for the same documents, and of signs that any script may hold', () => {
    const documents = [{ name: 'Oak tray' }, { name: 'A </script> tray & "more"\u2028' }];
    const [one, two] = [0, 1].map(() => JSON.stringify(buildIndex(documents, ['name'], english)));
    expect(one).toBe(two);
    expect(one).not.toMatch(/[<>&\u2028]/);
  });
});
