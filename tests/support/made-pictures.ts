/** Picture files put together by hand: what no camera writes, and what somebody might who wishes harm. */
import { deflateSync } from 'node:zlib';
import sharp from 'sharp';

const u16 = (value: number): Buffer => Buffer.from([(value >> 8) & 255, value & 255]);
const u32 = (value: number): Buffer => {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(value);
  return bytes;
};
const latin = (text: string): Buffer => Buffer.from(text, 'latin1');

/** CRC of PNG, third edition, annex D. */
const CRC = Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});
const crcOf = (bytes: Buffer): number => {
  let c = 0xffffffff;
  for (const byte of bytes) c = (CRC[(c ^ byte) & 255] as number) ^ (c >>> 8);
  return ~c >>> 0;
};

export const pngChunk = (name: string, data: Buffer = Buffer.alloc(0)): Buffer => {
  const named = Buffer.concat([latin(name), data]);
  return Buffer.concat([u32(data.length), named, u32(crcOf(named))]);
};

/** A PNG of black pixels, with `before` between its head and its picture. */
export const png = (
  width: number,
  height: number,
  { before = [], data }: { readonly before?: readonly Buffer[]; readonly data?: Buffer } = {},
): Buffer =>
  Buffer.concat([
    latin('\x89PNG\r\n\x1a\n'),
    pngChunk('IHDR', Buffer.concat([u32(width), u32(height), Buffer.from([8, 2, 0, 0, 0])])),
    ...before,
    pngChunk('IDAT', data ?? deflateSync(Buffer.alloc(height * (1 + width * 3)))),
    pngChunk('IEND'),
  ]);

/** `acTL` of PNG, third edition, section 11.3.6.2. */
export const animation = (frames: number): Buffer => pngChunk('acTL', Buffer.concat([u32(frames), u32(0)]));

/** A text or a profile that is `size` zeros when it is unpacked. */
export const packedChunk = (name: 'zTXt' | 'iCCP', size: number): Buffer =>
  pngChunk(name, Buffer.concat([latin('x\0\0'), deflateSync(Buffer.alloc(size))]));

/** A GIF of a canvas and so many frames of one pixel. */
export const gif = (width: number, height: number, frames: number): Buffer => {
  const little = (value: number): Buffer => u16(value).swap16();
  const frame = Buffer.concat([
    Buffer.from([0x21, 0xf9, 4, 0, 10, 0, 0, 0]),
    Buffer.from([0x2c]),
    ...[0, 0, 1, 1].map(little),
    Buffer.from([0, 2, 2, 0x44, 1, 0]),
  ]);
  const head = [
    latin('GIF89a'),
    little(width),
    little(height),
    Buffer.from([0x80, 0, 0, 0, 0, 0, 255, 255, 255]),
  ];
  return Buffer.concat([...head, ...Array.from({ length: frames }, () => frame), latin(';')]);
};

/** A TIFF of one grey pixel with so many directories, each a kind by NewSubfileType; `loop` leads the last to the first. */
export const tiff = (kinds: readonly number[], loop = false): Buffer => {
  const tags = (kind: number): readonly (readonly [number, number])[] => [
    ...([
      [254, kind],
      [256, 1],
      [257, 1],
      [258, 8],
      [259, 1],
      [262, 1],
      [273, 8],
    ] as const),
    ...([
      [277, 1],
      [278, 1],
      [279, 1],
    ] as const),
  ];
  const size = 2 + tags(0).length * 12 + 4;
  const file = Buffer.alloc(12 + kinds.length * size);
  file.write('II*\0', 0, 'latin1');
  file.writeUInt32LE(12, 4);
  kinds.forEach((kind, i) => {
    const at = 12 + i * size;
    file.writeUInt16LE(tags(kind).length, at);
    tags(kind).forEach(([tag, value], n) => {
      file.writeUInt16LE(tag, at + 2 + n * 12);
      file.writeUInt16LE(4, at + 4 + n * 12);
      file.writeUInt32LE(1, at + 6 + n * 12);
      file.writeUInt32LE(value, at + 10 + n * 12);
    });
    const next = i + 1 < kinds.length ? at + size : loop ? 12 : 0;
    file.writeUInt32LE(next, at + size - 4);
  });
  return file;
};

/** A JPEG that says it has other measures than it has. */
export const jpegSaying = async (width: number, height: number): Promise<Buffer> => {
  const whole = await sharp({ create: { width: 64, height: 64, channels: 3, background: '#345' } })
    .jpeg()
    .toBuffer();
  const frame = whole.indexOf(Buffer.from([0xff, 0xc0]));
  whole.writeUInt16BE(height, frame + 5);
  whole.writeUInt16BE(width, frame + 7);
  return whole;
};

/** A progressive JPEG whose last scan comes `times` more often. */
export const jpegOfScans = async (times: number): Promise<Buffer> => {
  const whole = await sharp({ create: { width: 2000, height: 2000, channels: 3, background: '#345' } })
    .jpeg({ progressive: true })
    .toBuffer();
  const scan = whole.subarray(whole.lastIndexOf(Buffer.from([0xff, 0xda])), -2);
  return Buffer.concat([
    whole.subarray(0, -2),
    ...Array.from({ length: times }, () => scan),
    whole.subarray(-2),
  ]);
};

const box = (name: string, ...parts: readonly Buffer[]): Buffer => {
  const content = Buffer.concat(parts);
  return Buffer.concat([u32(8 + content.length), latin(name), content]);
};
const fullBox = (name: string, version: number, ...parts: readonly Buffer[]): Buffer =>
  box(name, Buffer.from([version, 0, 0, 0]), ...parts);

/** What stands in a box of this name within a file, its head with it. */
const boxOf = (file: Buffer, name: string): Buffer => {
  const at = file.indexOf(name, 0, 'latin1') - 4;
  return file.subarray(at, at + file.readUInt32BE(at));
};

/** An AVIF whose one part, of `side` × `side` pixels, is named `copies` times by a grid (ISO/IEC 23008-12, 6.6.2.3) of 64 × 64. */
export const avifGrid = async (side: number, copies: number): Promise<Buffer> => {
  const whole = await sharp({ create: { width: side, height: side, channels: 3, background: '#357' } })
    .avif({ effort: 0 })
    .toBuffer();
  const part = boxOf(whole, 'mdat').subarray(8);
  const grid = Buffer.concat([Buffer.from([0, 0, 0, copies - 1]), u16(64), u16(64)]);
  const items = [part, grid];
  const metaAt = (first: number): Buffer => {
    const places = items.map((item, i) =>
      Buffer.concat([u16(i + 1), u16(0), u16(1), u32(first + (i === 0 ? 0 : part.length)), u32(item.length)]),
    );
    const entry = (id: number, kind: string): Buffer =>
      fullBox('infe', 2, u16(id), u16(0), latin(`${kind}\0`));
    const properties = ['av1C', 'ispe', 'pixi'].map((name) => boxOf(whole, name));
    return fullBox(
      'meta',
      0,
      fullBox('hdlr', 0, u32(0), latin('pict'), Buffer.alloc(13)),
      fullBox('pitm', 0, u16(2)),
      fullBox('iloc', 0, Buffer.from([0x44, 0]), u16(2), ...places),
      fullBox('iinf', 0, u16(2), entry(1, 'av01'), entry(2, 'grid')),
      fullBox('iref', 0, box('dimg', u16(2), u16(copies), ...Array.from({ length: copies }, () => u16(1)))),
      box(
        'iprp',
        box('ipco', ...properties, fullBox('ispe', 0, u32(64), u32(64))),
        fullBox('ipma', 0, u32(2), u16(1), Buffer.from([3, 1, 2, 3]), u16(2), Buffer.from([1, 4])),
      ),
    );
  };
  const head = Buffer.concat([
    boxOf(whole, 'ftyp'),
    metaAt(0),
    u32(8 + part.length + grid.length),
    latin('mdat'),
  ]);
  return Buffer.concat([boxOf(whole, 'ftyp'), metaAt(head.length), head.subarray(-8), part, grid]);
};
