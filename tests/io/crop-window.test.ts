import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { type Attention, attentionOf } from '../../src/io/attention.ts';
import { cropWindow } from '../../src/io/crop-window.ts';
import { attentionIn } from '../../src/io/photo-attention.ts';

interface Thing {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A plain photo's pixels with things of another colour in it. */
const scene = (width: number, height: number, things: readonly Thing[]) => {
  const data = new Uint8Array(width * height * 3).fill(200);
  for (const thing of things)
    for (let y = thing.y; y < thing.y + thing.height; y++)
      for (let x = thing.x; x < thing.x + thing.width; x++) data.set([120, 40, 30], (y * width + x) * 3);
  return { data, width, height, channels: 3 };
};

const mapOf = (width: number, height: number, ...things: readonly Thing[]): Attention =>
  attentionOf(scene(width, height, things));

describe('the map of attention', () => {
  it('has a thing filled and whole, and nothing of what lies around it', () => {
    const { weights } = mapOf(60, 40, { x: 20, y: 10, width: 15, height: 20 });
    const at = (x: number, y: number): number => weights[y * 60 + x] as number;
    expect(at(27, 20)).toBe(1);
    expect([at(20, 10), at(34, 29)]).toEqual([1, 1]);
    expect([at(19, 20), at(35, 20), at(27, 9), at(2, 2), at(58, 38)]).toEqual([0, 0, 0, 0, 0]);
  });

  it('has nothing where only shadow falls from one side to the other', () => {
    const data = new Uint8Array(60 * 40 * 3);
    for (let i = 0; i < 60 * 40; i++) data.fill(120 + (i % 60), i * 3, i * 3 + 3);
    expect(Math.max(...attentionOf({ data, width: 60, height: 40, channels: 3 }).weights)).toBe(0);
  });

  it('is of the photo and not of the size that it comes in', async () => {
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="600"><rect width="800" height="600" fill="#dcd6c8"/><circle cx="260" cy="330" r="120" fill="#7a2f22"/></svg>`;
    const [large, small] = await Promise.all([
      attentionIn(sharp(Buffer.from(svg))),
      attentionIn(sharp(await sharp(Buffer.from(svg)).resize(200).png().toBuffer())),
    ]);
    expect([large.width, large.height]).toEqual([96, 72]);
    expect([small.width, small.height]).toEqual([96, 72]);
    const apart = large.weights.map((weight, i) => Math.abs(weight - (small.weights[i] as number)));
    expect(apart.reduce((sum, one) => sum + one) / apart.length).toBeLessThan(0.02);
  });
});

describe('the crop window', () => {
  const shapes = fc.constantFrom(1, 4 / 5, 9 / 16, 1.91, 2 / 3);

  it('keeps a thing whole wherever it stands, if the shape has room for it and its edge', () => {
    fc.assert(
      fc.property(
        fc.record({
          x: fc.integer({ min: 2, max: 60 }),
          y: fc.integer({ min: 2, max: 44 }),
          width: fc.integer({ min: 10, max: 30 }),
          height: fc.integer({ min: 10, max: 24 }),
        }),
        shapes,
        (thing, ratio) => {
          fc.pre(thing.x + thing.width < 94 && thing.y + thing.height < 70);
          const attention = mapOf(96, 72, thing);
          const photo = { width: 1920, height: 1440 };
          const crop = cropWindow(photo, ratio, { attention });
          fc.pre(thing.width * 20 < crop.width * 0.9 && thing.height * 20 < crop.height * 0.9);
          expect(crop.left).toBeLessThanOrEqual(thing.x * 20);
          expect(crop.top).toBeLessThanOrEqual(thing.y * 20);
          expect(crop.left + crop.width).toBeGreaterThanOrEqual((thing.x + thing.width) * 20);
          expect(crop.top + crop.height).toBeGreaterThanOrEqual((thing.y + thing.height) * 20);
        },
      ),
    );
  });

  it('is the very middle where nothing stands out, and where the thing stands in it', () => {
    const photo = { width: 1000, height: 800 };
    const middle = { left: 100, top: 0, width: 800, height: 800 };
    expect(cropWindow(photo, 1, {})).toEqual(middle);
    expect(cropWindow(photo, 1, { attention: mapOf(50, 40) })).toEqual(middle);
    expect(
      cropWindow(photo, 1, { attention: mapOf(50, 40, { x: 15, y: 10, width: 20, height: 20 }) }),
    ).toEqual(middle);
  });

  it('goes no further from the middle than the thing asks for', () => {
    const photo = { width: 1000, height: 500 };
    const thing = { x: 12, y: 10, width: 20, height: 20 };
    const { left, width } = cropWindow(photo, 1, { attention: mapOf(100, 50, thing) });
    // Half of it would stand at the very middle, all of it with the thing in the window's own middle.
    expect(left).toBeGreaterThan(0);
    expect(left).toBeLessThanOrEqual(120);
    expect(left + width).toBeGreaterThan(500);
  });

  it('leaves a smaller thing out rather than cut the larger one', () => {
    const large = { x: 20, y: 8, width: 44, height: 30 };
    const small = { x: 86, y: 18, width: 9, height: 12 };
    const { left, width } = cropWindow({ width: 1000, height: 500 }, 1.1, {
      attention: mapOf(100, 50, large, small),
    });
    expect(left).toBeLessThanOrEqual(200);
    expect(left + width).toBeGreaterThanOrEqual(640);
  });

  it('has the point of focus as near its middle as can be, whatever the map shows', () => {
    const attention = mapOf(100, 50, { x: 70, y: 10, width: 20, height: 20 });
    const photo = { width: 1000, height: 500 };
    expect(cropWindow(photo, 1, { focus: { x: 0.4, y: 0.5 }, attention })).toEqual({
      left: 150,
      top: 0,
      width: 500,
      height: 500,
    });
    expect(cropWindow(photo, 1, { focus: { x: 0, y: 0 }, attention }).left).toBe(0);
  });

  it('lies within the photo and has the shape that is asked for, for photos of any size', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 1, max: 5000 }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.option(
          fc.record({
            x: fc.double({ min: 0, max: 1, noNaN: true }),
            y: fc.double({ min: 0, max: 1, noNaN: true }),
          }),
          { nil: undefined },
        ),
        (width, height, ratio, focus) => {
          const attention = mapOf(30, 30, { x: 3, y: 16, width: 12, height: 9 });
          const crop = cropWindow({ width, height }, ratio, { focus, attention });
          expect(Object.values(crop).every(Number.isInteger)).toBe(true);
          expect(Math.min(crop.left, crop.top)).toBeGreaterThanOrEqual(0);
          expect(Math.min(crop.width, crop.height)).toBeGreaterThanOrEqual(1);
          expect(crop.left + crop.width).toBeLessThanOrEqual(width);
          expect(crop.top + crop.height).toBeLessThanOrEqual(height);
          expect(crop.width === width || crop.height === height).toBe(true);
        },
      ),
    );
  });
});
