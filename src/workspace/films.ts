/** The films of a box: which are wanted now, which are made already, and the making of one. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { RememberedPictures } from '../io/memory/remembered-pictures.ts';
import type { PublishedFile } from '../io/publish/index.ts';
import type { ReadTemplates } from '../io/read-templates.ts';
import type { Box, Cycle, Moment } from '../model/box.ts';
import { isSealed } from '../model/seal.ts';
import { type FilmOutput, fillsFrame, filmKey, MOST_ENLARGED } from '../render/film.ts';
import { digestOf } from '../text/digest.ts';
import { remembered } from '../text/remembered.ts';

/** A film under the key of all that it is made of. */
export interface KeyedFilm extends FilmOutput {
  readonly key: string;
}

/** A film that was made now. */
export interface FilmMade {
  readonly cycle: string;
  /** Its place in the back room. */
  readonly path: string;
  readonly encoder: 'ffmpeg' | 'embedded';
  readonly bytes: number;
  /** That it lasts. */
  readonly seconds: number;
}

/** How far the film of a cycle is, in frames. */
export type FilmProgress = (cycle: string, done: number, total: number) => void;

/** What making films takes. */
export interface FilmTools {
  /** Films between runs. */
  readonly made: RememberedPictures;
  /** The machine's encoder, where it has one. */
  readonly ffmpeg?: string;
  /** The cycles whose films are made; those that matter now where none are named. */
  readonly cycles?: readonly string[];
  readonly onFilm?: FilmProgress;
}

const fontsDigest = remembered(({ assets }: ReadTemplates) =>
  digestOf(assets.filter(({ path }) => path.startsWith('fonts/')).map(({ path, bytes }) => [path, bytes])),
);

/** Films with their keys. */
export const keyedFilms = (films: readonly FilmOutput[], templates: ReadTemplates): readonly KeyedFilm[] =>
  films.map((film) => ({ ...film, key: filmKey(film.film, fontsDigest(templates), []) }));

const hasPictures = ({ items }: Cycle): boolean => items.some(({ pictures }) => pictures.length > 0);

/**
 * The cycles whose films matter now: the one that was shown last, and the next to be shown, once it has things with
 * pictures.
 */
export const currentCycles = ({ cycles }: Box, asOf: Moment): readonly string[] => {
  const shown = cycles.findLast((cycle) => !isSealed(cycle, asOf));
  const next = cycles.find((cycle) => isSealed(cycle, asOf));
  return [shown, next].flatMap((cycle) => (cycle && hasPictures(cycle) ? [cycle.id] : []));
};

/** A made film as a file of the back room. */
export const filmFile = ({ path, key }: KeyedFilm, made: RememberedPictures): PublishedFile => ({
  path,
  key,
  step: 'asset',
  bring: async () => {
    const film = made.recall(key);
    if (!film) throw new Error(`Expected ${path} to be remembered`);
    return film;
  },
});

const refusedBy = (cycle: string, said: string): Diagnostic => ({
  weight: 'note',
  rule: 'film-encoder',
  location: { file: `cycles/${cycle}/cycle.md`, line: 1, column: 1 },
  message: `Unexpected answer of ffmpeg (${said.split('\n').at(-1)}), expected a film; it was made without it`,
  fix: 'Nothing has to be done, the film is whole; where films should be made faster, install ffmpeg anew',
});

/** Makes a film and remembers it. */
export const makeAndKeep = async (
  { film, key, cycle, path }: KeyedFilm,
  ground: { readonly content: string; readonly templates: ReadTemplates },
  { made, ffmpeg, onFilm }: FilmTools,
): Promise<{ readonly film: FilmMade; readonly diagnostics: readonly Diagnostic[] }> => {
  const { makeFilm } = await import('../io/film/make-film.ts');
  const { bytes, encoder, refused } = await makeFilm(
    film,
    {
      content: ground.content,
      assets: ground.templates.assets,
      mostEnlarged: MOST_ENLARGED,
      fillsFrame: (still) => fillsFrame(still, film),
      ...(ffmpeg !== undefined && { ffmpeg }),
    },
    (done, total) => onFilm?.(cycle, done, total),
  );
  made.keep(key, bytes);
  return {
    film: { cycle, path, encoder, bytes: bytes.length, seconds: film.frames / film.rate },
    diagnostics: refused === undefined ? [] : [refusedBy(cycle, refused)],
  };
};
