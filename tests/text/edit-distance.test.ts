import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { typosAllowed } from '../../src/analysis/search/spelling.ts';
import { editDistance, editDistances, lacksMore, lettersOf } from '../../src/text/edit-distance.ts';

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
    expect(editDistance(typed, word)).toBe(slips);
  });

  test('to a beginning are none when the word is only unfinished', () => {
    expect(editDistances('terrac', 'terracotta', 2)).toEqual({ whole: 3, beginning: 0 });
    expect(editDistances('terarc', 'terracotta', 2).beginning).toBe(1);
  });

  test('are forgiven by length', () => {
    expect([3, 4, 7, 8].map(typosAllowed)).toEqual([0, 1, 1, 2]);
  });

  test('are never fewer than the letters that one word has and the other lacks', () => {
    const word = fc.stringMatching(/^[a-e]{0,7}$/);
    fc.assert(
      fc.property(word, word, (a, b) => {
        const whole = editDistance(a, b);
        expect(lacksMore(lettersOf(a), lettersOf(b), whole)).toBe(false);
        expect(whole).toBe(editDistance(b, a));
        expect(editDistance(a, b, 1)).toBe(Math.min(whole, 2));
      }),
    );
  });
});
