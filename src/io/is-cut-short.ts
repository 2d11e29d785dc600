/** Formats that say how long they are: whether bytes are missing, which their decoders do not tell from damage. */

/** RFC 9649 section 2.4 (WebP): the size at byte 4 leaves out the first eight bytes. */
const riffLength = (bytes: Buffer): number => bytes.readUInt32LE(4) + 8;

/** ISO/IEC 14496-12 section 4.2 (AVIF, HEIC): boxes one after another, each begins with its size. */
const boxesLength = (bytes: Buffer): number => {
  let end = 0;
  while (end + 8 <= bytes.length) {
    const size = bytes.readUInt32BE(end);
    // 0 is a box that reaches to the end, 1 one whose size follows in eight bytes; both are legal and rare.
    if (size < 8) return bytes.length;
    end += size;
  }
  return end;
};

/** Whether a WebP, AVIF or HEIC file has fewer bytes than it says; false for every other format. */
export const isCutShort = (file: Uint8Array): boolean => {
  const bytes = Buffer.from(file.buffer, file.byteOffset, file.length);
  if (bytes.length < 12) return false;
  if (bytes.toString('latin1', 0, 4) === 'RIFF') return riffLength(bytes) > bytes.length;
  if (bytes.toString('latin1', 4, 8) === 'ftyp') return boxesLength(bytes) > bytes.length;
  return false;
};
