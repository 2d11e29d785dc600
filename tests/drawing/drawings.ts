/** Drawings for tests: any words, over pictures that are painted where they are asked for. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { listFiles } from '../../src/io/list-files.ts';
import { type Drawing, type DrawingShape, type DrawnEntry, drawingFor } from '../../src/render/drawing.ts';
import type { Asset } from '../../src/render/templates.ts';

const root = join(import.meta.dirname, '../..');

export const COLOURS = {
  paper: '#f8f8f4',
  wash: '#eceee4',
  ink: '#1d211a',
  soft: '#62665c',
  accent: '#8a5a20',
  onAccent: '#ffffff',
  hair: '#cccccc',
} as const;

export const assetsOfTemplates = (): readonly Asset[] =>
  listFiles(join(root, 'templates'))
    .filter(({ path }) => path.startsWith('fonts/'))
    .map(({ path }) => ({ path, bytes: readFileSync(join(root, 'templates', path)) }));

/** Paints a photo: a round thing in its middle before a ground that grows darker. Gives what a drawing knows of it. */
export const paintedPhoto = async (
  folder: string,
  file: string,
  width: number,
  height: number,
  [thing, above, below]: readonly [string, string, string] = ['#a04030', '#e8e8e0', '#b0a890'],
): Promise<Drawing['pictures'][number]> => {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><defs><linearGradient id="g" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="${above}"/><stop offset="1" stop-color="${below}"/></linearGradient></defs><rect width="100%" height="100%" fill="url(#g)"/><circle cx="50%" cy="42%" r="${Math.min(width, height) * 0.22}" fill="${thing}"/></svg>`;
  const path = join(folder, file);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, await sharp(Buffer.from(svg)).jpeg({ quality: 90 }).toBuffer());
  return { file, hash: file, width, height };
};

export const entry = (more: Partial<DrawnEntry> = {}): DrawnEntry => ({
  label: 'No. 2',
  name: 'Brass plant mister',
  lines: ['The brass plant mister has one task in March, and it is a small one.'],
  relation: 'It waters the top of the seed tray before anything is up.',
  cautions: [],
  ...more,
});

export const drawingOf = (
  shape: DrawingShape,
  layout: Drawing['layout'],
  more: Partial<Drawing> & Pick<Drawing, 'entries'>,
): Drawing =>
  drawingFor(shape, {
    layout,
    lang: 'en-GB',
    colours: COLOURS,
    palette: ['#8a9a7b', '#b87333', '#6b3f56'],
    pictures: [],
    ...more,
  });
