import { expect, test } from 'vitest';
import { htmlSource } from '../../src/render/html.ts';
import { stepCurve } from '../../src/render/step-curve.ts';

/** The drawing is 20 days wide. */
const markedAt = (day: number): string =>
  htmlSource(
    stepCurve({
      label: 'Arrived',
      steps: [{ day: 2, height: 0.5 }],
      end: 19,
      wanted: { height: 0.9, label: 'wanted' },
      mark: { day, label: 'reveal' },
      foot: 'days',
    }),
  );

test.each([
  [3, false],
  [12, false],
  [12.5, true],
  [18, true],
])('the words of a mark on day %d of 20 stand before its line: %s', (day, before) => {
  const source = markedAt(day);
  const line = Number(/class="mark" d="M([\d.]+)/.exec(source)?.[1]);
  const words = /class="says( before)?" x="([\d.]+)" y="[\d.]+">reveal/.exec(source);
  expect(words?.[1] === ' before').toBe(before);
  expect(Number(words?.[2]) < line).toBe(before);
});
