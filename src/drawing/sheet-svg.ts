/** A sheet as SVG 1.1 with no text element in it: rules, grounds and letters as shapes, so that no installed font is asked. */
import { meltedAt } from './contrast.ts';
import { type Box, inkBoxes, type Melt, type Sheet, type Tones } from './sheet.ts';

/** A part of a sheet as SVG, in whole pixels from the sheet's left top corner. */
export interface SvgPart {
  readonly svg: string;
  readonly left: number;
  readonly top: number;
}

const svg = ({ x, y, width, height }: Box, inside: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="${x} ${y} ${width} ${height}">${inside}</svg>`;

const wholeOf = ({ width, height }: Pick<Sheet, 'width' | 'height'>): Box => ({ x: 0, y: 0, width, height });

/** Pixels around shapes that their smooth edges may reach. */
const EDGE = 1;

/** What of the sheet some boxes take, because pixels cost time, empty ones too; undefined where they take nothing. */
const partAround = (sheet: Sheet, boxes: readonly Box[]): Box | undefined => {
  const filled = boxes.filter(({ width, height }) => width > 0 && height > 0);
  const x = Math.max(0, Math.floor(Math.min(...filled.map((box) => box.x))) - EDGE);
  const y = Math.max(0, Math.floor(Math.min(...filled.map((box) => box.y))) - EDGE);
  const right = Math.ceil(Math.max(...filled.map((box) => box.x + box.width))) + EDGE;
  const bottom = Math.ceil(Math.max(...filled.map((box) => box.y + box.height))) + EDGE;
  const width = Math.min(sheet.width, right) - x;
  const height = Math.min(sheet.height, bottom) - y;
  return filled.length > 0 && width > 0 && height > 0 ? { x, y, width, height } : undefined;
};

const partOf = (sheet: Sheet, boxes: readonly Box[], inside: string): SvgPart | undefined => {
  const part = partAround(sheet, boxes);
  return part && { svg: svg(part, inside), left: part.x, top: part.y };
};

/** To a hundredth of a pixel. */
const short = (value: number): string => String(Number(value.toFixed(2)));

const patchShapes = (sheet: Sheet, tones: Tones): string =>
  sheet.patches
    .map(({ x, y, width, height, fill }) => {
      const colour = typeof fill === 'string' ? tones[fill] : fill.colour;
      return `<rect x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}" fill="${colour}"/>`;
    })
    .join('');

const wordShapes = (sheet: Sheet, tones: Tones): string =>
  sheet.blocks
    .flatMap(({ type, origins, tone }) =>
      type.lines.map(({ d }, n) => {
        const { x, y } = origins[n] ?? { x: 0, y: 0 };
        return `<path transform="translate(${short(x)} ${short(y)})" fill="${tones[tone]}" d="${d}"/>`;
      }),
    )
    .join('');

/** Rules, frames and grounds. */
export const patchesSvg = (sheet: Sheet, tones: Tones): SvgPart | undefined =>
  partOf(sheet, sheet.patches, patchShapes(sheet, tones));

/** The letters. */
export const wordsSvg = (sheet: Sheet, tones: Tones): SvgPart | undefined =>
  partOf(sheet, sheet.blocks.flatMap(inkBoxes), wordShapes(sheet, tones));

/** A sheet without pictures as a whole, its ground too. */
export const sheetSvg = (sheet: Sheet, tones: Tones, withWords: boolean): string =>
  svg(
    wholeOf(sheet),
    `<rect width="${sheet.width}" height="${sheet.height}" fill="${tones.ground}"/>${patchShapes(sheet, tones)}${withWords ? wordShapes(sheet, tones) : ''}`,
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
    wholeOf(sheet),
    `<defs><linearGradient id="m" x1="0" y1="0" x2="0" y2="1">${stops}</linearGradient></defs><rect x="0" y="${begin}" width="${sheet.width}" height="${end - begin}" fill="url(#m)"/>`,
  );
};
