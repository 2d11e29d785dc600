/**
 * The least that pictures ask: each photo decoded once, the program's cascade of copies, every rendition encoded as
 * the program does it, two photos at once. `node … PHOTOS PLAN.json OUT`
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import { COPIES, ENCODINGS } from '../../../src/io/make-picture.ts';
import type { Rendition } from '../photo-box.ts';

sharp.concurrency(1);
sharp.cache(false);

const [photos = '', plan = '', out = ''] = process.argv.slice(2);

interface Pixels {
  readonly data: Buffer;
  readonly info: { readonly width: number; readonly height: number; readonly channels: 1 | 2 | 3 | 4 };
}

const raw = ({ data, info: { width, height, channels } }: Pixels): Sharp =>
  sharp(data, { raw: { width, height, channels } });

const encode = (image: Sharp, format: string): Promise<Buffer> => {
  if (format === 'avif') return image.avif(ENCODINGS.avif).toBuffer();
  if (format === 'webp') return image.webp(ENCODINGS.webp).toBuffer();
  return image.jpeg(ENCODINGS.jpeg).toBuffer();
};

const makeAll = async (photo: string, renditions: readonly Rendition[]): Promise<void> => {
  const copies: Pixels[] = [];
  for (const side of COPIES) {
    const from = copies.at(-1);
    const image = from ? raw(from) : sharp(readFileSync(join(photos, photo))).autoOrient();
    copies.push(
      await image
        .resize(side, side, { fit: 'inside', withoutEnlargement: true })
        .raw()
        .toBuffer({ resolveWithObject: true }),
    );
  }
  const sizes = new Map<string, Pixels>();
  for (const { width, height, format } of renditions) {
    const from =
      copies.findLast(({ info }) => info.width >= width && info.height >= height) ?? (copies[0] as Pixels);
    const size = `${width}x${height}`;
    const pixels =
      sizes.get(size) ??
      (await raw(from).resize(width, height, { fit: 'cover' }).raw().toBuffer({ resolveWithObject: true }));
    sizes.set(size, pixels);
    writeFileSync(join(out, `${basename(photo)}-${size}.${format}`), await encode(raw(pixels), format));
  }
};

mkdirSync(out, { recursive: true });
const waiting = Object.entries(JSON.parse(readFileSync(plan, 'utf8')) as Record<string, Rendition[]>);
const work = async (): Promise<void> => {
  for (let next = waiting.shift(); next; next = waiting.shift()) await makeAll(...next);
};
void Promise.all([work(), work()]);
