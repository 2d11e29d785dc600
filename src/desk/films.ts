/** Films of what is drawn: which there are, and the making of one where somebody asks for it. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { FILM_FILE } from '../model/pieces.ts';
import { type KeyedFilm, keyedFilms, madeFindings, takeFindings } from '../workspace/films.ts';
import type { Shown, Table } from './table.ts';
import type { Working } from './works.ts';

/** The film of a cycle. */
export interface CycleFilm extends KeyedFilm {
  readonly isMade: boolean;
  /** What is wrong with its takes, and what was when it was made. */
  readonly findings: readonly Diagnostic[];
}

/** The film that the papers of a cycle ask for; undefined for a cycle without one. */
export const filmOfCycle = (table: Table, { films }: Shown, cycle: string): CycleFilm | undefined => {
  const ground = table.filmGround();
  const own = films.filter((film) => film.cycle === cycle);
  const [film] = keyedFilms(own, ground);
  if (!film) return undefined;
  const isMade = table.films.has(film.key);
  return {
    ...film,
    isMade,
    findings: [...takeFindings([film], ground), ...(isMade ? madeFindings(film, table.films) : [])],
  };
};

/** A made film by its place in the back room. */
export const filmAt = (table: Table, shown: Shown, path: string): Uint8Array | undefined => {
  const cycle = path.endsWith(`/${FILM_FILE}`) ? path.split('/').at(-2) : undefined;
  const film = cycle === undefined ? undefined : filmOfCycle(table, shown, cycle);
  return film && `${film.where}/${film.path}` === path ? table.films.recall(film.key) : undefined;
};

/** Makes a film; gives what was found on the way. */
export const makeCycleFilm = async (
  table: Table,
  film: KeyedFilm,
  { onProgress, signal }: Working,
): Promise<readonly Diagnostic[]> => {
  const { diagnostics, film: made } = await table.makeFilm(film, table.filmGround(), {
    made: table.films,
    signal,
    onFilm: (_, done, total) => onProgress(done, total),
  });
  // The back room's pages name it from now on.
  if (made) table.redraw();
  return diagnostics;
};
