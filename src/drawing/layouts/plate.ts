/** The layout `plate`: paper, an entry of a printed list above, the picture mounted below within a hairline. */
import type { Drawing } from '../../render/drawing.ts';
import { blocksAt, type Column, columnFor, type Setting } from '../column.ts';
import type { Box, Patch, PictureWindow, Sheet } from '../sheet.ts';
import { leastHeight, tallestOf, windowFor } from '../windows.ts';
import { cautionRules, entryRules, frame, paletteBand, paletteSteps, rule } from './ornaments.ts';
import { alone, plateStyle, shared } from './styles.ts';

const MARGIN = 72;
/** Between words and picture, between two pictures, and between two entries. */
const GAP = 56;
const BETWEEN_PICTURES = 36;
const ENTRY_GAP = 72;
/** Frame and picture. */
const MOUNT = 12;

/** Share of the height that words leave to pictures while they can. */
const PICTURE_SHARE: Readonly<Record<Drawing['shape'], number>> = {
  card: 0.36,
  pin: 0.4,
  square: 0.5,
  share: 0,
};

const picturesOf = (drawing: Drawing): readonly number[] =>
  drawing.entries.flatMap(({ picture }) => (picture === undefined ? [] : [picture]));

const widthOfEach = (count: number, width: number): number =>
  Math.floor((width - BETWEEN_PICTURES * (count - 1)) / count);

/** Pictures side by side in a room; those that are too small for it stand in its middle. */
const windowsIn = (drawing: Drawing, pictures: readonly number[], room: Box): readonly PictureWindow[] => {
  const width = widthOfEach(pictures.length, room.width);
  return pictures.flatMap((picture, n) => {
    const source = drawing.pictures[picture];
    const size = source && windowFor(source, { width, height: room.height }, drawing.mostEnlarged);
    if (!size) return [];
    const left = room.x + n * (width + BETWEEN_PICTURES);
    return [
      {
        picture,
        ...size,
        x: left + Math.floor((width - size.width) / 2),
        y: room.y + Math.floor((room.height - size.height) / 2),
      },
    ];
  });
};

/** From the head's band to the words. */
const HEAD = 70;
/** Where words begin: under the head, which may stand where an app lays its controls. */
const topOf = ({ safe }: Drawing): number => Math.max(safe.top, MARGIN + HEAD - 12);

/** The head of a sheet: the cycle's colours, and a rule that goes on from them. */
const headOf = (drawing: Drawing, width: number): readonly Patch[] => {
  const y = topOf(drawing) - HEAD;
  const band = Math.round(width * 0.3);
  return [
    ...paletteBand(drawing.palette, { x: MARGIN, y, width: band, height: 18 }),
    rule(MARGIN + band, y + 16, width - band, 'soft'),
  ];
};

const sheetOf = (
  drawing: Drawing,
  column: Column,
  top: number,
  more: Pick<Sheet, 'windows' | 'patches'>,
): Sheet => {
  const width = drawing.width - 2 * MARGIN;
  return {
    width: drawing.width,
    height: drawing.height,
    windows: more.windows,
    patches: [
      ...more.patches,
      ...entryRules(column, MARGIN, top, width, ENTRY_GAP),
      ...cautionRules(column, MARGIN, top, width),
    ],
    blocks: blocksAt(column, MARGIN, top, width),
    ground: 'paper',
    fits: column.fits,
  };
};

/** Words alone: large, with the cycle's colours as the picture. */
const typeAlone = (drawing: Drawing, set: Setting): Sheet => {
  const width = drawing.width - 2 * MARGIN;
  const top = topOf(drawing);
  const room = drawing.height - drawing.safe.bottom - top;
  const style = drawing.entries.length > 1 ? plateStyle : alone(plateStyle);
  const column = columnFor(drawing, style, { width, wanted: room, most: room, gap: ENTRY_GAP }, set);
  const from = Math.round(top + column.height + GAP * 1.5);
  const left = drawing.height - from;
  const steps =
    left > 80 ? paletteSteps(drawing.palette, { x: 0, y: from, width: drawing.width, height: left }) : [];
  return sheetOf(drawing, column, top, { windows: [], patches: [...headOf(drawing, width), ...steps] });
};

/** Words above, pictures below; words alone where no picture can stand. */
export const plateSheet = (drawing: Drawing, set: Setting): Sheet => {
  const pictures = picturesOf(drawing);
  const width = drawing.width - 2 * MARGIN;
  const top = topOf(drawing);
  const foot = drawing.height - MARGIN - MOUNT;
  const lowest = drawing.height - drawing.safe.bottom;
  if (pictures.length === 0) return typeAlone(drawing, set);
  const sources = pictures.flatMap((picture) => drawing.pictures[picture] ?? []);
  const tallest = tallestOf(sources, widthOfEach(pictures.length, width - 2 * MOUNT));
  const wanted = Math.min(Math.round(drawing.height * PICTURE_SHARE[drawing.shape]), tallest);
  const roomBeside = (picture: number): number => Math.min(lowest, foot - picture - GAP) - top;
  const style = drawing.entries.length > 1 ? shared(plateStyle) : plateStyle;
  const column = columnFor(
    drawing,
    style,
    { width, wanted: roomBeside(wanted), most: roomBeside(0), gap: ENTRY_GAP },
    set,
  );
  const from = Math.max(Math.round(top + column.height + GAP + MOUNT), foot - tallest);
  const windows = windowsIn(drawing, pictures, {
    x: MARGIN + MOUNT,
    y: from,
    width: width - 2 * MOUNT,
    height: foot - from,
  });
  if (windows.length === 0 || foot - from < leastHeight(pictures.length) || top + column.height > lowest)
    return typeAlone(drawing, set);
  return sheetOf(drawing, column, top, {
    windows,
    patches: [...headOf(drawing, width), ...windows.flatMap((window) => frame(window, MOUNT))],
  });
};
