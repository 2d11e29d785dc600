/** Boxes of a file of ISO/IEC 14496-12 (AVIF, HEIC, films): one after another and in one another, each begins with its size. */

/** What a box holds, behind its size and name, lies at `start` up to `end` of the bytes. */
export interface MediaBox {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

/** Section 4.2: a size of 1 is followed by the true one in eight bytes, one of 0 reaches to the end. */
const boxAt = (bytes: Buffer, at: number, end: number): MediaBox | undefined => {
  if (at + 8 > end) return undefined;
  const said = bytes.readUInt32BE(at);
  const isLong = said === 1 && at + 16 <= end;
  const size = isLong ? Number(bytes.readBigUInt64BE(at + 8)) : said === 0 ? end - at : said;
  const start = at + (isLong ? 16 : 8);
  if (at + size < start) return undefined;
  return { name: bytes.toString('latin1', at + 4, at + 8), start, end: at + size };
};

/** The boxes between two places, up to one that cannot be one; the last may say that it reaches beyond. */
export function* boxesIn(bytes: Buffer, from: number, end: number): Generator<MediaBox> {
  for (let at = from; ; ) {
    const box = boxAt(bytes, at, end);
    if (!box) return;
    yield box;
    at = box.end;
  }
}

/** The first box of a name between two places, where it is whole. */
export const boxNamed = (bytes: Buffer, name: string, from: number, end: number): MediaBox | undefined => {
  for (const box of boxesIn(bytes, from, end)) if (box.name === name && box.end <= end) return box;
  return undefined;
};

/** The brands of a file that begins with the box `ftyp`, the major one first (section 4.3); none for any other file. */
export const brandsOf = (bytes: Buffer): readonly string[] => {
  const box = boxAt(bytes, 0, bytes.length);
  if (box?.name !== 'ftyp') return [];
  const brands: string[] = [];
  for (let at = box.start; at + 4 <= Math.min(box.end, bytes.length); at += 4)
    // The second four bytes are the major brand's version.
    if (at !== box.start + 4) brands.push(bytes.toString('latin1', at, at + 4));
  return brands;
};
