/** What a film of the demo's photos costs: seconds a second of film, bytes, and the most memory, by encoder and length. */
import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import { findFfmpeg } from '../../src/io/film/find-ffmpeg.ts';
import { makeFilm } from '../../src/io/film/make-film.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import { schemesOf } from '../../src/render/colours.ts';
import { FILM_SIZE, type Film, fillsFrame } from '../../src/render/film.ts';
import { MOST_ENLARGED } from '../../src/render/tall-picture.ts';

const content = 'content';
const NAMES = [
  'wooden-seed-tray',
  'seed-packets',
  'wooden-dibber',
  'copper-plant-labels',
  'brass-plant-mister',
];
const { assets } = readTemplates({ own: 'templates', theirs: 'none', scripts: 'none' });
const ffmpeg = findFfmpeg(process.env.PATH);

/** A film of so many seconds, of the demo's March photos. */
const filmOf = (seconds: number): Film => {
  const frames = seconds * FILM_SIZE.rate;
  const { light, dark } = schemesOf(['#5f7358']);
  return {
    ...FILM_SIZE,
    frames,
    lang: 'en-GB',
    colours: { ...light, night: dark.paper, onNight: light.paper },
    shots: NAMES.map((name, i) => {
      const [from, to] = [i, i + 1].map((one) => Math.round((one * frames) / NAMES.length)) as [
        number,
        number,
      ];
      const file = `cycles/2026-03/photos/${name}.jpg`;
      readFileSync(`${content}/${file}`);
      return {
        from,
        to,
        seen: {
          view: 'still',
          still: { file, hash: name, width: 1280, height: 1600 },
          move: (['rightward', 'nearer', 'leftward', 'farther'] as const)[i % 4] ?? 'nearer',
        },
        words: [{ from, to, text: 'A pine tray with an education, and a mister to go with it.' }],
      };
    }),
  };
};

const lengths = (process.env.LIDLORE_FILM_SECONDS ?? '15,60').split(',').map(Number);

for (const seconds of lengths)
  for (const program of [ffmpeg, undefined])
    test(`a film of ${seconds} s, ${program ? 'ffmpeg' : 'embedded'}`, async () => {
      const film = filmOf(seconds);
      let most = 0;
      const watching = setInterval(() => {
        most = Math.max(most, process.memoryUsage.rss());
      }, 50);
      const [began, worked] = [performance.now(), process.cpuUsage()];
      const { bytes } = await makeFilm(film, {
        content,
        assets,
        mostEnlarged: MOST_ENLARGED,
        fillsFrame: (still) => fillsFrame(still, film),
        pathOf: () => undefined,
        ...(program !== undefined && { ffmpeg: program }),
      });
      clearInterval(watching);
      const { user, system } = process.cpuUsage(worked);
      const took = (performance.now() - began) / 1000;
      console.log(
        `${seconds} s, ${program ? 'ffmpeg' : 'embedded'}: ${(took / seconds).toFixed(2)} s a second of film (${((user + system) / 1e6 / seconds).toFixed(2)} s of work in this process), ${(bytes.length / 1e6).toFixed(1)} MB, at most ${(most / 1e6).toFixed(0)} MB of memory`,
      );
    }, 1_200_000);
