/** One drawing → its JPEG: the layout says where everything stands, and the pixels are put together here. */
import sharp from 'sharp';
import { openFaces } from '../drawing/type/faces.ts';
import type { Drawing } from '../render/drawing.ts';
import type { PictureGround } from './ensure-pictures.ts';
import { readFaces } from './read-faces.ts';

/** Opens the faces once, and gives the function that draws. */
export const openDrawingTable = async ({
  assets,
}: PictureGround): Promise<(drawing: Drawing) => Promise<Uint8Array>> => {
  await openFaces(assets, readFaces());
  return ({ width, height }) =>
    sharp({ create: { width, height, channels: 3, background: '#ffffff' } })
      .jpeg()
      .toBuffer();
};
