/** A film as data → its file: by the machine's own encoder where it has one, else by the one that comes along. */
import { openFaces } from '../../drawing/type/faces.ts';
import type { Film } from '../../render/film.ts';
import type { Asset } from '../../render/templates.ts';
import { readFaces } from '../read-faces.ts';
import { encodeEmbedded } from './embedded.ts';
import { encodeWithFfmpeg } from './ffmpeg.ts';
import { framesOf } from './frames.ts';
import type { SceneGround } from './scenes.ts';

/** Bytes of a film at most: what every app takes. Common practice, no source. */
const MOST_BYTES = 30_000_000;

export interface FilmGround extends Omit<SceneGround, 'faces'> {
  /** Files of the templates; the faces are among them. */
  readonly assets: readonly Asset[];
  /** The machine's encoder, where it has one. */
  readonly ffmpeg?: string;
}

export interface MadeFilm {
  readonly bytes: Uint8Array;
  readonly encoder: 'ffmpeg' | 'embedded';
  /** What the machine's encoder said, where it was tried and gave no film. */
  readonly refused?: string;
}

/** Makes a film. `onFrame` hears how many frames are done, and how many there are. */
export const makeFilm = async (
  film: Film,
  { assets, ffmpeg, ...ground }: FilmGround,
  onFrame: (done: number, total: number) => void = () => {},
): Promise<MadeFilm> => {
  const faces = await openFaces(assets, readFaces());
  const frames = framesOf(film, { ...ground, faces });
  const counting = (): (() => void) => {
    let done = 0;
    return () => onFrame(++done, film.frames);
  };
  let refused: string | undefined;
  if (ffmpeg !== undefined) {
    const encoded = await encodeWithFfmpeg(ffmpeg, frames, MOST_BYTES, counting());
    if ('bytes' in encoded) return { bytes: encoded.bytes, encoder: 'ffmpeg' };
    refused = encoded.refused;
  }
  const bytes = await encodeEmbedded(frames, MOST_BYTES, counting());
  return { bytes, encoder: 'embedded', ...(refused !== undefined && { refused }) };
};
