/** A photo of any kind as a small JPEG that every browser shows. */
import { openPhoto } from './open-photo.ts';

/** Its longer side is at most `most` pixels; undefined for what is no picture. No metadata is in it. */
export const previewPhoto = async (bytes: Uint8Array, most: number): Promise<Uint8Array | undefined> => {
  const opened = await openPhoto(bytes);
  if ('problem' in opened) return undefined;
  try {
    return await opened.photo
      .resize(most, most, { fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .jpeg({ quality: 78 })
      .toBuffer();
  } catch {
    return undefined;
  }
};
