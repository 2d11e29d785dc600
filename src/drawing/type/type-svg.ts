/** Set type as SVG. */
import type { SetType } from './set-type.ts';

export interface TypePlace {
  /** Pixels: the edge or the middle that the lines keep to, and the first line's baseline. */
  readonly x: number;
  readonly y: number;
  /** Where lines begin: at the left edge, or at the right one for what is written from right to left. */
  readonly align: 'start' | 'middle' | 'end';
  /** A colour as SVG has it. */
  readonly fill: string;
}

const written = (value: number): string => String(Math.round(value * 100) / 100);

/** Pixels from `x` to a line's left end. */
export const lineStart = (
  { width, rightToLeft }: SetType['lines'][number],
  align: TypePlace['align'],
): number => {
  if (align === 'middle') return -width / 2;
  return (align === 'end') === rightToLeft ? 0 : -width;
};

/** The lines as SVG paths, one a line, at a place. */
export const typeSvg = ({ lines, leading }: SetType, { x, y, align, fill }: TypePlace): string =>
  lines
    .map((line, i) => {
      const [left, baseline] = [x + lineStart(line, align), y + i * leading];
      return `<path fill="${fill}" transform="translate(${written(left)} ${written(baseline)})" d="${line.d}"/>`;
    })
    .join('');
