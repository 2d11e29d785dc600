import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cardGroups } from '../../../src/channels/cards/sharing.ts';

const sizes = (needs: readonly number[]): readonly number[] => cardGroups(needs).map((group) => group.length);
const alike = (count: number): readonly number[] => Array.from({ length: count }, () => 20);

describe('which items share a card', () => {
  test.each([
    [0, []],
    [1, [1]],
    [2, [1, 1]],
    [3, [1, 1, 1]],
    [4, [1, 1, 2]],
    [5, [1, 2, 2]],
    [6, [1, 1, 2, 2]],
    [7, [1, 2, 2, 2]],
    [8, [1, 1, 2, 2, 2]],
    [9, [1, 2, 2, 2, 2]],
    [12, [1, 1, 2, 2, 2, 2, 2]],
  ])('of %i items alike', (count, expected) => {
    expect(sizes(alike(count))).toEqual(expected);
  });

  test('the one with most to say stands alone', () => {
    expect(cardGroups([20, 20, 20, 200])).toEqual([[0], [1, 2], [3]]);
    expect(cardGroups([20, 200, 20, 20])).toEqual([[0], [1], [2, 3]]);
  });

  test('two that have more to say than a card holds are parted', () => {
    expect(cardGroups([20, 300, 300, 20, 20])).toEqual([[0], [1], [2], [3, 4]]);
  });

  test('every item stands on one card, in order, the lead item alone, none with more than one other', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(500), { minLength: 1, maxLength: 12 }), (needs) => {
        const groups = cardGroups(needs);
        expect(groups.flat()).toEqual(needs.map((_, place) => place));
        expect(groups[0]).toEqual([0]);
        expect(groups.every(({ length }) => length === 1 || length === 2)).toBe(true);
        if (needs.length >= 3 && needs.length <= 8) expect(groups.length).toBeGreaterThanOrEqual(3);
      }),
    );
  });
});
