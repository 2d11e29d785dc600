import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isAtAim } from '../../src/analysis/coverage/aim.ts';
import { addingUp, broughtFigures, standingText } from '../../src/analysis/coverage/figures.ts';

describe('a standing', () => {
  test('has two decimals', () => expect(standingText(0.456, 0.7)).toBe('0.46'));
  test('below the aim is not rounded up to it', () => expect(standingText(0.6971, 0.7)).toBe('0.69'));
  test('that an edit brings is told only where its figures differ', () => {
    expect(broughtFigures({ before: 0.6971, after: 0.701 }, 0.7)).toEqual({
      before: '0.69',
      after: '0.70',
      there: true,
    });
    expect(broughtFigures({ before: 0.721, after: 0.724 }, 0.7)).toBeUndefined();
    expect(broughtFigures({ before: 0.6895, after: 0.69957 }, 0.7)).toEqual({
      before: '0.689',
      after: '0.699',
      there: false,
    });
  });
  test('at the aim is not pushed below it by the order of an addition', () => {
    const standing = 0.7 - 1e-12;
    expect([isAtAim(standing, 0.7), standingText(standing, 0.7)]).toEqual([true, '0.70']);
  });
});

describe('figures that add up', () => {
  test('do so where plain rounding would not', () => {
    expect(addingUp([1 / 3, 1 / 3, 1 / 3], 1)).toEqual(['0.334', '0.333', '0.333']);
  });
  test('do so where the total is a hair less than it seems', () => {
    const [one, other] = addingUp([0.090322, 0.083178], 0.090322 + 0.083178);
    expect([one, other, (0.090322 + 0.083178).toFixed(3)]).toEqual(['0.090', '0.083', '0.173']);
  });
  test('do so for any amounts, each within a thousandth of what it is, and none out of nothing', () => {
    // Millionths rather than doubles: those would be near nothing, most of them.
    const amount = fc.integer({ min: 0, max: 200_000 }).map((millionths) => millionths / 1e6);
    const amounts = fc.array(amount, { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(amounts, (some) => {
        const total = some.reduce((sum, one) => sum + one, 0);
        const shown = addingUp(some, total);
        const sum = shown.reduce((all, one) => all + Math.round(Number(one) * 1000), 0);
        expect(sum).toBe(Math.round(Number(total.toFixed(3)) * 1000));
        shown.forEach((one, i) => {
          expect(Math.abs(Number(one) - (some[i] as number))).toBeLessThan(0.0010001);
          if (some[i] === 0) expect(one).toBe('0.000');
        });
      }),
    );
  });
});
