import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contrast, pairs, schemeStyle, schemesOf } from '../../src/render/colours.ts';

const hex = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, '0')}`);

describe('contrast', () => {
  // WCAG 2.2, definition of contrast ratio, on white; worked values, not rounded up.
  test.each([
    ['#777777', 4.478],
    ['#767676', 4.542],
    ['#949494', 3.033],
    ['#595959', 7.005],
    ['#ff0000', 3.998],
    ['#0000ff', 8.592],
    ['#000000', 21],
  ])('of %s on white is %d to 1', (colour, ratio) => {
    expect(contrast(colour, '#ffffff')).toBeCloseTo(ratio, 3);
  });
});

describe('a palette', () => {
  const report = (palette: readonly string[]): string =>
    Object.entries(schemesOf(palette))
      .flatMap(([mode, scheme]) =>
        pairs.map(
          ({ text, ground, least }) =>
            `${mode.padEnd(6)}${text} ${scheme[text]} on ${ground} ${scheme[ground]} ${contrast(scheme[text], scheme[ground]).toFixed(2)} (least ${least})`,
        ),
      )
      .join('\n');

  test('of the demo is moved just as far as it must be', () => {
    expect(report(['#8a9a7b', '#b87333', '#d9c27a'])).toMatchSnapshot();
  });

  test('of any colours gives pairs that all reach WCAG 2.2 AA, light and dark', () => {
    fc.assert(
      fc.property(fc.array(hex, { minLength: 1, maxLength: 5 }), (palette) => {
        for (const scheme of Object.values(schemesOf(palette)))
          for (const { text, ground, least } of pairs)
            expect(contrast(scheme[text], scheme[ground])).toBeGreaterThanOrEqual(least);
      }),
    );
  });
});

test('every colour of a palette is on the page as it was chosen', () => {
  fc.assert(
    fc.property(fc.array(hex, { minLength: 1, maxLength: 5 }), (palette) => {
      const band = /--band:([^;}]+)/.exec(schemeStyle(palette))?.[1] ?? '';
      expect(band.match(/#[0-9a-f]{6}/g)).toEqual(palette);
    }),
  );
});
