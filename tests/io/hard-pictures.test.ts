/** Files that bear a photo's name and were made to do harm, or came to it: each is a photo or a finding. */
import { readdirSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { deflateSync, gunzipSync } from 'node:zlib';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, it, test } from 'vitest';
import { decodeHeic } from '../../src/io/decode-heic.ts';
import { makePictures } from '../../src/io/make-picture.ts';
import { isPhotoFailure } from '../../src/io/photo-problem.ts';
import { previewPhoto } from '../../src/io/preview-photo.ts';
import { probe } from '../../src/io/probe.ts';
import {
  animation,
  avifGrid,
  gif,
  jpegOfScans,
  jpegSaying,
  packedChunk,
  png,
  pngChunk,
  tiff,
} from '../support/made-pictures.ts';
import { seeded } from '../support/seeded.ts';
import { shareOf } from '../support/share-of.ts';
import { describeWhen } from '../support/tools.ts';

const SIDE = 48;

const still = (turn = 0): Sharp => {
  const data = Buffer.alloc(SIDE * SIDE * 3);
  for (let i = 0; i < data.length; i++) data[i] = ((i + turn) * 2_654_435_761) >>> 13;
  return sharp(data, { raw: { width: SIDE, height: SIDE, channels: 3 } });
};

const several = async (count: number): Promise<Sharp> =>
  sharp(await Promise.all(Array.from({ length: count }, (_, i) => still(i).png().toBuffer())), {
    join: { animated: true },
  });

/** An animated WebP with its first frame alone (RFC 9649, section 2.7.1.1). */
const firstFrame = (file: Buffer): Buffer => {
  const one = Buffer.from(file.subarray(0, file.indexOf('ANMF', file.indexOf('ANMF') + 4)));
  one.writeUInt32LE(one.length - 8, 4);
  return one;
};

const heic = (): Promise<Buffer> => readFile(new URL('../fixtures/photos/halves.heic', import.meta.url));

/** The file with another major brand, ISO/IEC 14496-12 section 4.3. */
const branded = (file: Buffer, brand: string): Buffer => {
  const other = Buffer.from(file);
  other.write(brand, 8, 'latin1');
  return other;
};

const problemIn = async (bytes: Uint8Array): Promise<string | undefined> =>
  (await probe('a.jpg', bytes)).problem;

describe('a file of more than one picture', () => {
  test.each([
    ['GIF', async () => (await several(2)).gif().toBuffer()],
    ['GIF by hand', async () => gif(2, 2, 3)],
    ['WebP', async () => (await several(2)).webp().toBuffer()],
    ['PNG', async () => png(4, 4, { before: [animation(2)] })],
    ['AVIF', async () => branded(await still().avif({ effort: 0 }).toBuffer(), 'avis')],
    ['HEIC', async () => branded(await heic(), 'msf1')],
    ['HEIC of one kind alone', async () => branded(await heic(), 'hevc')],
  ])('that moves is named as that: %s', async (_, make) => {
    const found = await probe('a.gif', await make());
    expect(found.problem).toBe('is a moving picture, where a still is wanted');
    expect(found.fix).toMatch(/as a JPEG or a PNG/);
    expect(await previewPhoto(await make(), 100)).toBeUndefined();
  });

  test('that has pages is named as that', async () => {
    for (const bytes of [await (await several(3)).tiff().toBuffer(), tiff([0, 0]), tiff(Array(100).fill(1))])
      expect(await problemIn(bytes)).toBe('has several pages, where one picture is wanted');
  });

  test.each([
    ['a GIF of one frame', async () => gif(2, 2, 1)],
    [
      'a WebP that says it moves, of one frame',
      async () => firstFrame(await (await several(2)).webp().toBuffer()),
    ],
    ['a PNG of one frame', async () => png(4, 4, { before: [animation(1)] })],
    ['a PNG with the word behind its picture', async () => Buffer.concat([png(4, 4), animation(9)])],
    ['a TIFF with smaller copies of itself', async () => tiff([0, 1, 1])],
    ['a TIFF with a mask', async () => tiff([0, 4])],
    [
      'a pyramid',
      async () =>
        still().resize(600).tiff({ pyramid: true, tile: true, tileWidth: 64, tileHeight: 64 }).toBuffer(),
    ],
  ])('by its form and one still by what is in it is taken: %s', async (_, make) => {
    expect(await problemIn(await make())).toBeUndefined();
  });

  test.each([
    ['3gp5', 'a film'],
    ['mp42', 'a film'],
    ['dash', 'a film'],
    ['f4v ', 'a film'],
  ])('of the brand %s is a film', async (brand, said) => {
    expect(await problemIn(Buffer.from(`\0\0\0\x14ftyp${brand}\0\0\0\0${brand}`, 'latin1'))).toContain(said);
  });

  test.each([['\0\0\0\x08moov'], ['\0\0\x01\xba'], ['RIFF\0\0\0\0AVI LIST'], ['\x1a\x45\xdf\xa3']])(
    'that begins with %j is a film',
    async (head) => {
      expect(await problemIn(Buffer.from(head.padEnd(40, '\0'), 'latin1'))).toContain('a film');
    },
  );
});

describe('a picture made to take long', () => {
  const TOO_MANY = /^has too many pixels/;
  test.each<[string, () => Promise<Buffer>, RegExp | undefined]>([
    [
      'a PNG of 2³¹ × 2³¹',
      async () => png(0x7fffffff, 0x7fffffff, { data: deflateSync(Buffer.alloc(9)) }),
      /./,
    ],
    ['an interlaced PNG of 14,000 × 14,000', async () => interlaced(14_000), TOO_MANY],
    ['a profile of 200 MB', async () => png(2, 2, { before: [packedChunk('iCCP', 200_000_000)] }), undefined],
    ['a text of 200 MB', async () => png(2, 2, { before: [packedChunk('zTXt', 200_000_000)] }), undefined],
    [
      'a picture of 200 MB too much',
      async () => png(2, 2, { data: deflateSync(Buffer.alloc(2e8)) }),
      undefined,
    ],
    [
      'texts without end',
      async () => png(2, 2, { before: Array(50_000).fill(pngChunk('tEXt', TEXT)) }),
      undefined,
    ],
    ['a GIF of a canvas of 65,535 × 65,535', async () => gif(65_535, 65_535, 1), undefined],
    ['a GIF of 100,000 frames', async () => gif(2, 2, 100_000), /moving/],
    ['a JPEG of 65,535 × 65,535', () => jpegSaying(65_535, 65_535), /./],
    ['a JPEG of 5,000 scans', () => jpegOfScans(5_000), /damaged/],
    ['a TIFF that leads back to itself', async () => tiff([0, 1], true), /damaged/],
    ['a TIFF of 60,000 directories', async () => tiff(Array(60_000).fill(1)), /pages/],
    ['a WebP of 16,384 × 16,384 without pixels', async () => emptyWebp(), /./],
    ['an AVIF that names one part 256 times', () => avifGrid(640, 256), /put together from more/],
  ])('is answered: %s', async (_, make, problem) => {
    const found = await problemIn(await make());
    if (problem) expect(found).toMatch(problem);
    else expect(found).toBeUndefined();
  });

  it('is told from one that is put together as cameras do it', async () => {
    expect(await problemIn(await avifGrid(64, 1))).toBeUndefined();
  });

  it('takes no longer than it is given where it is HEIC, and the others after it are read', async () => {
    const whole = await heic();
    const bounds = { mostPixels: 1e6, seconds: 30 };
    const [never, after] = await Promise.all([
      decodeHeic(whole, { ...bounds, seconds: 0 }),
      decodeHeic(whole, bounds),
    ]);
    expect(never).toBe('too slow');
    expect(after).toMatchObject({ width: 96, height: 64 });
    expect(await decodeHeic(whole, { ...bounds, mostPixels: 96 * 64 - 1 })).toEqual({
      width: 96,
      height: 64,
    });
  });
});

const TEXT = Buffer.from('x\0y');

const interlaced = (side: number): Buffer => {
  const file = png(side, side, { data: deflateSync(Buffer.alloc(9)) });
  const head = file.subarray(16, 29);
  head[12] = 1;
  return Buffer.concat([file.subarray(0, 8), pngChunk('IHDR', head), file.subarray(33)]);
};

const emptyWebp = (): Buffer => {
  const file = Buffer.from(`RIFF\0\0\0\0WEBPVP8X\x0a${'\0'.repeat(7)}${'\xff\x3f\0'.repeat(2)}`, 'latin1');
  file.writeUInt32LE(file.length - 8, 4);
  return file;
};

const FORMATS: readonly (readonly [string, () => Promise<Buffer>])[] = [
  ['JPEG', () => still().jpeg().toBuffer()],
  ['progressive JPEG', () => still().jpeg({ progressive: true }).toBuffer()],
  ['PNG', () => still().png().toBuffer()],
  ['GIF', () => still().gif().toBuffer()],
  ['WebP', () => still().webp().toBuffer()],
  ['lossless WebP', () => still().webp({ lossless: true }).toBuffer()],
  ['TIFF', () => still().tiff({ compression: 'deflate' }).toBuffer()],
  ['AVIF', () => still().avif({ effort: 0 }).toBuffer()],
  ['HEIC', heic],
];

describe('a damaged picture', () => {
  test.each(FORMATS)('cut at any sixteenth is a finding: %s', async (_, make) => {
    const whole = await make();
    expect(await problemIn(whole)).toBeUndefined();
    for (let sixteenth = 0; sixteenth < 16; sixteenth++)
      expect([
        sixteenth,
        await problemIn(whole.subarray(0, Math.floor((whole.length * sixteenth) / 16))),
      ]).toEqual([sixteenth, expect.stringMatching(/./)]);
  });

  test.each(FORMATS)(
    'in a few bits is a photo or a finding, and so is its picture: %s',
    async (name, make) => {
      const whole = await make();
      const chance = seeded(name.length * 31 + whole.length);
      let found = 0;
      for (let n = shareOf(name === 'HEIC' ? 50 : 400); n > 0; n--) {
        const bytes = Buffer.from(whole);
        for (let flips = 1 + chance.below(4); flips > 0; flips--) {
          const at = chance.below(bytes.length);
          bytes[at] = (bytes[at] as number) ^ (1 << chance.below(8));
        }
        const problem = await problemIn(bytes);
        if (problem !== undefined) found += 1;
        else {
          const job = { source: 'a.jpg', width: 24, height: 24, format: 'png', hash: 'h', key: 'k' } as const;
          await makePictures(bytes, [job], async () => {}).catch((error: unknown) => {
            expect([name, String(error), isPhotoFailure(error)]).toEqual([name, String(error), true]);
          });
        }
      }
      expect(found).toBeGreaterThan(0);
    },
  );

  it('that was whole when it was looked at is named, and is no fault of the program', async () => {
    const half = (await still().png().toBuffer()).subarray(0, 900);
    const job = {
      source: 'cycles/a/photos/b.png',
      width: 24,
      height: 24,
      format: 'png',
      hash: 'h',
      key: 'k',
    } as const;
    for (const bytes of [half, gif(2, 2, 2)]) {
      const failure = await makePictures(bytes, [job], async () => {}).catch((error: unknown) => error);
      expect(isPhotoFailure(failure)).toBe(true);
      expect(failure).toMatchObject({
        source: job.source,
        problem: expect.stringMatching(/cut short|moving/),
      });
    }
  });
});

const SUITE = '/usr/share/doc/libsixel-examples/examples/images/pngsuite';

const suiteFiles = (isCorrupt: boolean): readonly string[] =>
  readdirSync(SUITE, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.png(?:\.gz)?$/.test(path) && path.includes('corrupt') === isCorrupt)
    .sort();

const suiteFile = (path: string): Buffer => {
  const bytes = readFileSync(join(SUITE, path));
  return path.endsWith('.gz') ? gunzipSync(bytes) : bytes;
};

// PngSuite, the set of pictures by Willem van Schaik for whoever reads PNG; as Debian packs it.
describeWhen(`test -d ${SUITE}`, 'PngSuite', 'libsixel-examples', 'PngSuite', () => {
  it('has 160 pictures, all of which are read', async () => {
    const problems: string[] = [];
    const paths = suiteFiles(false);
    for (const path of paths) {
      const problem = await problemIn(suiteFile(path));
      if (problem !== undefined) problems.push(`${path} ${problem}`);
    }
    expect(problems).toEqual([]);
    expect(paths.length).toBe(160);
  });

  it('has 14 corrupt files, each of which is a finding', async () => {
    const paths = suiteFiles(true);
    for (const path of paths)
      expect([path, await problemIn(suiteFile(path))]).toEqual([
        path,
        expect.stringMatching(/damaged|cut short|not a picture/),
      ]);
    expect(paths.length).toBe(14);
  });
});
