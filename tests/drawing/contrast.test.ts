import { wcagContrast } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  contrastOf,
  meltedAt,
  meltStrength,
  mixed,
  type Rgb,
  rgbOf,
  tonesFor,
} from '../../src/drawing/contrast.ts';

const colour = fc.tuple(fc.nat(255), fc.nat(255), fc.nat(255));
const hexOf = (rgb: Rgb): string => `#${rgb.map((one) => one.toString(16).padStart(2, '0')).join('')}`;
const colours = {
  paper: '#f8f8f4',
  wash: '#eceee4',
  ink: '#1d211a',
  soft: '#666a60',
  accent: '#8a5a20',
  onAccent: '#ffffff',
  hair: '#cccccc',
};

describe('contrast', () => {
  // Values printed for WCAG 2.2's own formula.
  test.each([
    ['#777777', 4.478],
    ['#767676', 4.542],
    ['#949494', 3.033],
    ['#595959', 7.005],
    ['#ff0000', 3.998],
    ['#0000ff', 8.592],
  ])('of %s on white is %f', (hex, expected) => {
    expect(contrastOf(rgbOf(hex), [255, 255, 255])).toBeCloseTo(expected, 3);
  });

  test('is that of culori for any two colours', () => {
    fc.assert(
      fc.property(colour, colour, (a, b) => {
        expect(contrastOf(a, b)).toBeCloseTo(wcagContrast(hexOf(a), hexOf(b)), 6);
      }),
    );
  });
});

test('a ground taken from any picture carries words at 7 to 1, and rules at less', () => {
  fc.assert(
    fc.property(colour, (foot) => {
      const tones = tonesFor({ ground: 'picture' }, { colours }, foot);
      expect(contrastOf(rgbOf(tones.ink), rgbOf(tones.ground))).toBeGreaterThanOrEqual(6.9);
    }),
  );
});

describe('melting', () => {
  const melt = { begin: 100, words: 300, end: 500 };
  const tones = { ground: '#e8e0d0', ink: '#1d211a' };

  test('is nothing above, all at the end, and never less farther down', () => {
    expect(meltedAt(melt, 0.4, 50)).toBe(0);
    expect(meltedAt(melt, 0.4, 300)).toBeCloseTo(0.4);
    expect(meltedAt(melt, 0.4, 500)).toBe(1);
    for (let y = 100; y < 500; y += 10)
      expect(meltedAt(melt, 0.4, y + 10)).toBeGreaterThanOrEqual(meltedAt(melt, 0.4, y));
  });

  test('is none where the picture itself carries the words', () => {
    expect(meltStrength(melt, [{ colour: [230, 230, 220], y: 310 }], tones)).toBe(0);
  });

  test('is the least that carries them, and none is given where the picture would be hidden', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(colour, fc.integer({ min: 300, max: 480 })), { minLength: 1, maxLength: 20 }),
        (all) => {
          const pixels = all.map(([rgb, y]) => ({ colour: rgb, y }));
          const strength = meltStrength(melt, pixels, tones);
          const worst = (by: number): number =>
            Math.min(
              ...pixels.map(({ colour: rgb, y }) =>
                contrastOf(mixed(rgb, rgbOf(tones.ground), meltedAt(melt, by, y)), rgbOf(tones.ink)),
              ),
            );
          if (strength === undefined) expect(worst(0.6)).toBeLessThan(4.9);
          else {
            expect(worst(strength)).toBeGreaterThanOrEqual(4.5);
            if (strength > 0) expect(worst(strength - 0.04)).toBeLessThan(4.9);
          }
        },
      ),
    );
  });
});
