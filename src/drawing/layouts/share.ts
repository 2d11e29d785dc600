/** The picture of a link preview: the article's name on paper, its picture beside it. */
import type { Drawing } from '../../render/drawing.ts';
import { blocksAt, columnFor, type Setting } from '../column.ts';
import type { Sheet } from '../sheet.ts';
import { windowFor } from '../windows.ts';
import { paletteBand } from './ornaments.ts';
import { shareStyle } from './styles.ts';

const MARGIN = 56;
/** Share of the width that is the picture's. */
const PICTURE = 0.5;
const BAND = 14;

/** Words on the left, the picture from the middle to the right edge; words alone where it is too small for that. */
export const shareSheet = (drawing: Drawing, set: Setting): Sheet => {
  const room = { width: Math.round(drawing.width * PICTURE), height: drawing.height };
  const [source] = drawing.pictures;
  const size = source && windowFor(source, room, drawing.mostEnlarged);
  const filled = size && size.width === room.width && size.height === room.height ? size : undefined;
  const width = drawing.width - (filled?.width ?? 0) - 2 * MARGIN;
  const tall = drawing.height - drawing.safe.top - drawing.safe.bottom - BAND;
  const column = columnFor(drawing, shareStyle, { width, wanted: tall, most: tall, gap: 0 }, set);
  const y = drawing.safe.top + Math.max(0, (tall - column.height) / 2);
  return {
    width: drawing.width,
    height: drawing.height,
    windows: filled ? [{ picture: 0, x: drawing.width - filled.width, y: 0, ...filled }] : [],
    patches: paletteBand(drawing.palette, {
      x: 0,
      y: drawing.height - BAND,
      width: drawing.width - (filled?.width ?? 0),
      height: BAND,
    }),
    blocks: blocksAt(column, MARGIN, y, width),
    ground: 'paper',
    fits: column.fits,
  };
};
