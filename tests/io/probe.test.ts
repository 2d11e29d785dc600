import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { describe, expect, it, vi } from 'vitest';
import { probe } from '../../src/io/probe.ts';
import { photo, turnedPhoto } from './photos.ts';

describe('a probe', () => {
  it('gives the size, the mean colour and the colour that fills the middle', async () => {
    const found = await probe('a.jpg', await photo());
    expect(found).toMatchObject({ path: 'a.jpg', width: 600, height: 400 });
    expect(found.problem).toBeUndefined();
    expect(found.tint).toMatch(/^#[67].[12].[67].$/);
    const plain = await sharp({ create: { width: 50, height: 50, channels: 3, background: '#336699' } })
      .png()
      .toBuffer();
    expect(await probe('b.png', plain)).toMatchObject({ tint: '#336699', dominant: '#336699' });
  });

  it('sees that a photo is blurred, and not that something behind a sharp thing is', async () => {
    const lines = Array.from(
      { length: 60 },
      (_, i) => `<rect x="${i * 20}" y="0" width="10" height="900" fill="#543"/>`,
    );
    const svg = (inner: string): Buffer =>
      Buffer.from(
        `<svg xmlns="http://www.w3.org/2000/svg" width="1200" height="900"><rect width="1200" height="900" fill="#ddd"/>${inner}</svg>`,
      );
    const sharpOne = await sharp(svg(lines.join('')))
      .jpeg()
      .toBuffer();
    const blurred = await sharp(sharpOne).blur(4).jpeg().toBuffer();
    const thing = await sharp(sharpOne).extract({ left: 450, top: 350, width: 300, height: 225 }).toBuffer();
    const before = await sharp(sharpOne)
      .blur(8)
      .composite([{ input: thing, left: 450, top: 350 }])
      .jpeg()
      .toBuffer();
    const sharpnessIn = async (bytes: Buffer): Promise<number> =>
      (await probe('a.jpg', bytes)).sharpness ?? -1;
    const whole = await sharpnessIn(sharpOne);
    expect(await sharpnessIn(blurred)).toBeLessThan(whole / 10);
    expect(await sharpnessIn(before)).toBeGreaterThan(whole / 5);
    expect(await sharpnessIn(await sharp(svg('')).png().toBuffer())).toBe(0);
  });

  it('turns the size as the camera was held', async () => {
    expect(await probe('a.jpg', await turnedPhoto())).toMatchObject({ width: 400, height: 600 });
  });

  it.each(['jpeg', 'png', 'webp', 'avif'] as const)('finds a %s that is cut short', async (format) => {
    const whole = await photo(900, 700, format);
    const found = await probe('a', whole.subarray(0, Math.floor(whole.length * 0.7)));
    expect(found.problem).toBe('is cut short');
    expect(found).toMatchObject({ width: 0, height: 0 });
    expect(found.sharpness).toBeUndefined();
  });

  it('reads what phones write as HEIC, and finds one that is cut short', async () => {
    // Red on the left and blue on the right; written with heif-enc of libheif 1.15.
    const whole = await readFile(new URL('../fixtures/photos/halves.heic', import.meta.url));
    const found = await probe('a.heic', whole);
    expect(found).toMatchObject({ width: 96, height: 64 });
    expect(found.problem).toBeUndefined();
    expect(found.tint).toMatch(/^#[67].[01].[67].$/);
    expect((await probe('a.heic', whole.subarray(0, 1100))).problem).toBe('is cut short');
    const said = vi.spyOn(console, 'log');
    const damaged = Buffer.from(whole).fill(0x55, 100, 300);
    expect((await probe('a.heic', damaged)).problem).toMatch(/is damaged|not a picture/);
    expect(said).not.toHaveBeenCalled();
  });

  it('finds a JPEG of which only the last part is missing', async () => {
    const whole = await photo(3000, 2000);
    expect((await probe('a.jpg', whole.subarray(0, Math.floor(whole.length * 0.97)))).problem).toBe(
      'is cut short',
    );
  });

  it('finds what is not a picture', async () => {
    const text = new TextEncoder().encode('Dear diary, this is not a picture.');
    expect((await probe('a.jpg', text)).problem).toBe('is not a picture that can be read');
    expect((await probe('a.jpg', new Uint8Array())).problem).toBe('has no pixels: the file is empty');
  });

  it('refuses a picture whose pixels would fill the memory, without decoding it', async () => {
    const bomb = await sharp({
      create: { width: 16_000, height: 15_000, channels: 3, background: '#fff' },
      limitInputPixels: false,
    })
      .png()
      .toBuffer();
    expect((await probe('a.png', bomb)).problem).toMatch(/^has too many pixels \(16000 × 15000\)/);
  });

  it('takes pictures of one channel, with transparency, and of sixteen bits', async () => {
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
    for (const bytes of [grey, clear, deep]) expect((await probe('a.png', bytes)).problem).toBeUndefined();
  });
});
