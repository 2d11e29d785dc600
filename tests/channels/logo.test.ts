/** The box's logo in the site, its feeds and its letters. */
import { describe, expect, test } from 'vitest';
import { assets } from '../../src/channels/assets.ts';
import { feeds } from '../../src/channels/feeds.ts';
import { letter } from '../../src/channels/letter/index.ts';
import type { Box, Picture } from '../../src/model/box.ts';
import { schemesOf } from '../../src/render/colours.ts';
import { box, picture, settings } from '../support/box.ts';
import { carriedOut } from '../support/carried-out.ts';
import { privateInput, publicInput } from '../support/demo-box.ts';

const NOW = Date.UTC(2026, 2, 27);
const BASE = 'https://sillandsprig.example/';

const boxWith = (logo?: Partial<Picture>): Box =>
  box({
    settings: settings({
      pieces: ['letter'],
      ...(logo && { logo: picture({ file: 'photos/logo.png', alt: 'The box’s own words', ...logo }) }),
    }),
  });
const MARK = boxWith({ width: 900, height: 900 });
const LETTERING = boxWith({ width: 1800, height: 300 });

const filesOf = async (given: Box) => (await carriedOut(assets, await publicInput(given, NOW))).outputs;
const logoFile = async (given: Box) =>
  (await filesOf(given)).flatMap((file) => ('picture' in file ? [file] : []));

const textOf = async (given: Box, name: 'feed.xml' | 'feed.json' | 'letter.html'): Promise<string> => {
  const { outputs } =
    name === 'letter.html'
      ? await carriedOut(letter, await privateInput(given, NOW))
      : await carriedOut(feeds, await publicInput(given, NOW));
  const found = outputs.find(({ path }) => path.endsWith(name));
  return found && 'text' in found ? found.text : '';
};

/** The markup of a letter's head, as far as its line. */
const headOf = async (given: Box): Promise<string> =>
  /<td class="masthead[\s\S]*?The March 2026 box/.exec(await textOf(given, 'letter.html'))?.[0] ?? '';

describe('the file of a logo', () => {
  test.each([
    ['logo.png', [900, 900], [512, 512, 'png']],
    ['logo.webp', [1800, 300], [672, 112, 'png']],
    ['logo.JPG', [200, 400], [200, 400, 'jpeg']],
    ['logo.heic', [4000, 3000], [512, 384, 'jpeg']],
  ] as const)('%s of %s pixels is %s, whole, and never enlarged', async (file, [width, height], wanted) => {
    const [made, ...others] = await logoFile(boxWith({ file: `photos/${file}`, width, height }));
    expect(others).toEqual([]);
    const [w, h, format] = wanted;
    expect(made?.picture).toMatchObject({ width: w, height: h, format });
  });

  test('is not there where the box has none', async () => {
    expect(await logoFile(boxWith())).toEqual([]);
  });
});

test('the feeds name it: Atom any, JSON Feed one that is about square, as its `icon` has to be', async () => {
  const address = async (given: Box) => `${BASE}${(await logoFile(given))[0]?.path}`;
  for (const given of [MARK, LETTERING])
    expect(await textOf(given, 'feed.xml')).toContain(`<logo>${await address(given)}</logo>`);
  expect(JSON.parse(await textOf(MARK, 'feed.json'))).toMatchObject({ icon: await address(MARK) });
  expect(JSON.parse(await textOf(LETTERING, 'feed.json'))).not.toHaveProperty('icon');
  expect(await textOf(boxWith(), 'feed.xml')).not.toContain('<logo>');
});

describe('at the head of a letter', () => {
  test('a mark stands beside the name, and is passed over where pictures are off', async () => {
    const head = await headOf(MARK);
    expect(head).toMatch(/<img class="logo"[^>]* width="56" height="56" alt=""/);
    expect(head).toMatch(/<p class="name ink"[^>]*>Sill &amp; Sprig<\/p>/);
  });

  test('lettering stands for the name and says it where pictures are off, at most 260 pixels wide and 64 high', async () => {
    const head = await headOf(LETTERING);
    expect(head).toMatch(/<img class="logo name"[^>]* width="260" height="43" alt="The box’s own words"/);
    expect(head).not.toContain('Sill &amp; Sprig</p>');
    expect(await headOf(boxWith({ width: 1000, height: 500 }))).toMatch(/ width="128" height="64"/);
  });

  test('either keeps its light ground in the dark, with the ink of its words', async () => {
    const { light } = schemesOf(settings().palette);
    for (const given of [MARK, LETTERING]) {
      const tag = /<img class="logo[^>]*>/.exec(await headOf(given))?.[0];
      expect(tag).toContain(`background-color: ${light.paper}; color: ${light.ink};`);
      // A class that the dark rules name would turn it.
      expect(tag).not.toMatch(/class="[^"]*\b(?:paper|wash|ink|soft)\b/);
    }
  });

  test('without one the name is set in type alone', async () => {
    expect(await headOf(boxWith())).not.toContain('<img');
  });
});
