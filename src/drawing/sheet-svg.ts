/** A sheet as SVG 1.1 with no text element in it: rules, grounds and letters as shapes, so that no installed font is asked. */
import { meltedAt } from './contrast.ts';
import type { Melt, Sheet, Tones } from './sheet.ts';

const svg = ({ width, height }: Pick<Sheet, 'width' | 'height'>, inside: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${inside}</svg>`;

/** To a hundredth of a pixel. */
const short = (value: number): string => String(Number(value.toFixed(2)));

/** Rules, frames and grounds. */
export const patchesSvg = (sheet: Sheet, tones: Tones): string =>
  svg(
    sheet,
    sheet.patches
      .map(({ x, y, width, height, fill }) => {
        const colour = typeof fill === 'string' ? tones[fill] : fill.colour;
        return `<rect x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}" fill="${colour}"/>`;
      })
      .join(''),
  );

/** Steps of a melting: enough that none is seen. */
const STOPS = 48;

/** The melting by itself: the ground's colour, ever less transparent. */
export const meltSvg = (sheet: Sheet, melt: Melt, strength: number, ground: string): string => {
  const { begin, end } = melt;
  const stops = Array.from({ length: STOPS + 1 }, (_, n) => {
    const share = n / STOPS;
    const opacity = meltedAt(melt, strength, begin + share * (end - begin));
    return `<stop offset="${share.toFixed(4)}" stop-color="${ground}" stop-opacity="${opacity.toFixed(4)}"/>`;
  }).join('');
  return svg(
    sheet,
    `<defs><linearGradient id="m" x1="0" y1="0" x2="0" y2="1">${stops}</linearGradient></defs><rect x="0" y="${begin}" width="${sheet.width}" height="${end - begin}" fill="url(#m)"/>`,
  );
};

/** The letters. */
export const wordsSvg = (sheet: Sheet, tones: Tones): string =>
  svg(
    sheet,
    sheet.blocks
      .flatMap(({ type, origins, tone }) =>
        type.lines.map(({ d }, n) => {
          const { x, y } = origins[n] ?? { x: 0, y: 0 };
          return `<path transform="translate(${short(x)} ${short(y)})" fill="${tones[tone]}" d="${d}"/>`;
        }),
      )
      .join(''),
  );
