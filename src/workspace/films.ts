/** The films of a box: which are wanted now, which are made already, and the making of one. */
import type { Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import type { MadeFilm } from '../io/film/make-film.ts';
import { takePath, takeStamp } from '../io/film/take-file.ts';
import type { RememberedPictures } from '../io/memory/remembered-pictures.ts';
import type { PublishedFile } from '../io/publish/index.ts';
import type { ReadTemplates } from '../io/read-templates.ts';
import type { Box, Cycle, Moment } from '../model/box.ts';
import { isSealed } from '../model/seal.ts';
import { type FilmOutput, type FilmTake, fillsFrame, filmKey } from '../render/film.ts';
import { MOST_ENLARGED } from '../render/tall-picture.ts';
import { digestOf } from '../text/digest.ts';
import { sha256 } from '../text/hash.ts';
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
  /** Stops the making of a film. */
  readonly signal?: AbortSignal;
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

const softenedIn = (cycle: string, shots: number): Diagnostic => ({
  weight: 'look at',
  rule: 'film-soft',
  location: inCycle(cycle),
  message: `Unexpected ${shots === 1 ? 'shot' : `${shots} shots`} of a film too rich in small details for its 30 MB; ${shots === 1 ? 'it was' : 'they were'} made softer`,
  fix: 'Look at the film; install ffmpeg, which makes finer films of the same size, or take a calmer photo',
});

const notMade = (cycle: string, said: string): Diagnostic => ({
  weight: 'look at',
  rule: 'film-missing',
  location: inCycle(cycle),
  message: `Unexpected end of making the film (${said}), expected clip.mp4; all else is made`,
  fix: 'Make it once more (lidlore film, or at the desk); where it ends so again, install ffmpeg',
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

/** Under which its takes' problems are remembered beside a film, so that every build tells of them. */
const problemsKey = (key: string): string => sha256(`takes of ${key}`);

/** What a film and its takes are remembered under. */
export const filmKeys = ({ key }: KeyedFilm): readonly string[] => [key, problemsKey(key)];

const recallProblems = (key: string, made: RememberedPictures): readonly MadeTake[] => {
  const bytes = made.recall(problemsKey(key));
  return bytes ? JSON.parse(Buffer.from(bytes).toString('utf8')) : [];
};

/** What is wrong with the takes of a film that was made before. */
export const madeFindings = (
  { cycle, key, film }: KeyedFilm,
  made: RememberedPictures,
): readonly Diagnostic[] =>
  film.shots.some(({ take }) => take)
    ? recallProblems(key, made).map((problem) => notCutIn(cycle, problem))
    : [];

/** What making a film gave: no film where none could be made, and no finding either where that was stopped. */
export interface FilmOutcome {
  readonly film?: FilmMade;
  readonly diagnostics: readonly Diagnostic[];
}

/** Makes a film and remembers it; where none could be made, findings alone, and where it was stopped, nothing. */
export const makeAndKeep = async (
  { film, key, cycle, path }: KeyedFilm,
  { content, templates, ffmpeg }: FilmGround,
  { made, onFilm, signal }: FilmTools,
): Promise<FilmOutcome> => {
  const { makeFilm } = await import('../io/film/make-film.ts');
  let done: MadeFilm;
  try {
    done = await makeFilm(
      film,
      {
        content,
        assets: templates.assets,
        pathOf: (take) => takePath(content, take),
        mostEnlarged: MOST_ENLARGED,
        fillsFrame: (still) => fillsFrame(still, film),
        ...(ffmpeg !== undefined && { ffmpeg }),
        ...(signal && { signal }),
      },
      (frames, total) => onFilm?.(cycle, frames, total),
    );
  } catch (error) {
    if (signal?.aborted) return { diagnostics: [] };
    // All else is published by now: whatever goes wrong here takes the film alone.
    return { diagnostics: [notMade(cycle, error instanceof Error ? error.message : String(error))] };
  }
  const { bytes, encoder, refused, softened, takes } = done;
  made.keep(key, bytes);
  if (takes.length > 0) made.keep(problemsKey(key), Buffer.from(JSON.stringify(takes)));
  return {
    film: { cycle, path, encoder, bytes: bytes.length, seconds: film.frames / film.rate },
    diagnostics: [
      ...(refused === undefined ? [] : [refusedBy(cycle, refused)]),
      ...(softened === 0 ? [] : [softenedIn(cycle, softened)]),
      ...takes.map((one) => notCutIn(cycle, one)),
    ],
  };
};
