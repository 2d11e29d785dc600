/** What each shot is made of in pixels: its still, its ground, and its words as layers. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { type Rgb, rgbOf, TEXT_CONTRAST } from '../../drawing/contrast.ts';
import { type FrameBox, type LaidWords, layWords, platePlace } from '../../drawing/film/frame-words.ts';
import { NEAREST, type Part, partAt } from '../../drawing/film/motion.ts';
import { weakestVeil } from '../../drawing/film/veil.ts';
import type { Faces } from '../../drawing/type/faces.ts';
import { setText } from '../../drawing/type/set-type.ts';
import type { Film, FilmShot, FilmTake } from '../../render/film.ts';
import type { PictureSource } from '../../render/pictures.ts';
import { makePictures } from '../make-picture.ts';
import {
  type Layer,
  layerOf,
  type Planes,
  plainPlanes,
  planesOf,
  planesOver,
  putLayer,
  putPart,
  rgbAt,
} from './planes.ts';
import { takeFrames } from './take.ts';

/** Words as a layer, from a frame up to another. */
interface TimedLayer {
  readonly from: number;
  readonly to: number;
  readonly layer: Layer;
}

/** Makes the picture of a shot's frame, without its words, into the planes that are given. */
type Paint = (frame: number, into: Planes) => void | Promise<void>;

/** A shot that can be painted. */
export interface Scene {
  readonly paint: Paint;
  readonly layers: readonly TimedLayer[];
  readonly words: readonly LaidWords[];
}

/** How many times the frame's width a still is made at most, so that a move can go sideways. */
const WIDEST_WAY = 1.3;

/** How near and how wide a still is made, so that it is never shown larger than `most` times its own size. */
const stillSize = (still: PictureSource, place: FrameBox, most: number) => {
  const fill = Math.max(place.width / still.width, place.height / still.height);
  const nearest = Math.min(NEAREST, Math.max(1, most / fill));
  const height = Math.round((place.height * nearest) / 2) * 2;
  const widest = Math.min(still.width / still.height, (place.width / place.height) * WIDEST_WAY);
  const width = Math.max(Math.round(place.width * nearest), Math.floor(height * widest));
  return { nearest, width: Math.floor(width / 2) * 2, height };
};

const openStill = async (
  content: string,
  still: PictureSource,
  size: { readonly width: number; readonly height: number },
): Promise<Planes> => {
  const { width, height } = size;
  const job = {
    source: still.file,
    hash: still.hash,
    width,
    height,
    ...(still.focus && { focus: still.focus }),
    // Without loss: it is encoded once more as film.
    format: 'png',
    key: '',
  } as const;
  let planes: Planes | undefined;
  await makePictures(await readFile(join(content, still.file)), [job], async (_, picture) => {
    const { data, info } = await sharp(picture)
      // A small still is enlarged here, once and well, and not in every frame.
      .resize(width, height, { fit: 'fill', kernel: 'lanczos3' })
      .removeAlpha()
      .toColourspace('srgb')
      .raw()
      .toBuffer({ resolveWithObject: true });
    planes = planesOf({ data, width: info.width, height: info.height, channels: 3 });
  });
  if (!planes) throw new Error(`Expected a still of ${still.file}`);
  return planes;
};

const rasterize = async (svg: string, width: number, top: number, height: number): Promise<Layer> => {
  const drawn = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 ${top} ${width} ${height}">${svg}</svg>`;
  const { data } = await sharp(Buffer.from(drawn)).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return layerOf(data, width, height, top);
};

const rgbNumbers = (hex: string): [number, number, number] => [...rgbOf(hex)] as [number, number, number];

/** A take fills the frame: words stand as over a still that does. */
const TAKEN = {
  view: 'still',
  still: { file: '', hash: '', width: 9, height: 16 },
  move: 'nearer',
} as const satisfies FilmShot['seen'];

/** Frames between two looks at what is under the words. */
const LOOK_EVERY = 5;
/** Pixels around a line's ink that count as under it. */
const AROUND = 4;
/** Every so many pixels one is looked at. */
const LOOK_AT = 2;

/** The colours under some words in a painted frame, each once, in steps of 4 of 256, added to those found before. */
const lookUnder = ({ ink }: LaidWords, canvas: Planes, found: Map<number, Rgb>): void => {
  for (const { left, top, width, height } of ink) {
    const last = Math.min(canvas.height, Math.ceil(top + height) + AROUND);
    const right = Math.min(canvas.width, Math.ceil(left + width) + AROUND);
    for (let y = Math.max(0, Math.floor(top) - AROUND); y < last; y += LOOK_AT)
      for (let x = Math.max(0, Math.floor(left) - AROUND); x < right; x += LOOK_AT) {
        // Rounded to the lighter side, so that what is promised holds for each of them.
        const [r, g, b] = rgbAt(canvas, x, y).map((value) => Math.min(255, Math.ceil(value) | 3));
        const rgb: Rgb = [r ?? 0, g ?? 0, b ?? 0];
        found.set((rgb[0] << 16) | (rgb[1] << 8) | rgb[2], rgb);
      }
  }
};

/** The colours under some words over all the time that they stand. */
const coloursUnder = async (words: LaidWords, paint: Paint, canvas: Planes): Promise<readonly Rgb[]> => {
  const found = new Map<number, Rgb>();
  const look = async (frame: number): Promise<void> => {
    await paint(frame, canvas);
    lookUnder(words, canvas, found);
  };
  for (let frame = words.from; frame < words.to; frame += LOOK_EVERY) await look(frame);
  await look(words.to - 1);
  return [...found.values()];
};

/** Share of the frame's height over which a veil grows. */
const VEIL_GROWS = 0.16;
/** The encoder's own error must not take words below what they need. */
const SPARE = 0.03;

/** A veil from above the words down to the foot of the frame. */
const veilSvg = (strength: number, top: number, { width, height, colours }: Film): string => {
  const begin = Math.max(0, top - height * VEIL_GROWS);
  const full = (top - begin) / (height - begin);
  const stops = [0, 0.25, 0.5, 0.75, 1].map((share) => {
    // Begins and ends softly: an edge would be seen.
    const eased = share * share * (3 - 2 * share);
    return `<stop offset="${(full * share).toFixed(4)}" stop-color="${colours.night}" stop-opacity="${(strength * eased).toFixed(4)}"/>`;
  });
  return `<defs><linearGradient id="veil" x1="0" y1="0" x2="0" y2="1">${stops.join('')}<stop offset="1" stop-color="${colours.night}" stop-opacity="${strength.toFixed(4)}"/></linearGradient></defs><rect x="0" y="${begin}" width="${width}" height="${height - begin}" fill="url(#veil)"/>`;
};

const topOf = ({ ink }: LaidWords): number => Math.min(...ink.map(({ top }) => top));
const bottomOf = ({ ink }: LaidWords): number => Math.max(...ink.map(({ top, height }) => top + height));

const evenDown = (value: number): number => Math.max(0, Math.floor(value / 2) * 2);

/** What a painter needs besides the film. */
export interface SceneGround {
  /** The folder that holds the photos. */
  readonly content: string;
  readonly faces: Faces;
  /** How many times its own size a still may be shown. */
  readonly mostEnlarged: number;
  /** Whether a still of this shape may fill the frame. */
  readonly fillsFrame: (still: PictureSource) => boolean;
  /** What takes are read by; without it stills stand for them. */
  readonly ffmpeg?: string;
  /** A take's absolute path; undefined where its file is missing. */
  readonly pathOf: (take: FilmTake) => string | undefined;
  readonly onTake: (take: FilmTake, problem: TakeProblem) => void;
  /** Ends the reading of takes. */
  readonly signal?: AbortSignal;
}

/** Why a take was not cut in: how many seconds of it there are from where it was to begin. */
export interface TakeProblem {
  readonly seconds: number;
  readonly needed: number;
}

/** The same veil for all words of a shot, so that it does not flicker. */
const veilOver = (colours: readonly Rgb[], { colours: { night, onNight } }: Film): number => {
  const strength = weakestVeil(colours, { veil: rgbOf(night), words: rgbOf(onNight) });
  if (strength === undefined) throw new Error(`Expected ${onNight} to reach ${TEXT_CONTRAST} upon ${night}`);
  return strength === 0 ? 0 : Math.min(1, strength + SPARE);
};

const underAll = async (words: readonly LaidWords[], paint: Paint, film: Film): Promise<readonly Rgb[]> => {
  const canvas = plainPlanes(film.width, film.height, [0, 0, 0]);
  const colours: Rgb[] = [];
  for (const one of words) colours.push(...(await coloursUnder(one, paint, canvas)));
  return colours;
};

const layersOf = async (
  words: readonly LaidWords[],
  film: Film,
  veil: { readonly strength: number; readonly top: number } | undefined,
): Promise<readonly TimedLayer[]> => {
  const layers: TimedLayer[] = [];
  const shown = words.filter(({ ink }) => ink.length > 0);
  for (const one of shown) {
    const begin = veil ? veil.top - film.height * VEIL_GROWS : topOf(one) - AROUND;
    const top = evenDown(begin);
    const end = veil ? film.height : Math.min(film.height, evenDown(bottomOf(one) + AROUND) + 2);
    const svg = `${veil ? veilSvg(veil.strength, veil.top, film) : ''}${one.svg}`;
    layers.push({ from: one.from, to: one.to, layer: await rasterize(svg, film.width, top, end - top) });
  }
  return layers;
};

/**
 * A shot that shows a take; undefined where it cannot be read, or is too short, which is said. It is read twice: the words
 * have to be readable over every frame of it, and none is kept.
 */
const openTake = async (shot: FilmShot, film: Film, ground: SceneGround): Promise<Scene | undefined> => {
  const { take, from, to } = shot;
  const { ffmpeg } = ground;
  const path = take && ground.pathOf(take);
  if (take === undefined || path === undefined || ffmpeg === undefined) return undefined;
  const stretch = { path, from: take.from, frames: to - from };
  const words = layWords({ ...shot, seen: TAKEN }, film, { faces: ground.faces, setText });
  const spoken = words.filter(({ ink }) => ink.length > 0);
  const found = new Map<number, Rgb>();
  let frame = from;
  for await (const bytes of takeFrames(ffmpeg, stretch, film, ground.signal)) {
    const planes = planesOver(bytes, film.width, film.height);
    for (const one of spoken)
      if (frame % LOOK_EVERY === 0 && one.from <= frame && frame < one.to) lookUnder(one, planes, found);
    frame += 1;
  }
  if (frame < to) {
    ground.onTake(take, { seconds: (frame - from) / film.rate, needed: (to - from) / film.rate });
    return undefined;
  }
  const strength = veilOver([...found.values()], film);
  const veil = strength > 0 ? { strength, top: Math.min(...spoken.map(topOf)) - AROUND } : undefined;
  const frames = takeFrames(ffmpeg, stretch, film, ground.signal);
  const paint: Paint = async (_, into) => {
    const next = await frames.next();
    if (next.done) throw new Error(`Expected ${take.name} to be as long as it was`);
    const planes = planesOver(next.value, film.width, film.height);
    into.y.set(planes.y);
    into.u.set(planes.u);
    into.v.set(planes.v);
  };
  return { paint, words, layers: await layersOf(words, film, veil) };
};

/** Opens a shot. What it holds is some megabytes, however long it lasts. */
export const openScene = async (shot: FilmShot, film: Film, ground: SceneGround): Promise<Scene> => {
  const taken = await openTake(shot, film, ground);
  if (taken) return taken;
  const { width, height, rate, colours } = film;
  const { seen, from, to } = shot;
  const { faces, mostEnlarged } = ground;
  const whole: FrameBox = { left: 0, top: 0, width, height };
  const laid = (plate?: FrameBox): readonly LaidWords[] =>
    layWords(shot, film, { faces, setText, ...(plate && { plate }) });
  if (seen.view === 'card') {
    const card = plainPlanes(width, height, rgbNumbers(colours[seen.ground]));
    const words = laid();
    const paint: Paint = (_, into) => {
      into.y.set(card.y);
      into.u.set(card.u);
      into.v.set(card.v);
    };
    return { paint, words, layers: await layersOf(words, film, undefined) };
  }
  const { still, move } = seen;
  const fills = ground.fillsFrame(still);
  const place = fills
    ? whole
    : platePlace(still, film, { most: mostEnlarged, hasWords: shot.words.length > 0 });
  const { nearest, ...size } = stillSize(still, place, mostEnlarged);
  const planes = await openStill(ground.content, still, size);
  const paper = fills ? undefined : plainPlanes(width, height, rgbNumbers(colours.paper));
  const partOf = (frame: number): Part =>
    partAt(move, (frame - from + 0.5) / (to - from), {
      still: planes,
      frame: place,
      nearest,
      seconds: (to - from) / rate,
    });
  const paint: Paint = (frame, into) => {
    if (paper) {
      into.y.set(paper.y);
      into.u.set(paper.u);
      into.v.set(paper.v);
    }
    putPart(planes, partOf(frame), into, place);
  };
  const words = laid(paper ? place : undefined);
  const spoken = words.filter(({ ink }) => ink.length > 0);
  const strength = paper || spoken.length === 0 ? 0 : veilOver(await underAll(spoken, paint, film), film);
  const veil = strength > 0 ? { strength, top: Math.min(...spoken.map(topOf)) - AROUND } : undefined;
  return { paint, words, layers: await layersOf(words, film, veil) };
};

/** Paints a frame of a scene with its words. */
export const paintFrame = async ({ paint, layers }: Scene, frame: number, into: Planes): Promise<void> => {
  await paint(frame, into);
  for (const { from, to, layer } of layers) if (from <= frame && frame < to) putLayer(layer, into);
};
