/** One drawing → its JPEG: the layout says where everything stands, and the pixels are put together here. */
import sharp, { type JpegOptions, type OverlayOptions, type Sharp } from 'sharp';
import type { Setting } from '../drawing/column.ts';
import {
  contrastOf,
  meltStrength,
  type Rgb,
  rgbOf,
  type SampledPixel,
  TEXT_CONTRAST,
  tonesFor,
} from '../drawing/contrast.ts';
import { isOfWords, layOut } from '../drawing/lay-out.ts';
import { inkBoxes, type Melt, type PictureWindow, type Sheet, type Tones } from '../drawing/sheet.ts';
import { meltSvg, patchesSvg, type SvgPart, sheetSvg, wordsSvg } from '../drawing/sheet-svg.ts';
import { openFaces } from '../drawing/type/faces.ts';
import { type SetType, setText } from '../drawing/type/set-type.ts';
import type { Drawing } from '../render/drawing.ts';
import { type CropWindow, cropWindow } from './crop-window.ts';
import type { PictureGround } from './ensure-pictures.ts';
import { type PhotoCopy, photoCopies } from './photo-copies.ts';
import { readFaces } from './read-faces.ts';

/** Letters keep their edges: no colour is shared between neighbours. */
const JPEG = { mozjpeg: true, quality: 84, chromaSubsampling: '4:4:4' } as const;

/**
 * Of words alone that are shown small: looking for the shortest way to write each block costs five times the rest of
 * such a drawing, and its dark letters on paper hardly differ in colour. At this quality it is as long as by the other
 * way (12 of a box of text: 26.4 kB both, mean SSIM with the pixels before .994 for .997).
 */
const PLAIN_JPEG: JpegOptions = {
  mozjpeg: true,
  quality: 79,
  chromaSubsampling: '4:2:0',
  trellisQuantisation: false,
  optimiseScans: false,
};

/** Share of a photo's attention that words may stand on: more than that, and they stand on the thing. A choice of ours. */
const MOST_ATTENTION = 0.08;

/** Share of a window's height that tells the colour of its foot. */
const FOOT = 0.1;

/** Pixels in three channels, row by row. */
interface Raster {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
}

interface Filled {
  readonly window: PictureWindow;
  readonly raster: Raster;
  /** Share of the photo's attention below a row of the drawing. */
  readonly attentionBelow: (y: number) => number;
}

const attentionBelow =
  ({ attention, width, height }: PhotoCopy, part: CropWindow, window: PictureWindow) =>
  (y: number): number => {
    const cut = part.top + ((y - window.y) / window.height) * part.height;
    let all = 0;
    let below = 0;
    attention.weights.forEach((weight, i) => {
      all += weight;
      const row = Math.floor(i / attention.width) + 0.5;
      const column = (i % attention.width) + 0.5;
      const across = (column / attention.width) * width;
      const down = (row / attention.height) * height;
      const shown = across >= part.left && across < part.left + part.width && down < part.top + part.height;
      if (shown && down >= cut) below += weight;
    });
    return all > 0 ? below / all : 0;
  };

const fill = async (window: PictureWindow, drawing: Drawing, copy: PhotoCopy): Promise<Filled> => {
  const part = cropWindow(copy, window.width / window.height, {
    focus: drawing.pictures[window.picture]?.focus,
    attention: copy.attention,
  });
  const { data, info } = await copy
    .image()
    .extract(part)
    .resize(window.width, window.height, { fit: 'fill' })
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return {
    window,
    raster: { data, width: info.width, height: info.height },
    attentionBelow: attentionBelow(copy, part, window),
  };
};

const at = ({ data, width }: Raster, x: number, y: number): Rgb => {
  const i = (y * width + x) * 3;
  return [data[i] as number, data[i + 1] as number, data[i + 2] as number];
};

/** Mean colour of the pictures' feet; white where there is none. */
const footOf = (filled: readonly Filled[]): Rgb => {
  const sum = [0, 0, 0] as [number, number, number];
  let count = 0;
  for (const { raster } of filled)
    for (let y = Math.floor(raster.height * (1 - FOOT)); y < raster.height; y++)
      for (let x = 0; x < raster.width; x++) {
        const [r, g, b] = at(raster, x, y);
        sum[0] += r;
        sum[1] += g;
        sum[2] += b;
        count++;
      }
  return count === 0 ? [255, 255, 255] : [sum[0] / count, sum[1] / count, sum[2] / count];
};

/** In each row under letters the pixels that are nearest to the words' own brightness. */
const worstUnder = (
  sheet: Sheet,
  { end }: Melt,
  filled: readonly Filled[],
  tones: Tones,
): readonly SampledPixel[] => {
  const words = rgbOf(tones.ink);
  const worst = new Map<number, { readonly contrast: number; readonly pixel: SampledPixel }>();
  for (const box of sheet.blocks.flatMap(inkBoxes))
    for (const { window, raster } of filled) {
      const [top, bottom] = [
        Math.max(Math.floor(box.y), window.y),
        Math.min(Math.ceil(box.y + box.height), end),
      ];
      const [left, right] = [
        Math.max(Math.floor(box.x), window.x),
        Math.min(Math.ceil(box.x + box.width), window.x + window.width),
      ];
      for (let y = top; y < bottom; y++)
        for (let x = left; x < right; x++) {
          const colour = at(raster, x - window.x, y - window.y);
          const contrast = contrastOf(colour, words);
          if (contrast < (worst.get(y)?.contrast ?? Number.POSITIVE_INFINITY))
            worst.set(y, { contrast, pixel: { colour, y } });
        }
    }
  return [...worst.values()].map(({ pixel }) => pixel);
};

/** The least contrast of any letter with any pixel in the box of its line. */
export const leastContrast = (sheet: Pick<Sheet, 'blocks'>, ground: Raster, tones: Tones): number => {
  let least = 21;
  for (const block of sheet.blocks) {
    const words = rgbOf(tones[block.tone]);
    for (const box of inkBoxes(block))
      for (let y = Math.max(0, Math.floor(box.y)); y < Math.min(ground.height, box.y + box.height); y++)
        for (let x = Math.max(0, Math.floor(box.x)); x < Math.min(ground.width, box.x + box.width); x++)
          least = Math.min(least, contrastOf(at(ground, x, y), words));
  }
  return least;
};

/** A sheet with its colours and its pixels, but for the words: as layers, or put together where they had to be looked at. */
interface Ground {
  readonly sheet: Sheet;
  readonly tones: Tones;
  readonly pixels: readonly OverlayOptions[] | Raster;
}

const layerOf = (part: SvgPart | undefined): readonly OverlayOptions[] =>
  part ? [{ input: Buffer.from(part.svg), left: part.left, top: part.top }] : [];

const layersOf = (
  sheet: Sheet,
  filled: readonly Filled[],
  tones: Tones,
  strength = 0,
): readonly OverlayOptions[] => [
  ...filled.map(({ window, raster }) => ({
    input: Buffer.from(raster.data),
    raw: { width: raster.width, height: raster.height, channels: 3 as const },
    left: window.x,
    top: window.y,
  })),
  ...(sheet.melt ? [{ input: Buffer.from(meltSvg(sheet, sheet.melt, strength, tones.ground)) }] : []),
  ...layerOf(patchesSvg(sheet, tones)),
];

const onGround = ({ width, height }: Sheet, tones: Tones): Sharp =>
  sharp({ create: { width, height, channels: 3, background: tones.ground } });

const rasterOf = async (sheet: Sheet, tones: Tones, layers: readonly OverlayOptions[]): Promise<Raster> => {
  const { width, height } = sheet;
  const data = await onGround(sheet, tones)
    .composite([...layers])
    .removeAlpha()
    .raw()
    .toBuffer();
  return { data, width, height };
};

/** What more melting is tried by until the finished pixels have the contrast. */
const MORE = 0.04;
const TRIES = 8;

/** The ground for a sheet; undefined where its words may not stand on the picture. */
const groundOf = async (
  sheet: Sheet,
  drawing: Drawing,
  photos: (source: string) => Promise<PhotoCopy>,
): Promise<Ground | undefined> => {
  const { melt } = sheet;
  const filled = await Promise.all(
    sheet.windows.map(async (window) => {
      const source = drawing.pictures[window.picture]?.file;
      if (source === undefined) throw new Error(`Expected a picture ${window.picture} in a drawing`);
      return fill(window, drawing, await photos(source));
    }),
  );
  if (melt && filled.some((one) => one.attentionBelow(melt.words) > MOST_ATTENTION)) return undefined;
  const tones = tonesFor(sheet, drawing, footOf(filled));
  if (!melt) return { sheet, tones, pixels: layersOf(sheet, filled, tones) };
  const least = meltStrength(melt, worstUnder(sheet, melt, filled, tones), tones);
  if (least === undefined) return undefined;
  for (let more = 0; more < TRIES; more++) {
    const raster = await rasterOf(sheet, tones, layersOf(sheet, filled, tones, least + more * MORE));
    if (leastContrast(sheet, raster, tones) >= TEXT_CONTRAST) return { sheet, tones, pixels: raster };
  }
  return undefined;
};

/** The image of a ground, with words or without. */
const imageOf = ({ sheet, tones, pixels }: Ground, withWords: boolean): Sharp => {
  const words = withWords ? layerOf(wordsSvg(sheet, tones)) : [];
  if (!('data' in pixels)) return onGround(sheet, tones).composite([...pixels, ...words]);
  const { data, width, height } = pixels;
  return sharp(data, { raw: { width, height, channels: 3 } }).composite([...words]);
};

/** A drawing before it is written: its sheet, its colours, and its pixels with and without words. */
export interface Drawn extends Pick<Ground, 'sheet' | 'tones'> {
  readonly jpeg: (words?: 'with words' | 'without words') => Promise<Uint8Array>;
}

/** Opens the faces once, and gives the function that draws. Rejects where a photo that was whole cannot be decoded. */
export const openDrawing = async ({
  content,
  assets,
}: PictureGround): Promise<(drawing: Drawing) => Promise<Drawn>> => {
  const faces = await openFaces(assets, readFaces());
  const photos = photoCopies(content);
  return async (drawing) => {
    const known = new Map<string, SetType>();
    const set: Setting = (text, spec) => {
      const key = JSON.stringify([text, spec]);
      const type = known.get(key) ?? setText(text, spec, faces);
      known.set(key, type);
      return type;
    };
    const onPicture = await groundOf(layOut(drawing, set), drawing, photos);
    const ground = onPicture ?? (await groundOf(layOut(drawing, set, 'beside it'), drawing, photos));
    if (!ground) throw new Error('Expected words beside a picture to need no melting');
    const { sheet, tones } = ground;
    return {
      sheet,
      tones,
      jpeg: (words = 'with words') => {
        const withWords = words === 'with words';
        // By what the drawing has and not by what it shows, because its key is made of the one.
        const image = isOfWords(drawing)
          ? sharp(Buffer.from(sheetSvg(sheet, tones, withWords)))
          : imageOf(ground, withWords);
        const isSmall = isOfWords(drawing) && drawing.shape === 'share';
        return image
          .removeAlpha()
          .jpeg(isSmall ? PLAIN_JPEG : JPEG)
          .toBuffer();
      },
    };
  };
};

/** The same, to the JPEG alone. */
export const openDrawingTable = async (
  ground: PictureGround,
): Promise<(drawing: Drawing) => Promise<Uint8Array>> => {
  const draw = await openDrawing(ground);
  return async (drawing) => (await draw(drawing)).jpeg();
};
