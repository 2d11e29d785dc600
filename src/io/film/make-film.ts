/** A film as data → its file: by the machine's own encoder where it has one, else by the one that comes along. */
import { openFaces } from '../../drawing/type/faces.ts';
import type { Film, FilmTake } from '../../render/film.ts';
import type { Asset } from '../../render/templates.ts';
import { readFaces } from '../read-faces.ts';
import { encodeEmbedded } from './embedded.ts';
import { encodeWithFfmpeg } from './ffmpeg.ts';
import { framesOf } from './frames.ts';
import type { SceneGround, TakeProblem } from './scenes.ts';

/** Bytes of a film at most: what every app takes. Common practice, no source. */
const MOST_BYTES = 30_000_000;

export interface FilmGround extends Omit<SceneGround, 'faces' | 'onTake'> {
  /** Files of the templates; the faces are among them. */
  readonly assets: readonly Asset[];
}

export interface MadeFilm {
  readonly bytes: Uint8Array;
  readonly encoder: 'ffmpeg' | 'embedded';
  /** Shots that lost their small details, because the film would have been too large. */
  readonly softened: number;
  /** What the machine's encoder said, where it was tried and gave no film. */
  readonly refused?: string;
  /** Takes that could not be cut in. */
  readonly takes: readonly (TakeProblem & { readonly take: FilmTake })[];
}

/**
 * Makes a film. `onFrame` hears how many frames are done, and how many there are. Rejects where `signal` stops it, once all
 * that it started has ended.
 */
export const makeFilm = async (
  film: Film,
  { assets, ...ground }: FilmGround,
  onFrame: (done: number, total: number) => void = () => {},
): Promise<MadeFilm> => {
  const faces = await openFaces(assets, readFaces());
  const takes = new Map<string, MadeFilm['takes'][number]>();
  const frames = framesOf(film, {
    ...ground,
    faces,
    onTake: (take, problem) => takes.set(JSON.stringify(take), { take, ...problem }),
  });
  const { ffmpeg, signal } = ground;
  const counting = (): (() => void) => {
    let done = 0;
    return () => onFrame(++done, film.frames);
  };
  let refused: string | undefined;
  if (ffmpeg !== undefined) {
    const encoded = await encodeWithFfmpeg(ffmpeg, frames, MOST_BYTES, counting(), signal);
    if ('bytes' in encoded)
      return { bytes: encoded.bytes, encoder: 'ffmpeg', softened: 0, takes: [...takes.values()] };
    refused = encoded.refused;
  }
  const { bytes, softened } = await encodeEmbedded(frames, MOST_BYTES, counting(), signal);
  return {
    bytes,
    softened,
    encoder: 'embedded',
    takes: [...takes.values()],
    ...(refused !== undefined && { refused }),
  };
};
