/** The shoot list: what a cycle's pieces want photographed, and how far the photos that are there serve. */
import { describe, expect, test } from 'vitest';
import { shootList } from '../../../src/channels/shoot-list/index.ts';
import { judge } from '../../../src/channels/shoot-list/judge.ts';
import { type Need, needsOf, sizesOf } from '../../../src/channels/shoot-list/needs.ts';
import type { PhotoSource } from '../../../src/content/sources.ts';
import type { Cycle, Picture } from '../../../src/model/box.ts';
import { box, cycle, item, picture, settings } from '../../support/box.ts';
import { carriedOut } from '../../support/carried-out.ts';
import { privateInput } from '../../support/demo-box.ts';

const BEFORE = Date.UTC(2026, 2, 10);
const AFTER = Date.UTC(2026, 2, 27);

const photoOf = ({ file, hash, width, height }: Picture, sharpness = 900): PhotoSource => ({
  ...{ path: file, hash, width, height, tint: '#888888', dominant: '#888888', sharpness },
});

const upright = picture({
  file: 'cycles/2026-03/photos/mister.jpg',
  hash: 'b'.repeat(64),
  width: 1280,
  height: 1600,
});
const open = picture({
  file: 'cycles/2026-03/photos/box.jpg',
  hash: 'c'.repeat(64),
  width: 4000,
  height: 3000,
});

const listOf = async (
  given: Cycle,
  photos: readonly PhotoSource[],
  { asOf = BEFORE, pieces = ['article', 'letter', 'clip', 'cards'] as const } = {},
) => {
  const whole = box({ settings: settings({ pieces }), cycles: [given] });
  const input = { ...(await privateInput(whole, asOf)), photos: new Map([[given.id, photos]]) };
  const { outputs, diagnostics } = await carriedOut(shootList, input);
  const page = outputs.find(({ path }) => path === '2026-03/shoot-list.html');
  return {
    page: page && 'text' in page ? page.text.replace(/\s+/g, ' ') : undefined,
    thumbnails: outputs.flatMap((one) => ('picture' in one ? [`${one.where} ${one.path}`] : [])),
    rules: diagnostics.map(({ rule, message }) => `${rule}: ${message}`),
  };
};

const sectionOf = (page: string | undefined, id: string): string =>
  new RegExp(`<section aria-labelledby="${id}">(.*?)</section>`).exec(page ?? '')?.[1] ?? '';

describe('what is wanted', () => {
  const two = cycle({
    items: [item(), item({ slug: 'tray', lead: false, name: 'Seed tray', kind: 'seed tray' })],
  });
  const views = (pieces: Parameters<typeof needsOf>[1]): readonly string[] =>
    needsOf(two, pieces).map(
      ({ view, shape, item: one, isNeeded }) =>
        `${view} ${one?.slug ?? ''} ${shape}${isNeeded ? '' : ', would help'}`,
    );

  test('is each photograph once, however many pieces show it', () => {
    expect(views(['article', 'letter', 'clip', 'cards'])).toEqual([
      'open  wide',
      'open  upright',
      'alone plant-mister upright',
      'alone tray upright',
      'alone plant-mister wide',
      'with lead tray upright, would help',
      'in use plant-mister upright, would help',
      'hands  upright, would help',
      'closed  upright, would help',
    ]);
  });

  test('is nothing for pieces that show no photograph', () => {
    expect(views(['invitation', 'live'])).toEqual([]);
  });

  test('is as large as the piece that asks most', () => {
    const [alone] = needsOf(two, ['letter', 'cards']).filter(({ view }) => view === 'alone') as [Need];
    // 1080 × 1920 enlarged 1.3 times at most, and a letter's 640 × 800.
    expect(sizesOf(alone)).toEqual({
      least: { width: 831, height: 1477 },
      best: { width: 1080, height: 1920 },
    });
  });
});

describe('a photo is judged', () => {
  const [need] = needsOf(cycle({ items: [item()] }), ['cards']).filter(({ view }) => view === 'alone') as [
    Need,
  ];
  test.each([
    ['large, upright and sharp', { width: 3000, height: 4000, sharpness: 900 }, []],
    ['just large enough', { width: 831, height: 1477, sharpness: 900 }, []],
    ['a pixel too narrow', { width: 830, height: 1477, sharpness: 900 }, ['small']],
    ['much wider than tall', { width: 6000, height: 2000, sharpness: 900 }, ['shape']],
    ['blurred', { width: 3000, height: 4000, sharpness: 20 }, ['blurred']],
    ['perhaps not sharp', { width: 3000, height: 4000, sharpness: 150 }, []],
    ['never looked at', { width: 3000, height: 4000 }, []],
  ])('%s', (_, photo, faults) => {
    const found = judge(photo, need);
    expect(found.faults.map(({ kind }) => kind)).toEqual(faults);
    expect(found.unserved).toEqual(faults.length > 0 ? ['cards'] : []);
  });
});

describe('a shoot list', () => {
  test('of a cycle without a photo asks for all of them, and the build says so', async () => {
    const { page, rules, thumbnails } = await listOf(cycle({ items: [item()] }), []);
    expect(sectionOf(page, 'to-take')).toMatch(/The box, open.*mister/i);
    expect(sectionOf(page, 'there')).toBe('');
    expect(thumbnails).toEqual([]);
    expect(rules).toEqual([expect.stringMatching(/^photographs-missing: Unexpected 4 photographs missing/)]);
  });

  test('ticks what is there with its thumbnail, and says for which piece it does not do', async () => {
    const given = cycle({ items: [item({ pictures: [upright] })], wholeBox: open });
    const { page, thumbnails } = await listOf(given, [photoOf(upright), photoOf(open)]);
    expect(sectionOf(page, 'there')).toMatch(/thumbnails\/mister-\d+\.[0-9a-f]+\.jpg.*1280 × 1600, sharp/);
    expect(thumbnails.every((path) => /^backroom 2026-03\/thumbnails\//.test(path))).toBe(true);
    expect(thumbnails.length).toBeGreaterThan(1);
    const small = picture({ ...upright, width: 700, height: 900 });
    const poor = await listOf(cycle({ items: [item({ pictures: [small] })], wholeBox: open }), [
      photoOf(small),
    ]);
    expect(sectionOf(poor.page, 'to-take')).toMatch(/mister\.jpg is there, but too small/);
  });

  test('names photos of the folder that no record names', async () => {
    const given = cycle({ items: [item({ pictures: [upright] })], wholeBox: open });
    const stray = photoOf(picture({ file: 'cycles/2026-03/photos/IMG_4711.jpg', hash: 'd'.repeat(64) }), 20);
    const { page } = await listOf(given, [photoOf(upright), photoOf(open), stray]);
    expect(sectionOf(page, 'unplaced')).toMatch(/IMG_4711\.jpg.*blurred/);
    expect(sectionOf(page, 'unplaced')).not.toContain('mister.jpg');
  });

  test('has the film’s takes with their seconds, where the box makes a clip', async () => {
    const given = cycle({ items: [item()] });
    expect(sectionOf((await listOf(given, [])).page, 'takes')).toMatch(/\d+\.\d s/);
    expect(
      sectionOf((await listOf(given, [], { pieces: ['article', 'cards'] as never })).page, 'takes'),
    ).toBe('');
  });

  test('is not made for a cycle that was shown with all its photographs, nor for pieces without any', async () => {
    const whole = cycle({ items: [item({ pictures: [upright] })], wholeBox: open });
    const photos = [photoOf(upright), photoOf(open)];
    expect((await listOf(whole, photos, { asOf: AFTER, pieces: ['letter'] as never })).page).toBeUndefined();
    expect((await listOf(cycle({ items: [item()] }), [], { asOf: AFTER })).page).toBeDefined();
    expect(
      (await listOf(cycle({ items: [item()] }), [], { pieces: ['live'] as never })).page,
    ).toBeUndefined();
  });
});
