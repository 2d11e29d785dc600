import { expect, test } from 'vitest';
import { matchPhotos } from '../../src/workspace/begin/match-photos.ts';

const THINGS = [
  { name: 'Wooden seed tray, 30 × 12 cm', kind: 'seed tray', hasPicture: false },
  { name: 'Brass plant mister', kind: 'plant mister', hasPicture: false },
  { name: 'Heather honey', kind: 'honey', hasPicture: false },
];

const shownBy = (names: readonly (string | readonly [string, number])[], things = THINGS) =>
  Object.fromEntries(
    matchPhotos(
      names.map((one) =>
        typeof one === 'string' ? { name: one, taken: 0 } : { name: one[0], taken: one[1] },
      ),
      things,
    ).map(({ photo, shows }) => [photo.name, shows]),
  );

type Case = readonly [names: readonly string[], shows: readonly (number | 'box' | undefined)[]];

const WRITTEN_WITH: readonly Case[] = [
  [
    ['tray.jpg', 'mister.HEIC', 'honey.png'],
    [0, 1, 2],
  ],
  [
    ['SeedTray.jpg', 'brass_mister-2.jpeg', 'jar of honey.jpg'],
    [0, 1, 2],
  ],
  [
    ['whole-box.jpg', 'tray 1.jpg', 'tray 2.jpg'],
    ['box', 0, 0],
  ],
  [
    ['1.jpg', '2.jpg', '3.jpg'],
    [0, 1, 2],
  ],
  [
    ['IMG_0412.HEIC', 'IMG_0413.HEIC', 'IMG_0414.HEIC'],
    [0, 1, 2],
  ],
];

/** Read for the first time after the rules stood. */
const KEPT_ASIDE: readonly Case[] = [
  [
    ['unboxing.jpg', 'wooden seed trays.JPG', 'plantmister.jpg'],
    ['box', 0, 1],
  ],
  [
    ['01-tray.jpg', '02 - the brass thing.jpg', '03_jar.jpg'],
    [0, 1, 2],
  ],
  [
    ['box-2026-05.jpg', 'Mistr.jpg', 'HONEY close up (1).jpeg'],
    ['box', 1, 2],
  ],
  [
    ['IMG-20260503-WA0007.jpg', 'honey.jpg', 'tray-detail.webp'],
    [1, 2, 0],
  ],
  [
    ['seed.jpg', 'everything in the box.jpg', 'plant mister brass final v2.jpg'],
    [0, 'box', 1],
  ],
];

test.each([...WRITTEN_WITH, ...KEPT_ASIDE])('%j', (names, shows) => {
  expect(shownBy(names)).toEqual(Object.fromEntries(names.map((name, i) => [name, shows[i]])));
});

test('runs of a camera are parted where most time passed, and the box comes first where one is too many', () => {
  const minute = 60_000;
  expect(
    shownBy([
      ['IMG_1.jpg', 0],
      ['IMG_2.jpg', 5 * minute],
      ['IMG_3.jpg', 5 * minute + 3000],
      ['IMG_4.jpg', 9 * minute],
      ['IMG_5.jpg', 13 * minute],
    ]),
  ).toEqual({ 'IMG_1.jpg': 'box', 'IMG_2.jpg': 0, 'IMG_3.jpg': 0, 'IMG_4.jpg': 1, 'IMG_5.jpg': 2 });
});

test('where no order is clear, nothing is guessed', () => {
  const names = Array.from({ length: 7 }, (_, i) => [`IMG_${i}.jpg`, i * 60_000] as const);
  expect(new Set(Object.values(shownBy(names)))).toEqual(new Set([undefined]));
});

test('a thing that is a box itself is no whole box', () => {
  const things = [{ name: 'Oak seed box', kind: 'seed box', hasPicture: false }, ...THINGS.slice(1)];
  expect(shownBy(['seed-box.jpg', 'the whole box.jpg'], things)).toEqual({
    'seed-box.jpg': 0,
    'the whole box.jpg': 'box',
  });
});
