/** The clip as a film: its shots over the stills that there are, and its words in time. */

import type { Cycle, Picture, Take } from '../../model/box.ts';
import { typedAddress } from '../../model/calls.ts';
import type { LiveInput } from '../../model/cues.ts';
import { FILM_FILE } from '../../model/pieces.ts';
import type { Clip, Shot } from '../../render/clip-shots.ts';
import { schemesOf } from '../../render/colours.ts';
import { FILM_SIZE, type Film, type FilmMove, type FilmOutput, type FilmShot } from '../../render/film.ts';
import type { PictureSource } from '../../render/pictures.ts';

/** What of a picture its pixels depend on, so that a new word for it makes no new film. */
const sourceOf = ({ file, hash, width, height, focus }: Picture): PictureSource => ({
  file,
  hash,
  width,
  height,
  ...(focus && { focus }),
});

/** How the shots of things follow one another: sideways to and fro, then nearer. */
const MOVES: readonly FilmMove[] = ['rightward', 'nearer', 'leftward', 'farther'];

/** A thing's own shot goes on from picture to picture; the whole box is left slowly. */
const moveOf = (shot: Shot, place: number): FilmMove =>
  shot.kind === 'whole'
    ? 'farther'
    : shot.kind === 'hook'
      ? 'nearer'
      : (MOVES[place % MOVES.length] ?? 'nearer');

/** A picture for the first words: of the lead item another one than its own shot shows, else what heads the article. */
const hookStill = ({ items, hero }: Cycle, shots: readonly Shot[]): Picture | undefined => {
  const shown = new Set(shots.flatMap(({ still }) => still?.hash ?? []));
  return [...(items[0]?.pictures ?? []), ...(hero ? [hero] : [])].find(({ hash }) => !shown.has(hash));
};

const takeFor = ({ takes }: Cycle, { kind, item }: Shot): Take | undefined =>
  kind === 'hook' ? takes?.hook : kind === 'whole' ? takes?.whole : item?.take;

/** A clip as a film. Whoever has a frame of it in mind asks `at`, so that shots and words share their frames. */
export const filmOf = (clip: Clip, { cycle, settings, call }: LiveInput): Film => {
  const { light, dark } = schemesOf(cycle.palette);
  const at = (milliseconds: number): number => Math.round((milliseconds * FILM_SIZE.rate) / 1000);
  const first = hookStill(cycle, clip.shots);
  const shots = clip.shots.map((shot, place): FilmShot => {
    const take = takeFor(cycle, shot);
    const still = shot.kind === 'hook' ? first : shot.still;
    return {
      from: at(shot.start),
      to: at(shot.end),
      seen:
        still && shot.kind !== 'call'
          ? { view: 'still', still: sourceOf(still), move: moveOf(shot, place) }
          : { view: 'card', ground: shot.kind === 'hook' ? 'accent' : 'paper' },
      ...(take && { take: { ...take, cycle: cycle.id } }),
      words: shot.overlays.map(({ start, end, text }) => ({ from: at(start), to: at(end), text })),
      ...(shot.kind === 'call' && call
        ? { under: { address: typedAddress(settings, call), name: settings.name } }
        : {}),
    };
  });
  return {
    ...FILM_SIZE,
    frames: at(clip.length),
    lang: settings.lang,
    colours: {
      paper: light.paper,
      ink: light.ink,
      accent: light.accent,
      onAccent: light.onAccent,
      night: dark.paper,
      onNight: light.paper,
    },
    shots,
  };
};

/** The film that a cycle's back room is to have; none for a cycle without a thing. */
export const filmOutput = (clip: Clip, told: LiveInput): readonly FilmOutput[] =>
  told.cycle.items.length === 0
    ? []
    : [
        {
          where: 'backroom',
          path: `${told.cycle.id}/${FILM_FILE}`,
          cycle: told.cycle.id,
          film: filmOf(clip, told),
        },
      ];
