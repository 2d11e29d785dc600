import { join } from 'node:path';
import { expect, test } from 'vitest';
import { rememberedPictures } from '../../src/io/memory/remembered-pictures.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import { FILM_SIZE } from '../../src/render/film.ts';
import { filmKeys, type KeyedFilm, madeFindings, makeAndKeep } from '../../src/workspace/films.ts';
import { temporary } from '../io/temporary.ts';

const take = { cycle: '2026-03', name: 'tray.mov', from: 4 };

const film: KeyedFilm = {
  where: 'backroom',
  path: '2026-03/clip.mp4',
  cycle: '2026-03',
  key: 'a'.repeat(64),
  film: {
    ...FILM_SIZE,
    frames: 3,
    lang: 'en-GB',
    colours: {
      paper: '#faf7f2',
      ink: '#22201c',
      accent: '#8a4b00',
      onAccent: '#ffffff',
      night: '#1c1a17',
      onNight: '#faf7f2',
    },
    shots: [
      {
        from: 0,
        to: 3,
        take,
        words: [],
        seen: {
          view: 'still',
          move: 'nearer',
          still: { file: 'gone.jpg', hash: 'a', width: 1080, height: 1920 },
        },
      },
    ],
  },
};

const templates = readTemplates({ own: 'templates', theirs: 'none', scripts: 'none' });

test('a film that cannot be made is a finding, and nothing is remembered of it', async () => {
  const content = await temporary({});
  const made = rememberedPictures(join(content, 'films'));
  const done = await makeAndKeep(film, { content, templates }, { made });
  expect(done.film).toBeUndefined();
  expect(done.diagnostics).toMatchObject([{ rule: 'film-missing', weight: 'look at' }]);
  expect(made.has(film.key)).toBe(false);
});

test('what was wrong with a take is told of by every build for as long as its film is remembered', async () => {
  const content = await temporary({});
  const made = rememberedPictures(join(content, 'films'));
  const [, problems] = filmKeys(film);
  expect(madeFindings(film, made)).toEqual([]);
  made.keep(problems as string, Buffer.from(JSON.stringify([{ take, seconds: 1.2, needed: 3 }])));
  const again = rememberedPictures(join(content, 'films'));
  expect(madeFindings(film, again)).toMatchObject([
    { rule: 'film-take', message: expect.stringContaining('`tray.mov` of 1.2 seconds') },
  ]);
});
