/** What is printed around words and pictures: rules, frames and the cycle's own colours. */
import type { Drawing } from '../../render/drawing.ts';
import type { Column } from '../column.ts';
import type { Box, Patch, Tone } from '../sheet.ts';

/** Pixels of a rule that is seen on a phone, and of one that is only felt. */
const RULE = 3;
const HAIR = 2;

export const rule = (x: number, y: number, width: number, fill: Tone = 'hair', height = HAIR): Patch => ({
  x,
  y,
  width,
  height,
  fill,
});

/** A hairline frame, `out` pixels around a box. */
export const frame = ({ x, y, width, height }: Box, out: number): readonly Patch[] => {
  const [left, top, w, h] = [x - out, y - out, width + 2 * out, height + 2 * out];
  return [
    rule(left, top, w, 'soft'),
    rule(left, top + h - HAIR, w, 'soft'),
    { x: left, y: top, width: HAIR, height: h, fill: 'soft' },
    { x: left + w - HAIR, y: top, width: HAIR, height: h, fill: 'soft' },
  ];
};

/** The palette side by side: the first colour widest, each after it narrower, as a seed packet's edge is printed. */
export const paletteBand = (palette: Drawing['palette'], { x, y, width, height }: Box): readonly Patch[] => {
  const shares = palette.map((_, n) => 0.62 ** n);
  const whole = shares.reduce((sum, share) => sum + share, 0);
  let at = 0;
  return palette.map((colour, n) => {
    const from = Math.round((at / whole) * width);
    at += shares[n] ?? 0;
    const to = Math.round((at / whole) * width);
    return { x: x + from, y, width: to - from, height, fill: { colour } };
  });
};

/** The same, one under the other. */
export const paletteSteps = (palette: Drawing['palette'], { x, y, width, height }: Box): readonly Patch[] => {
  const shares = palette.map((_, n) => 0.62 ** n);
  const whole = shares.reduce((sum, share) => sum + share, 0);
  let at = 0;
  return palette.map((colour, n) => {
    const from = Math.round((at / whole) * height);
    at += shares[n] ?? 0;
    const to = Math.round((at / whole) * height);
    return { x, y: y + from, width, height: to - from, fill: { colour } };
  });
};

/** The rule that cautions stand behind, on the side where their lines begin. */
export const cautionRules = (column: Column, x: number, y: number, width: number): readonly Patch[] =>
  column.entries.flatMap(({ cautions }) =>
    cautions
      ? [
          {
            x: cautions.isRight ? x + width - RULE * 2 : x,
            y: y + cautions.top - 4,
            width: RULE * 2,
            height: cautions.bottom - cautions.top + 8,
            fill: 'accent' as const,
          },
        ]
      : [],
  );

/** A hairline between two entries, in the middle of the gap. */
export const entryRules = (
  column: Column,
  x: number,
  y: number,
  width: number,
  gap: number,
): readonly Patch[] =>
  column.entries.slice(1).map(({ top }) => rule(x, Math.round(y + top - gap / 2), width, 'soft'));
