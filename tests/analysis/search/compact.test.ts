import fc from 'fast-check';
import MiniSearch from 'minisearch';
import { describe, expect, test } from 'vitest';
import { languageFor } from '../../../src/analysis/language/language.ts';
import { type Postings, packIndex, unpackIndex } from '../../../src/analysis/search/compact.ts';
import { openPart } from '../../../src/analysis/search/part.ts';
import { wholeIndex } from '../../../src/analysis/search/whole-index.ts';
import { buildIndex } from '../../support/build-index.ts';

const english = await languageFor('en');

const word = fc.stringMatching(/^[a-zé冬ß]{1,6}$/u);
const text = fc.array(word, { minLength: 1, maxLength: 12 }).map((words) => words.join(' '));

describe('a packed index', () => {
  // MiniSearch counts for itself who has a word, and how often.
  test('has the postings that an independent library counts', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ name: text, story: text }), { maxLength: 40 }),
        fc.nat(500),
        (documents, first) => {
          const fields = ['name', 'story'];
          const library = new MiniSearch<{ id: number; name: string; story: string }>({
            fields,
            tokenize: (all) => all.split(' '),
            processTerm: (term) => term,
          });
          library.addAll(documents.map((one, i) => ({ ...one, id: i })));
          const postings = new Map<string, readonly Postings[]>(
            library.toJSON().index.map(([stem, byField]) => [
              stem,
              fields.map((_, field) => {
                const counted = Object.entries(byField[field] ?? {}).map(([id, times]) => [
                  Number(id),
                  times,
                ]);
                counted.sort(([a = 0], [b = 0]) => a - b);
                return {
                  documents: counted.map(([id = 0]) => id),
                  times: counted.map(([, times = 0]) => times),
                };
              }),
            ]),
          );
          const forms = [...postings.keys()].map((one) => ({ word: one, stem: one }));
          const whole = { first, count: documents.length, fields, forms, postings };
          const unpacked = unpackIndex(packIndex(whole));
          expect(unpacked).toEqual({
            ...whole,
            forms: [...forms].sort((a, b) => (a.word < b.word ? -1 : 1)),
          });
        },
      ),
      { numRuns: 60 },
    );
  });

  test('knows how many words each field has', () => {
    const documents = [{ name: 'oak oak tray' }, { name: 'tray', about: 'elm' }];
    const part = openPart(buildIndex(documents, ['name', 'about'], english, 7));
    expect(part.lengths.map((lengths) => [...lengths])).toEqual([
      [3, 1],
      [0, 1],
    ]);
    expect(wholeIndex([part]).averageLengths).toEqual([2, 0.5]);
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
