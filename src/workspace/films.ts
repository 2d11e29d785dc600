/** The films of a box: which are wanted now, which are made already, and the making of one. */
import type { Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import type { MadeFilm } from '../io/film/make-film.ts';
import { takePath, takeStamp } from '../io/film/take-file.ts';
import type { RememberedPictures } from '../io/memory/remembered-pictures.ts';
import type { PublishedFile } from '../io/publish/index.ts';
import type { ReadTemplates } from '../io/read-templates.ts';
import type { Box, Cycle, Moment } from '../model/box.ts';
import { isSealed } from '../model/seal.ts';
import { type FilmOutput, type FilmTake, fillsFrame, filmKey, MOST_ENLARGED } from '../render/film.ts';
import { digestOf } from '../text/digest.ts';
import { remembered } from '../text/remembered.ts';

/** A film under the key of all that it is made of. */
export interface KeyedFilm extends FilmOutput {
  readonly key: string;
}

type MadeTake = MadeFilm['takes'][number];

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

const takesIn = ({ film }: FilmOutput): readonly FilmTake[] => film.shots.flatMap(({ take }) => take ?? []);

/** Where films find what they are made of. */
export interface FilmGround {
  /** The content folder. */
  readonly content: string;
  readonly templates: ReadTemplates;
  /** The machine's encoder, where it has one: takes are read by it. */
  readonly ffmpeg?: string;
}

/** Films with their keys. A take is known by its file's size and time, because it may be larger than all else together. */
export const keyedFilms = (
  films: readonly FilmOutput[],
  { content, templates, ffmpeg }: FilmGround,
): readonly KeyedFilm[] =>
  films.map((film) => {
    const takes = takesIn(film).map((take) => takeStamp(content, take));
    return { ...film, key: filmKey(film.film, fontsDigest(templates), ffmpeg === undefined ? [] : takes) };
  });

const inCycle = (cycle: string): Location => ({ file: `cycles/${cycle}/cycle.md`, line: 1, column: 1 });

/** What is wrong with the takes of films before these are made. */
export const takeFindings = (
  films: readonly FilmOutput[],
  { content, ffmpeg }: FilmGround,
): readonly Diagnostic[] =>
  films.flatMap((film) =>
    takesIn(film).flatMap((take): readonly Diagnostic[] => {
      const finding = { rule: 'film-take', location: inCycle(film.cycle) };
      if (takePath(content, take) === undefined)
        return [
          {
            ...finding,
            weight: 'look at',
            message: `Unexpected \`${take.name}\`, expected a filmed piece in cycles/${take.cycle}/takes/; its photo is shown instead`,
            fix: 'Put the file there, or take its line out of the record',
          },
        ];
      return ffmpeg !== undefined
        ? []
        : [
            {
              ...finding,
              weight: 'note',
              message: `Unexpected filmed piece \`${take.name}\` on a computer without ffmpeg, which reads it; its photo is shown instead`,
              fix: 'Install ffmpeg, and run lidlore film',
            },
          ];
    }),
  );

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
  location: inCycle(cycle),
  message: `Unexpected answer of ffmpeg (${said.split('\n').at(-1)}), expected a film; it was made without it`,
  fix: 'Nothing has to be done, the film is whole; where films should be made faster, install ffmpeg anew',
});

const notCutIn = (cycle: string, { take, seconds, needed }: MadeTake): Diagnostic => ({
  weight: 'look at',
  rule: 'film-take',
  location: inCycle(cycle),
  message:
    seconds === 0
      ? `Unexpected \`${take.name}\`, of which nothing can be seen from second ${take.from} on, expected a filmed piece; its photo is shown instead`
      : `Unexpected \`${take.name}\` of ${seconds.toFixed(1)} seconds from second ${take.from} on, expected ${needed.toFixed(1)}; its photo is shown instead`,
  fix:
    seconds === 0
      ? 'Copy it from the phone again, or write an earlier time behind its name'
      : 'Film a longer piece, or write an earlier time behind its name',
});

/** Makes a film and remembers it. */
export const makeAndKeep = async (
  { film, key, cycle, path }: KeyedFilm,
  { content, templates, ffmpeg }: FilmGround,
  { made, onFilm }: FilmTools,
): Promise<{ readonly film: FilmMade; readonly diagnostics: readonly Diagnostic[] }> => {
  const { makeFilm } = await import('../io/film/make-film.ts');
  const { bytes, encoder, refused, takes } = await makeFilm(
    film,
    {
      content,
      assets: templates.assets,
      pathOf: (take) => takePath(content, take),
      mostEnlarged: MOST_ENLARGED,
      fillsFrame: (still) => fillsFrame(still, film),
      ...(ffmpeg !== undefined && { ffmpeg }),
    },
    (done, total) => onFilm?.(cycle, done, total),
  );
  made.keep(key, bytes);
  return {
    film: { cycle, path, encoder, bytes: bytes.length, seconds: film.frames / film.rate },
    diagnostics: [
      ...(refused === undefined ? [] : [refusedBy(cycle, refused)]),
      ...takes.map((one) => notCutIn(cycle, one)),
    ],
  };
};
