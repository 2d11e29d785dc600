import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lacksMore, lettersOf, typosAllowed, typosBetween } from '../../../src/analysis/search/typos.ts';

describe('slips', () => {
  // Damerau 1964: one letter wrong, missing, extra, or two neighbours exchanged is one error.
  test.each([
    ['trowel', 'trowel', 0],
    ['trwel', 'trowel', 1],
    ['troowel', 'trowel', 1],
    ['trawel', 'trowel', 1],
    ['torwel', 'trowel', 1],
    ['twoler', 'trowel', 3],
    // Optimal string alignment edits no part twice (Boytsov 2011): 3 where unrestricted Damerau has 2.
    ['ca', 'abc', 3],
  ])('from %s to %s are %i', (typed, word, slips) => {
    expect(typosBetween(typed, word, 5).whole).toBe(slips);
  });

  test('to a beginning are none when the word is only unfinished', () => {
    expect(typosBetween('terrac', 'terracotta', 2)).toEqual({ whole: 3, beginning: 0 });
    expect(typosBetween('terarc', 'terracotta', 2).beginning).toBe(1);
  });

  test('are forgiven by length', () => {
    expect([3, 4, 7, 8].map(typosAllowed)).toEqual([0, 1, 1, 2]);
  });

  test('are never fewer than the letters that one word has and the other lacks', () => {
    const word = fc.stringMatching(/^[a-e]{0,7}$/);
    fc.assert(
      fc.property(word, word, (a, b) => {
        const { whole } = typosBetween(a, b, 20);
        expect(lacksMore(lettersOf(a), lettersOf(b), whole)).toBe(false);
        expect(whole).toBe(typosBetween(b, a, 20).whole);
        expect(typosBetween(a, b, 1).whole).toBe(Math.min(whole, 2));
      }),
    );
  });
});
