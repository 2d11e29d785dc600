import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  deviationOfProportions,
  normalDeviation,
  type TextPart,
} from '../../src/analysis/coverage/dispersion.ts';

/** The corpus of five parts in Gries (2008), repeated in Gries (2020), "Analyzing dispersion". */
const corpus = [
  'b a m n i b e u p',
  'b a s a t b e w q n',
  'b c a g a b e s t a',
  'b a g h a b e a a t',
  'b a h a a b e a x a t',
].map((part) => part.split(' '));
const partsFor = (word: string): readonly TextPart[] =>
  corpus.map((part) => ({ occurrences: part.filter((one) => one === word).length, size: part.length }));

describe('deviation of proportions', () => {
  test.each([
    // DP and DPnorm of b, i, q and x as printed in the tests of scattertext after Gries (2020); of a from memory
    // of that chapter.
    ['a', 0.18, 0.22],
    ['b', 0.02, 0.024],
    ['i', 0.82, 1],
    ['q', 0.8, 0.976],
    ['x', 0.78, 0.951],
  ])('of %j in Gries’ corpus is %d, normalised %d', (word, deviation, normal) => {
    expect(deviationOfProportions(partsFor(word))).toBeCloseTo(deviation, 3);
    expect(normalDeviation(partsFor(word))).toBeCloseTo(normal, word === 'a' ? 2 : 3);
  });

  test('of 2, 1 and 0 in three equal parts is a third, normalised a half (Lijffijt and Gries 2012, table 1)', () => {
    const parts = [2, 1, 0].map((occurrences) => ({ occurrences, size: 100 }));
    expect(deviationOfProportions(parts)).toBeCloseTo(1 / 3, 12);
    expect(normalDeviation(parts)).toBeCloseTo(0.5, 12);
  });

  const parts = fc.array(fc.record({ occurrences: fc.nat(20), size: fc.integer({ min: 1, max: 400 }) }), {
    maxLength: 12,
  });

  test('lies between 0 and 1, the normalised one not below it', () => {
    fc.assert(
      fc.property(parts, (all) => {
        const deviation = deviationOfProportions(all);
        expect(deviation).toBeGreaterThanOrEqual(0);
        expect(deviation).toBeLessThanOrEqual(1);
        expect(normalDeviation(all)).toBeLessThanOrEqual(1);
        if (all.length > 1) expect(normalDeviation(all)).toBeGreaterThanOrEqual(deviation - 1e-12);
      }),
    );
  });

  test('is 0 where each part has its share', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1 }), (sizes) => {
        const even = sizes.map((size) => ({ occurrences: size, size: size * 3 }));
        expect(deviationOfProportions(even)).toBeCloseTo(0, 10);
      }),
    );
  });

  test('is 1, normalised, where all is in the smallest part', () => {
    const parts = [
      { occurrences: 3, size: 10 },
      { occurrences: 0, size: 90 },
    ];
    expect(normalDeviation(parts)).toBeCloseTo(1, 12);
  });

  test('is 0 for no parts, one part, empty parts and nothing said', () => {
    for (const some of [[], [{ occurrences: 3, size: 5 }], [{ occurrences: 0, size: 0 }], partsFor('z')]) {
      expect(normalDeviation(some)).toBe(0);
    }
    expect(deviationOfProportions([])).toBe(0);
  });
});
