/** The map of attention of a photo's pixels: once a photo, whatever is cropped from it. */
import type { Sharp } from 'sharp';
import { ATTENTION_SIDE, type Attention, attentionOf } from './attention.ts';

/** Where the things of this image are; its own size does not matter. Rejects where the pixels cannot be decoded. */
export const attentionIn = async (image: Sharp): Promise<Attention> => {
  const { data, info } = await image
    .resize(ATTENTION_SIDE, ATTENTION_SIDE, { fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  return attentionOf({ data, width: info.width, height: info.height, channels: info.channels });
};
