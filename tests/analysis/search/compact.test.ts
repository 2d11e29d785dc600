import fc from 'fast-check';
import MiniSearch from 'minisearch';
import { describe, expect, test } from 'vitest';
import { languageFor } from '../../../src/analysis/language/language.ts';
import { type Postings, packIndex, unpackIndex } from '../../../src/analysis/search/compact.ts';
import { openPart } from '../../../src/analysis/search/part.ts';
import { searchedWords } from '../../../src/analysis/search/text.ts';
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

  /** A word with its stem, of any signs at all: parts of pairs, spaces, the packing's own signs. */
  const anyWord = fc.oneof(
    fc.string({ unit: 'binary', minLength: 1, maxLength: 8 }),
    fc
      .array(fc.integer({ min: 0, max: 0xffff }), { minLength: 1, maxLength: 8 })
      .map((codes) => String.fromCharCode(...codes)),
    fc.stringMatching(/^[ %205,a]{1,8}$/),
  );

  test('gives back every word, whatever its signs', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(anyWord, anyWord), { selector: ([one]) => one, maxLength: 12 }),
        (words) => {
          const forms = words.map(([one, stem]) => ({ word: one, stem }));
          const postings = new Map(forms.map(({ stem }) => [stem, [{ documents: [0, 2], times: [1, 3] }]]));
          const whole = { first: 0, count: 3, fields: ['name'], forms, postings };
          const published = JSON.parse(JSON.stringify(packIndex(whole)));
          expect(unpackIndex(published)).toEqual({
            ...whole,
            forms: [...forms].sort((a, b) => (a.word < b.word ? -1 : 1)),
          });
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('can be read back with every sign of Unicode in a name, and with half of each pair', () => {
    // The two planes in which signs fold to something else; the others are Chinese signs, and none.
    const blocks = Array.from({ length: 0x200 }, (_, i) => i * 0x100);
    for (const from of blocks) {
      const codes = Array.from({ length: 0x100 }, (_, i) => from + i);
      const name = codes.map((code) => String.fromCodePoint(code)).join(' ');
      const part = openPart(JSON.parse(JSON.stringify(buildIndex([{ name }], ['name'], english))));
      const words = searchedWords(name, english).map(({ folded }) => folded);
      expect(part.forms.map(({ word: one }) => one)).toEqual(
        [...new Set(words)].sort((a, b) => (a < b ? -1 : 1)),
      );
      expect(part.lengths[0]?.[0]).toBe(words.length);
    }
    expect(blocks.length * 0x100).toBe(2 * 0x1_0000);
  });

  test('comes to an end with any bytes: it is read, or refused', () => {
    const packed = buildIndex(
      [{ name: 'Oak tray, elm tray' }, { name: 'Knives and ponies, \ufdfa' }],
      ['name'],
      english,
    );
    const signs = fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[A-Za-z0-9_-]*$/));
    let refused = 0;
    fc.assert(
      fc.property(
        fc.constantFrom('w' as const, 's' as const, 'p' as const),
        fc.nat(),
        fc.nat(),
        signs,
        (key, from, length, put) => {
          const text = packed[key];
          const start = from % (text.length + 1);
          const given = text.slice(0, start) + put + text.slice(start + (length % (text.length + 1)));
          try {
            openPart({ ...packed, [key]: given });
          } catch (error) {
            refused += 1;
            expect(String(error)).toMatch(/^Error: Unexpected index, expected /);
          }
        },
      ),
      { numRuns: 5000 },
    );
    expect(refused).toBeGreaterThan(1000);
    for (const count of [-1, Number.NaN, 2 ** 31])
      expect(() => openPart({ ...packed, d: [0, count] })).toThrow('Unexpected index');
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
