import { describe, expect, test } from 'vitest';
import { isCountry, isLanguage } from '../../src/content/codes.ts';
import { suggestedCategory } from '../../src/content/hurtful-kinds.ts';
import type { PhotoSource } from '../../src/content/sources.ts';
import { sourcesOf, wholeBox } from '../support/whole-box.ts';

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
`;
const CYCLE = `---
theme: First
summary: A teapot and a tin of tea, and how the two of them came to be in one box in the end.
shipped: 2026-01-06
reveal: 2026-01-20T19:00
`;
const ITEM = `---
name: Teapot
kind: teapot
lead: true
brand: A Potter
description: A teapot.
`;
interface Given {
  readonly box?: string;
  readonly cycle?: string;
  readonly item?: string;
  readonly body?: string;
  readonly more?: Readonly<Record<string, string>>;
  readonly photos?: readonly PhotoSource[];
}
const result = ({ box = '', cycle = '', item = '', body = '', more = {}, photos = [] }: Given) => {
  const files: Record<string, string> = {
    'box.md': `${BOX}${box}---\n`,
    'cycles/2026-01/cycle.md': `${CYCLE}${cycle}---\n`,
    'cycles/2026-01/items/01-teapot.md': `${ITEM}${item}---\n${body}`,
    ...more,
  };
  const { value, diagnostics } = wholeBox(sourcesOf(files, photos));
  return { box: value, findings: diagnostics };
};
const rules = (given: Given): string[] =>
  result(given).findings.map(
    ({ rule, location: place }) => `${rule} ${place.file.split('/').at(-1)}:${place.line}:${place.column}`,
  );

describe('YAML', () => {
  test.each([
    ['an alias to nothing', 'color: *red\n', 'yaml 01-teapot.md:7:8'],
    ['an alias that holds itself', 'material: &m [*m]\n', 'yaml 01-teapot.md:7:15'],
    [
      'aliases that multiply',
      `a: &a [x,x,x,x,x,x,x,x,x]\n${['ab', 'bc', 'cd', 'de', 'ef'].map(([p, n]) => `${n}: &${n} [${Array(9).fill(`*${p}`)}]\n`).join('')}`,
      'yaml 01-teapot.md:8:8',
    ],
    ['a tag', 'size: !large one\n', 'yaml 01-teapot.md:7:7'],
    ['a thousand brackets', `color: ${'['.repeat(5000)}\n`, 'text-size 01-teapot.md:7:'],
    ['a value that `#` hides', 'color: #8a9a7b\n', 'empty-key 01-teapot.md:7:1'],
    ['a closing line that is longer', '-----\n', 'front-matter 01-teapot.md:7:1'],
  ])('with %s is found at fault and never thrown', (_, item, finding) => {
    const found = rules({ item });
    expect(found).toHaveLength(1);
    expect(found[0]?.startsWith(finding)).toBe(true);
  });

  test('keeps digits as they were typed wherever text is meant', () => {
    const { box, findings } = result({
      box: 'postalAddress: {postalCode: 02134}\n',
      cycle: 'replay: {address: "https://example.org/r", minutes: 24}\n',
      item: 'size: 1.50\nprice: 4.50\nsku: 007\nalso: [0800]\ngtin: 0012345678905\n',
    });
    expect(findings).toEqual([]);
    expect(box?.settings.postalAddress?.postalCode).toBe('02134');
    expect(box?.cycles[0]?.replay?.minutes).toBe(24);
    expect(box?.cycles[0]?.items[0]).toMatchObject({
      size: '1.50',
      price: { amount: '4.50', currency: 'GBP' },
      sku: '007',
      also: ['0800'],
      gtin: '0012345678905',
    });
  });
});

describe('text below the fields', () => {
  test('of passages within passages without end is found at fault and never thrown', () => {
    expect(rules({ body: `${'>'.repeat(4000)} a\n` })).toEqual(['markdown-depth 01-teapot.md:8:1']);
  });

  test('is looked at though the fields are at fault', () => {
    expect(rules({ item: 'colour: red\n', body: '[May](../../2025-05/cycle.md)\n' })).toEqual([
      'unknown-key 01-teapot.md:7:1',
      'link-missing 01-teapot.md:9:1',
    ]);
  });

  test('places parts of the article in cycle.md alone, each on a line of its own', () => {
    const cycle = `${CYCLE}---\n> ::item[teapot]\n`;
    expect(rules({ body: '::box\n', more: { 'cycles/2026-01/cycle.md': cycle } })).toEqual([
      'placement 01-teapot.md:8:1',
      'placement cycle.md:7:3',
    ]);
  });
});

describe('a fault', () => {
  test.each([
    ['item', 'image: a.jpg\n', 'Unexpected `a.jpg`, expected a picture: the lines `file` and `alt` below it'],
    [
      'cycle',
      'voices: lovely\n',
      'Unexpected `lovely`, expected a voice: the lines `text`, `name` and `consent` below it',
    ],
    [
      'cycle',
      'voices:\n  - text: A\n    name: B\n    consent:\n',
      'Unexpected empty `consent` of no. 1 of `voices`, expected a date that exists, as 2026-03-19',
    ],
    ['item', 'image:\n', 'Unexpected empty `image`, expected a picture: the lines `file` and `alt` below it'],
    ['item', 'image: {file: a.jpg}\n', 'Unexpected `image` without `alt`, expected a line for it'],
    [
      'item',
      'colour: red\n',
      'Unexpected `colour`, expected `color`: there is no field called `colour` here',
    ],
    [
      'item',
      'spare: {count: 1, price: [4], address: "https://a.example/"}\n',
      'Unexpected list, expected an amount in digits, as 18.50',
    ],
    [
      'item',
      'priceCurrency: pounds\n',
      'Unexpected `pounds`, expected a currency in three capital letters, as GBP',
    ],
    ['item', 'price: £4.50\n', 'Unexpected `£4.50`, expected an amount in digits, as 18.50'],
    ['box', 'reveal: {time: 7pm}\n', 'Unexpected `7pm`, expected a time of day, as 19:00'],
    ['box', 'reveal: {share: 90}\n', 'Unexpected `90`, expected a share between 0 and 1, as 0.9'],
  ])('in a record of the %s, `%s`, is said in words an author knows', (record, text, message) => {
    expect(result({ [record]: text }).findings.map((finding) => finding.message)).toEqual([message]);
  });
});

test.each([
  ['item', 'category: [fod]\n', 'kind: teapot', 'kind: jam', 'category 01-teapot.md:7:12'],
  ['item', '', 'lead: true', 'lead: ture', 'lead 01-teapot.md:4:1'],
])('a key of an %s that is at fault is not said to be missing as well: %s', (_, more, from, to, finding) => {
  const text = `${ITEM}${more}---\n`.replace(from, to);
  expect(rules({ more: { 'cycles/2026-01/items/01-teapot.md': text } })).toEqual([finding]);
});

test.each([
  [69, true],
  [70, false],
  [160, false],
  [161, true],
])('a summary of %d characters is looked at: %s', (length, looked) => {
  const cycle = `${CYCLE.replace(/summary: .*/, `summary: ${'a'.repeat(length)}`)}---\n`;
  const found = rules({ more: { 'cycles/2026-01/cycle.md': cycle } });
  expect(found).toEqual(looked ? ['summary-length cycle.md:3:1'] : []);
});

test('a picture that cannot be used is found at fault where it is named', () => {
  const photo: PhotoSource = {
    path: 'cycles/2026-01/photos/a.jpg',
    hash: '',
    width: 0,
    height: 0,
    tint: '#888888',
    dominant: '#888888',
    problem: 'is cut short',
  };
  const given = { item: 'image: {file: a.jpg, alt: A teapot}\n', photos: [photo] };
  expect(rules(given)).toEqual(['photo-unusable 01-teapot.md:7:9']);
});

test('a photo that is named with its folder is told by what to write', () => {
  const photo: PhotoSource = {
    path: 'cycles/2026-01/photos/a.jpg',
    hash: 'ab'.repeat(32),
    width: 100,
    height: 80,
    tint: '#888888',
    dominant: '#888888',
  };
  const { findings } = result({ item: 'image: {file: photos/a.jpg, alt: A teapot}\n', photos: [photo] });
  expect(findings.map(({ rule, fix }) => [rule, fix])).toEqual([
    ['photo-missing', 'Write `a.jpg`, or put the photo there'],
  ]);
});

test('two cycles at one address are found at fault', () => {
  const second = `${CYCLE.replace('2026-01-06', '2026-02-06').replace('2026-01-20', '2026-02-20')}address: One\n---\n`;
  expect(rules({ cycle: 'address: one\n', more: { 'cycles/2026-02/cycle.md': second } })).toEqual([
    'address-twice cycle.md:6:1',
  ]);
});

test.each(['02-.md', '02-voices.md'])('an item in a file `%s` has no anchor of its own', (name) => {
  const item = `${ITEM}goesWith: Tea.\n`.replace('lead: true\n', '');
  expect(rules({ more: { [`cycles/2026-01/items/${name}`]: `${item}---\n` } })).toEqual([`slug ${name}:1:1`]);
});

test('`none` where a list is meant says that there is none', () => {
  const { box, findings } = result({ item: 'category: plant\ntoxicTo: none\nmayContain: none\n' });
  expect(findings).toEqual([]);
  expect(box?.cycles[0]?.items[0]?.hazards).toMatchObject({ toxicTo: [], mayContain: [] });
});

describe('codes', () => {
  test('languages are those that have a name, in regions that are countries', () => {
    expect(['en', 'en-GB', 'zh-Hans-CN', 'de-DE-1996', 'es-419'].map(isLanguage)).not.toContain(false);
    expect(['english', 'en-UK', 'en_GB', 'zz', ''].map(isLanguage)).not.toContain(true);
  });

  test('countries are ISO 3166-1’s', () => {
    expect(['GB', 'NL', 'JP'].map(isCountry)).not.toContain(false);
    expect(['UK', 'EU', 'ZZ', 'SU', 'gb', ''].map(isCountry)).not.toContain(true);
  });
});

test.each([
  ['hand creams', 'cosmetic'],
  ['plum jellies', 'food'],
  ['paring knives', 'blade'],
  ['seed packets', 'plant'],
  ['potted lilies', 'plant'],
  ['soap bar', 'cosmetic'],
  ['chocolate bar', 'food'],
  ['tea light', 'candle'],
  ['Secateurs', 'blade'],
  ['soap dish', undefined],
  ['tea towel', undefined],
  ['constructor', undefined],
])('the kind `%s` suggests %s', (kind, category) => {
  expect(suggestedCategory(kind)).toBe(category);
});

test('a piece that nobody makes is named with the nearest that is', () => {
  const [finding] = result({ box: 'pieces: [article, leter]\n' }).findings;
  expect(finding?.rule).toBe('pieces');
  expect(finding?.message).toMatch(/^Unexpected `leter`, expected `letter`, one of invitation, /);
});

test.each(['pieces: [article, window]', 'made: {window: 2026-01-21}'])(
  'a piece that does not exist yet is unknown, and nothing offers it: `%s`',
  (line) => {
    const { findings } = result({ [line.startsWith('made') ? 'cycle' : 'box']: `${line}\n` });
    expect(findings.map(({ rule }) => rule)).toEqual([line.startsWith('made') ? 'unknown-key' : 'pieces']);
    expect(findings[0]?.message).toMatch(
      /^Unexpected `window`, expected one of invitation, live, article, letter, clip, cards\b/,
    );
    expect(findings[0]?.fix ?? '').not.toContain('window');
  },
);

test.each([
  ['https://example.org/stop', 0],
  ['"%%stop%%"', 0],
  ['"<stop>"', 1],
  ['\'say "stop"\'', 1],
])('the way out of a letter may be %s: %i findings', (unsubscribe, count) => {
  const { findings } = result({ box: `unsubscribe: ${unsubscribe}\n` });
  expect(findings.map(({ rule }) => rule)).toEqual(Array(count).fill('unsubscribe'));
});
