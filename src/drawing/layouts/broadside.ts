/** The layout `broadside`: the picture from edge to edge, melting into a ground of its own colour, large words at its foot. */
import type { Drawing } from '../../render/drawing.ts';
import { blocksAt, columnFor, type Setting } from '../column.ts';
import type { Patch, PictureWindow, Sheet } from '../sheet.ts';
import { leastHeight, tallestOf, windowFor } from '../windows.ts';
import { cautionRules, entryRules, paletteBand } from './ornaments.ts';
import { alone, broadsideStyle, shared } from './styles.ts';

const MARGIN = 80;
const GAP = 60;
const BETWEEN_PICTURES = 8;
const ENTRY_GAP = 64;
/** Pixels over which a picture begins to melt above the words. */
const MELT_ABOVE = 220;
/** Share of the height that words leave to pictures while they can. */
const PICTURE_SHARE: Readonly<Record<Drawing['shape'], number>> = {
  card: 0.42,
  pin: 0.46,
  square: 0.56,
  share: 0,
};
/** Of a picture's height, the part that words may stand on. */
const MOST_COVERED = 0.3;

/** Whether words may stand on the picture's foot, or keep beside it. */
export type Standing = 'on the picture' | 'beside it';

/** The palette along the foot, where apps have their controls. */
const footBand = (drawing: Drawing): readonly Patch[] =>
  paletteBand(drawing.palette, { x: 0, y: drawing.height - 28, width: drawing.width, height: 28 });

const picturesOf = (drawing: Drawing): readonly number[] =>
  drawing.entries.flatMap(({ picture }) => (picture === undefined ? [] : [picture]));

/** Pictures along the head, from edge to edge; undefined where one of them cannot fill its part. */
const windowsAtHead = (
  drawing: Drawing,
  pictures: readonly number[],
  height: number,
): readonly PictureWindow[] | undefined => {
  const width = (drawing.width - BETWEEN_PICTURES * (pictures.length - 1)) / pictures.length;
  const windows = pictures.flatMap((picture, n) => {
    const source = drawing.pictures[picture];
    const size = source && windowFor(source, { width: Math.ceil(width), height }, drawing.mostEnlarged);
    const x = Math.round(n * (width + BETWEEN_PICTURES));
    return size && size.width >= Math.ceil(width) && size.height >= Math.min(height, width * 0.4)
      ? [{ picture, x, y: 0, width: Math.ceil(width), height: size.height }]
      : [];
  });
  return windows.length === pictures.length ? windows : undefined;
};

const typeAlone = (drawing: Drawing, set: Setting): Sheet => {
  const width = drawing.width - 2 * MARGIN;
  const { top, bottom } = drawing.safe;
  const room = drawing.height - bottom - top;
  const style = drawing.entries.length > 1 ? broadsideStyle : alone(broadsideStyle);
  const column = columnFor(drawing, style, { width, wanted: room, most: room, gap: ENTRY_GAP }, set);
  // A third of what is left above the words, two below: the optical middle. Common practice, no source.
  const y = top + Math.max(0, (room - column.height) / 3);
  return {
    width: drawing.width,
    height: drawing.height,
    windows: [],
    patches: [
      ...footBand(drawing),
      ...entryRules(column, MARGIN, y, width, ENTRY_GAP),
      ...cautionRules(column, MARGIN, y, width),
    ],
    blocks: blocksAt(column, MARGIN, y, width),
    ground: 'accent',
    fits: column.fits,
  };
};

/** The picture at the head and the words at the foot, on both where `standing` allows it. */
export const broadsideSheet = (drawing: Drawing, set: Setting, standing: Standing): Sheet => {
  const pictures = picturesOf(drawing);
  if (pictures.length === 0) return typeAlone(drawing, set);
  const width = drawing.width - 2 * MARGIN;
  const lowest = drawing.height - drawing.safe.bottom;
  const sources = pictures.flatMap((picture) => drawing.pictures[picture] ?? []);
  const tallest = tallestOf(sources, drawing.width / pictures.length);
  const wanted = Math.min(Math.round(drawing.height * PICTURE_SHARE[drawing.shape]), tallest);
  const style = drawing.entries.length > 1 ? shared(broadsideStyle) : broadsideStyle;
  const roomBeside = (picture: number): number => lowest - Math.max(picture + GAP, drawing.safe.top);
  const column = columnFor(
    drawing,
    style,
    { width, wanted: roomBeside(wanted), most: roomBeside(0), gap: ENTRY_GAP },
    set,
  );
  const y = Math.max(lowest - column.height, drawing.safe.top);
  const beside = Math.min(Math.round(y - GAP), tallest);
  const [only] = pictures;
  const source = pictures.length === 1 && only !== undefined ? drawing.pictures[only] : undefined;
  const own = source ? (drawing.width * source.height) / source.width : 0;
  const melting = Math.round(Math.min(own, tallest, drawing.height, beside / (1 - MOST_COVERED)));
  const melts = standing === 'on the picture' && melting > beside;
  const height = melts ? melting : beside;
  const windows = windowsAtHead(drawing, pictures, height);
  if (!windows || beside < leastHeight(pictures.length)) return typeAlone(drawing, set);
  const end = Math.min(...windows.map((window) => window.height));
  const covers = melts && end > y;
  // A low picture, as a panorama is, leaves the words to follow it closely.
  const from = covers ? y : Math.min(y, Math.max(drawing.safe.top, end + GAP));
  return {
    width: drawing.width,
    height: drawing.height,
    windows,
    patches: [
      ...footBand(drawing),
      ...entryRules(column, MARGIN, from, width, ENTRY_GAP),
      ...cautionRules(column, MARGIN, from, width),
    ],
    blocks: blocksAt(column, MARGIN, from, width),
    ...(covers && { melt: { begin: Math.max(0, from - MELT_ABOVE), words: from, end } }),
    ground: 'picture',
    fits: column.fits,
  };
};
