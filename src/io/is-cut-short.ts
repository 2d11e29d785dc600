/** Formats that say how long they are: whether bytes are missing, which their decoders do not tell from damage. */
import { boxesIn } from './media-boxes.ts';

/** RFC 9649 section 2.4 (WebP): the size at byte 4 leaves out the first eight bytes. */
const riffLength = (bytes: Buffer): number => bytes.readUInt32LE(4) + 8;

/** Where the last of its boxes ends (AVIF, HEIC). */
const boxesLength = (bytes: Buffer): number => {
  let length = 0;
  for (const { end } of boxesIn(bytes, 0, bytes.length)) length = end;
  return length;
};

/** Whether a WebP, AVIF or HEIC file has fewer bytes than it says; false for every other format. */
export const isCutShort = (file: Uint8Array): boolean => {
  const bytes = Buffer.from(file.buffer, file.byteOffset, file.length);
  if (bytes.length < 12) return false;
  if (bytes.toString('latin1', 0, 4) === 'RIFF') return riffLength(bytes) > bytes.length;
  if (bytes.toString('latin1', 4, 8) === 'ftyp') return boxesLength(bytes) > bytes.length;
  return false;
};
