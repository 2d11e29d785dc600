/** A box with photos as a phone takes them: 12 megapixels, about 4 MB, smooth and rough in turn, made of numbers. */
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { writeTextBox } from './text-box.ts';
import { randomFrom } from './words.ts';

const WIDTH = 4000;
const HEIGHT = 3000;
/** The canvas is larger than a photo, and each photo is another part of it. */
const MARGIN = 400;
const QUALITY = 91;
const PHOTOS_A_CYCLE = 8;

export interface Rendition {
  readonly width: number;
  readonly height: number;
  readonly format: string;
}

/** Gradients, waves that bend, an edge here and there, and the grain of a sensor. */
const canvas = (): Buffer => {
  const random = randomFrom(12);
  const [width, height] = [WIDTH + MARGIN, HEIGHT + MARGIN];
  const data = Buffer.alloc(width * height * 3);
  for (let y = 0, at = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1, at += 3) {
      const slope = (x / width) * 90 + (y / height) * 60;
      const wave = Math.sin(x / 97 + Math.sin(y / 61) * 3) * 24 + Math.sin((x * y) / 90_000) * 14;
      const edge = ((x >> 8) + (y >> 7)) % 3 === 0 ? 30 : 0;
      const grain = (random() - 0.5) * 26;
      const light = 50 + slope + wave + edge + grain;
      data[at] = Math.min(255, light * 1.1);
      data[at + 1] = Math.min(255, light);
      data[at + 2] = Math.max(0, light * 0.8 - 10);
    }
  return data;
};

const nameOf = (cycle: number, photo: number): string =>
  `p${String(cycle * PHOTOS_A_CYCLE + photo).padStart(3, '0')}`;

/** Writes a box of so many cycles with eight photos each into `folder`. */
export const writePhotoBox = async (folder: string, cycles: number): Promise<void> => {
  const ids = writeTextBox(folder, cycles, (cycle) =>
    Array.from({ length: PHOTOS_A_CYCLE }, (_, photo) => `${nameOf(cycle, photo)}.jpg`),
  );
  const data = canvas();
  for (const [cycle, id] of ids.entries()) {
    const photos = join(folder, 'content/cycles', id, 'photos');
    mkdirSync(photos, { recursive: true });
    for (let photo = 0; photo < PHOTOS_A_CYCLE; photo += 1) {
      const number = cycle * PHOTOS_A_CYCLE + photo;
      const [left, top] = [(number * 37) % MARGIN, (number * 53) % MARGIN];
      const bytes = await sharp(data, {
        raw: { width: WIDTH + MARGIN, height: HEIGHT + MARGIN, channels: 3 },
      })
        .extract({ left, top, width: WIDTH, height: HEIGHT })
        .modulate({ hue: (number * 47) % 360 })
        .jpeg({ quality: QUALITY })
        .toBuffer();
      writeFileSync(join(photos, `${nameOf(cycle, photo)}.jpg`), bytes);
    }
  }
};

/** What the site at `site` shows of each photo, by the photo's path below `content`. */
export const renditionsIn = async (
  site: string,
  content: string,
): Promise<Readonly<Record<string, readonly Rendition[]>>> => {
  const paths = new Map(
    readdirSync(content, { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.jpg'))
      .map((path) => [path.slice(-8, -4), path]),
  );
  const plan: Record<string, Rendition[]> = {};
  for (const name of readdirSync(join(site, 'pictures')).sort()) {
    const path = paths.get(name.slice(0, 4));
    if (!path) continue;
    const { width, height } = await sharp(join(site, 'pictures', name)).metadata();
    const format = name.slice(name.lastIndexOf('.') + 1);
    plan[path] = [...(plan[path] ?? []), { width, height, format }];
  }
  return plan;
};
