import { describe, expect, test } from 'vitest';
import { readBoxRecord, readCycleRecords } from '../../src/content/read.ts';
import type { PhotoSource } from '../../src/content/sources.ts';
import type { Cycle, Story } from '../../src/model/box.ts';
import { targetsOf } from '../../src/model/link.ts';
import { type LinkContext, linkCycle } from '../../src/model/link-cycle.ts';
import { cycleSettingsOf, linkSettings } from '../../src/model/link-settings.ts';
import { sha256 } from '../../src/text/hash.ts';
import { cycle as cycleWords } from '../../src/wording/en/cycle.ts';
import { caseOf } from '../support/dictionary.ts';
import { readFrontMatter } from '../support/read-front-matter.ts';
import { photosOf, sourcesOf, textsByCycle, wholeBox } from '../support/whole-box.ts';

const BOX = `---
name: A Box
url: https://example.org/
lang: en
timeZone: Europe/London
currency: GBP
description: A box.
author: A. Writer
calls: {join: {address: "https://example.org/join", text: Join}}
call: join
---
`;
const cycle = (body = ''): string => `---
theme: First
summary: A teapot and a tin of tea, and how the two of them came to be in one box in the end.
shipped: 2026-01-06
reveal: 2026-01-20T19:00
peek: {text: Tea.}
---
${body}`;
const item = (body = '', more = ''): string => `---
name: Teapot
kind: teapot
lead: true
brand: A Potter
description: A teapot.
${more}---
${body}`;
const FILES: Readonly<Record<string, string>> = {
  'box.md': BOX,
  'cycles/2026-01/cycle.md': cycle(
    'See [the pot](../2026-02/items/01-pot.md).\n\n![A lid](photos/lid.jpg)\n',
  ),
  'cycles/2026-01/items/01-teapot.md': item('Nothing is named here.'),
  'cycles/2026-02/cycle.md': cycle(),
  'cycles/2026-02/items/01-pot.md': item('', 'image: {file: pot.jpg, alt: A pot}\n'),
};
const photo = (path: string, more: Partial<PhotoSource> = {}): PhotoSource => ({
  path,
  hash: sha256(path),
  width: 3000,
  height: 2000,
  tint: '#8a9a7b',
  dominant: '#b87333',
  ...more,
});
const LID = 'cycles/2026-01/photos/lid.jpg';
const PHOTOS = [photo(LID), photo('cycles/2026-02/photos/pot.jpg')];

const linked = (files = FILES, photos: readonly PhotoSource[] = PHOTOS) => {
  const { linking: diagnostics, ...whole } = wholeBox(sourcesOf(files, photos));
  return { ...whole, diagnostics };
};
const firstCycle = (...given: Parameters<typeof linked>): Cycle => {
  const first = linked(...given).value?.cycles[0];
  if (!first) throw new Error('Expected a cycle');
  return first;
};
const [pathOfFirst, pathOfPot] = ['cycles/2026-01/cycle.md', 'cycles/2026-02/items/01-pot.md'];

/** Every place in a value where there is a key, and undefined under it. */
const undefinedIn = (value: unknown, path = ''): readonly string[] => {
  if (value === undefined) return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) => undefinedIn(below, `${path}.${key}`));
};

describe('a cycle', () => {
  test('read and linked by itself is what it is in the whole box, with the same findings', () => {
    const files = {
      ...FILES,
      'cycles/2026-01/items/02-cup.md': '---\nname: Cup\n---\n[nowhere](x.md)\n',
      'cycles/2026-02/items/01-pot.md': item('![](photos/pot.jpg)', 'spare: 4\nprice: 1.234\n'),
      'cycles/2026-03/cycle.md': '---\ntheme: 3\n---\n::box\n',
      'cycles/2026-03/items/01-can.md': item('![A can](photos/can.jpg)', 'category: [food]\n'),
      'cycles/oddly/notes.md': 'No month.',
    };
    const whole = linked(files);
    const sources = sourcesOf(files, PHOTOS);
    const targets = { targets: targetsOf(whole.records.value.cycles), photos: photosOf(sources) };
    const box = readBoxRecord(sources.texts, readFrontMatter);
    const settings = linkSettings(box.value, targets);
    const context: LinkContext = {
      ...targets,
      settings: cycleSettingsOf(settings.value, box.value),
      titleWords: cycleWords,
      isTitleWorded: true,
      caseOf,
    };
    const alone = [...textsByCycle(sources)].reverse().map(([id, texts]) => {
      const read = readCycleRecords(id, texts, readFrontMatter);
      const made = read.value && linkCycle(read.value, context);
      return { read: read.diagnostics, link: made?.diagnostics ?? [], value: made?.value };
    });
    alone.reverse();
    expect(alone.flatMap(({ value }) => value ?? [])).toEqual(whole.value?.cycles);
    expect([...box.diagnostics, ...alone.flatMap(({ read }) => read)]).toEqual(whole.records.diagnostics);
    expect([...settings.diagnostics, ...alone.flatMap(({ link }) => link)]).toEqual(whole.diagnostics);
    const rules = whole.diagnostics.map(({ rule }) => rule).sort();
    expect(rules).toEqual([
      'caution',
      'caution',
      'link-missing',
      'month-shipped',
      'photo-missing',
      'picture-text',
      'price-decimals',
    ]);
  });

  test('says undefined nowhere but of a moment that nobody can know', () => {
    const { value } = linked({
      ...FILES,
      'cycles/2026-01/cycle.md': cycle().replace('2026-01-20T19:00', 'when-delivered'),
    });
    expect(undefinedIn(value)).toEqual(['.cycles.0.reveal']);
  });

  test('takes from the box no address, so that what stands in for a box cannot leave with one', () => {
    const facts = JSON.stringify(cycleSettingsOf(undefined, undefined));
    expect(facts).not.toMatch(/https?:|example|invalid/);
    const { 'box.md': _, ...orphans } = FILES;
    expect(linked(orphans).value).toBeUndefined();
    const settings = linked().value?.settings;
    expect(cycleSettingsOf(settings, undefined)).toEqual({
      author: 'A. Writer',
      calls: ['join'],
      currency: 'GBP',
      everyMonths: 1,
      lang: 'en',
      palette: ['#5f7358'],
      timeZone: 'Europe/London',
    });
  });
});

describe('a digest', () => {
  const before = firstCycle();
  test('of a record is that of its file’s text', () => {
    expect(before.source.digest).toBe(sha256(FILES[pathOfFirst] ?? ''));
    expect(before.items[0]?.source.digest).toBe(sha256(FILES['cycles/2026-01/items/01-teapot.md'] ?? ''));
  });

  test.each<[string, Parameters<typeof linked>]>([
    ['what an item elsewhere says of itself', [{ ...FILES, [pathOfPot]: item('Another story.') }]],
    ['the item beside it', [{ ...FILES, 'cycles/2026-01/items/01-teapot.md': item('Another.') }]],
    [
      'a photo that it does not show',
      [FILES, [photo(LID), photo('cycles/2026-02/photos/pot.jpg', { tint: '#000000' })]],
    ],
  ])('of a story stays the same, as its tree does, whatever becomes of %s', (_, given) => {
    const after = firstCycle(...given);
    expect(after.story).toEqual(before.story);
  });

  test.each<[string, Parameters<typeof linked>]>([
    ['its words', [{ ...FILES, [pathOfFirst]: `${FILES[pathOfFirst]} ` }]],
    [
      'the lines before it',
      [{ ...FILES, [pathOfFirst]: (FILES[pathOfFirst] ?? '').replace('---\n', '---\n\n') }],
    ],
    ['the name of the item it leads to', [{ ...FILES, [pathOfPot]: item('', 'slug: pot-of-tea\n') }]],
    [
      'whether that item is there',
      [Object.fromEntries(Object.entries(FILES).filter(([path]) => path !== pathOfPot))],
    ],
    ['the photo it shows', [FILES, [photo(LID, { hash: sha256('another') })]]],
    ['that photo’s size', [FILES, [photo(LID, { height: 1999 })]]],
    ['that photo’s colour', [FILES, [photo(LID, { tint: '#8a9a7c' })]]],
    ['whether that photo is there', [FILES, []]],
  ])('of a story is another one with %s', (_, given) => {
    expect(firstCycle(...given).story.digest).not.toBe(before.story.digest);
  });

  test('of a story with the same words in another file is another one', () => {
    const { value } = linked({ ...FILES, [pathOfPot]: item('Nothing is named here.') });
    const digests = value?.cycles.map(({ items }) => items[0]?.story.digest);
    expect(new Set(digests).size).toBe(2);
  });
});

test('a story says which cycles it leads to', () => {
  const [first, second] = linked().value?.cycles ?? [];
  const led = (one: { readonly story: Story } | undefined) => one?.story.leadsTo;
  expect([led(first), led(first?.items[0]), led(second)]).toEqual([['2026-02', '2026-01'], [], []]);
});
