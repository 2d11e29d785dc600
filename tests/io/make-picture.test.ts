import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp, { type ChannelStats } from 'sharp';
import { describe, expect, it } from 'vitest';
import { ENCODINGS, makePictures } from '../../src/io/make-picture.ts';
import type { PictureJob } from '../../src/render/output.ts';
import { jobKey, RECIPE_VERSION } from '../../src/render/picture-recipe.ts';
import { locatedPhoto, photo, turnedPhoto } from './photos.ts';

const job = (more: Partial<PictureJob>): PictureJob => ({
  source: 'a.jpg',
  hash: 'h',
  width: 300,
  height: 200,
  format: 'jpeg',
  key: 'k',
  ...more,
});

const make = async (bytes: Uint8Array, jobs: readonly PictureJob[]): Promise<Buffer[]> => {
  const made: Buffer[] = [];
  await makePictures(bytes, jobs, async (_, picture) => {
    made.push(picture);
  });
  return made;
};

const formats = ['avif', 'webp', 'jpeg', 'png'] as const;

describe('the key of a picture', () => {
  it('is another for every part of its job, and for nothing else', () => {
    const { key: _, ...plain } = job({});
    const others: readonly Partial<PictureJob>[] = [
      { hash: 'i' },
      { width: 301 },
      { height: 201 },
      { focus: { x: 0.5, y: 0.5 } },
      { focus: { x: 0.5, y: 0.6 } },
      { format: 'avif' },
      { mark: 'play' },
    ];
    const keys = others.map((more) => jobKey({ ...plain, ...more }));
    expect(new Set([jobKey(plain), ...keys]).size).toBe(others.length + 1);
    // A photo that was moved is the same photo.
    expect(jobKey({ ...plain, source: 'b.jpg' })).toBe(jobKey(plain));
  });

  // Change both together: an old picture is never taken for one of another quality.
  it('has a version for each way of encoding', () => {
    expect({ RECIPE_VERSION, ENCODINGS }).toEqual({
      RECIPE_VERSION: 3,
      ENCODINGS: {
        jpeg: { mozjpeg: true, quality: 80 },
        webp: { quality: 75, effort: 2 },
        avif: { quality: 50, effort: 1 },
        png: { compressionLevel: 9 },
      },
    });
  });
});

describe('a published picture', () => {
  it('carries neither place nor camera nor profile', async () => {
    const original = await locatedPhoto();
    expect(original.includes('Lens & Daughters')).toBe(true);
    const dir = mkdtempSync(join(tmpdir(), 'lidlore-'));
    const made = await make(
      original,
      formats.map((format) => job({ format })),
    );
    for (const [i, picture] of made.entries()) {
      const metadata = await sharp(picture).metadata();
      expect(metadata.exif, formats[i]).toBeUndefined();
      expect(metadata.icc, formats[i]).toBeUndefined();
      expect(metadata.xmp, formats[i]).toBeUndefined();
      expect(metadata.iptc, formats[i]).toBeUndefined();
      const file = join(dir, `a.${formats[i]}`);
      writeFileSync(file, picture);
      // Outside check: ExifTool by Phil Harvey, where it is installed.
      const seen = spawnSync(
        'exiftool',
        ['-G', '-EXIF:all', '-XMP:all', '-ICC_Profile:all', '-GPS:all', file],
        { encoding: 'utf8' },
      );
      if (!seen.error) expect(seen.stdout.trim(), formats[i]).toBe('');
    }
    rmSync(dir, { recursive: true });
  });

  it('stands as the camera was held', async () => {
    const [picture] = await make(await turnedPhoto(), [job({ width: 200, height: 300 })]);
    const { data, info } = await sharp(picture).raw().toBuffer({ resolveWithObject: true });
    expect(info).toMatchObject({ width: 200, height: 300 });
    // Orientation 6 turns the sensor's left (red) to the top.
    expect(data[0]).toBeGreaterThan(150);
    expect(data[199 * 3]).toBeGreaterThan(150);
    expect(data[data.length - 3]).toBeLessThan(60);
  });

  it('is never larger than the photo allows, and keeps its shape', async () => {
    const [picture] = await make(await photo(600, 400), [job({ width: 1200, height: 630 })]);
    const { width, height } = await sharp(picture).metadata();
    expect(width).toBe(600);
    expect(Math.abs(height - 315)).toBeLessThanOrEqual(1);
  });

  it('keeps the point of focus when it is cropped', async () => {
    const at = async (x: number): Promise<ChannelStats[]> => {
      const [picture] = await make(await photo(800, 400), [
        job({ width: 200, height: 200, focus: { x, y: 0.5 } }),
      ]);
      return (await sharp(picture).stats()).channels;
    };
    const [left, right] = [await at(0), await at(1)];
    expect(left[0]?.mean).toBeGreaterThan(190);
    expect(right[0]?.mean).toBeLessThan(30);
  });

  it('has the bytes its job says, whatever else is made with it', async () => {
    const bytes = await photo(2600, 1700);
    const jobs = formats.flatMap((format) => [
      job({ format, width: 960, height: 628 }),
      job({ format, width: 480, height: 480 }),
    ]);
    const together = await make(bytes, jobs);
    for (const [i, one] of jobs.entries())
      expect((await make(bytes, [one]))[0]?.equals(together[i] as Buffer)).toBe(true);
  });

  it('bears its play mark over the middle, a pale triangle on a dark disc, and nowhere else', async () => {
    const bytes = await photo();
    const [plain, marked] = await make(bytes, [job({ format: 'png' }), job({ format: 'png', mark: 'play' })]);
    const pixel = async (picture: Buffer | undefined, left: number, top: number): Promise<number[]> => [
      ...(await sharp(picture).extract({ left, top, width: 1, height: 1 }).removeAlpha().raw().toBuffer()),
    ];
    expect(await pixel(marked, 2, 2)).toEqual(await pixel(plain, 2, 2));
    expect(Math.min(...(await pixel(marked, 150, 100)))).toBeGreaterThan(240);
    const beside = await pixel(marked, 138, 100);
    expect(Math.max(...beside)).toBeLessThan(Math.max(...(await pixel(plain, 138, 100))) - 60);
    expect(await sharp(marked).metadata()).toMatchObject({ width: 300, height: 200 });
  });

  it('is made from HEIC too', async () => {
    const { readFile } = await import('node:fs/promises');
    const bytes = await readFile(new URL('../fixtures/photos/halves.heic', import.meta.url));
    const [picture] = await make(bytes, [job({ width: 48, height: 32 })]);
    expect(await sharp(picture).metadata()).toMatchObject({ width: 48, height: 32, format: 'jpeg' });
  });

  it('is made from one channel, transparency and sixteen bits too', async () => {
    const grey = await sharp(await photo())
      .greyscale()
      .png()
      .toBuffer();
    const clear = await sharp(await photo())
      .ensureAlpha(0.5)
      .png()
      .toBuffer();
    const deep = await sharp(await photo())
      .toColourspace('rgb16')
      .png()
      .toBuffer();
    for (const bytes of [grey, clear, deep]) {
      for (const picture of await make(
        bytes,
        formats.map((format) => job({ format })),
      ))
        expect(await sharp(picture).metadata()).toMatchObject({ width: 300, height: 200 });
    }
  });
});
