/** The film among the pieces: made when it is asked for, shown when it is there. */
import { FILM_FILE } from '../../model/pieces.ts';
import { type FindingView, findingViews } from '../../render/findings.ts';
import type { Html } from '../../render/html.ts';
import { type Context, momentToSee, openedOf, shownAddress } from '../context.ts';
import { filmOfCycle, makeCycleFilm } from '../films.ts';
import type { Shown } from '../table.ts';
import { type WorkView, workView } from '../work-view.ts';

interface FilmView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  readonly told: string;
  readonly work: WorkView | undefined;
  /** The film's address where it is made, else empty. */
  readonly src: string;
  readonly file: string;
  readonly subtitles: string;
  readonly lang: string;
  readonly make: string;
  readonly findings: readonly FindingView[];
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/film': FilmView;
  }
}

/** The film's part of the page; undefined where the cycle has none. */
export const filmPart = (context: Context, shown: Shown, at: string): Html | undefined => {
  const { table, words, wording, id, token, works, settings } = context;
  const film = filmOfCycle(table, shown, id);
  if (!film) return undefined;
  const state = works.films.stateOf(film.key);
  const address = (file: string): string =>
    shownAddress(momentToSee(context), `backroom/${id}/${file}`, openedOf(context));
  const { film: told } = words.pieces;
  const lines = [
    told.lead(Math.round(film.film.frames / film.film.rate)),
    ...(film.isMade || state?.kind === 'at work' ? [] : [told.notYet]),
    ...(state?.kind === 'stopped' ? [told.stopped] : []),
    ...(state?.kind === 'failed' ? [told.failed(state.said)] : []),
  ];
  // What was found while it was made goes on from there: of a made film the same is remembered.
  const found = state?.kind === 'done' ? state.value : [];
  const known = new Set(film.findings.map(({ message }) => message));
  const findings = [...film.findings, ...found.filter(({ message }) => !known.has(message))];
  return table.templates().render('desk/film', {
    words,
    token,
    at,
    told: lines.join(' '),
    work: state?.kind === 'at work' ? workView(state, told.at, words) : undefined,
    src: film.isMade ? address(FILM_FILE) : '',
    file: `${id}-${FILM_FILE}`,
    subtitles: shown.files.has(`backroom/${id}/clip.vtt`) ? address('clip.vtt') : '',
    lang: settings?.lang ?? 'en',
    make: state ? told.again : told.make,
    findings: findingViews(findings, wording.findings),
  });
};

/** Makes the film, or stops that. */
export const actOnFilm = ({ table, works, id }: Context, shown: Shown, action: string): void => {
  const film = filmOfCycle(table, shown, id);
  if (!film) return;
  if (action === 'stop') works.films.stop(film.key);
  if (action === 'make' && !film.isMade)
    works.films.start(film.key, (working) => makeCycleFilm(table, film, working));
};
