import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { currencyDecimals, isDate, isDateTime, isGtin, isTimeZone } from '../../src/content/codes.ts';
import { suggestedCategory } from '../../src/content/hurtful-kinds.ts';
import { parseMarkdown } from '../../src/content/markdown.ts';
import { recordReference } from '../support/record-reference.ts';
import { shareOf } from '../support/share-of.ts';
import { sourcesOf, wholeBox } from '../support/whole-box.ts';

const found = (files: Record<string, string>) => wholeBox(sourcesOf(files)).diagnostics;

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
const CYCLE = `---
theme: First
summary: A teapot and a tin of tea, and how the two of them came to be in one box in the end.
shipped: 2026-01-06
reveal: 2026-01-20T19:00
---
`;
const item = (more: string, body = ''): string => `---
name: Teapot
kind: teapot
lead: true
brand: A Potter
description: A teapot.
${more}---
${body}`;
const box = (record: string, more: Record<string, string> = {}) => ({
  'box.md': BOX,
  'cycles/2026-01/cycle.md': CYCLE,
  'cycles/2026-01/items/01-teapot.md': record,
  ...more,
});
const rules = (files: Record<string, string>): string[] =>
  found(files).map(
    ({ rule, location: place }) => `${rule} ${place.file.split('/').at(-1)}:${place.line}:${place.column}`,
  );

describe('an item', () => {
  test('that is in order gives no finding', () => {
    expect(found(box(item('')))).toEqual([]);
  });

  test.each([
    ['price: 4.555\n', 'price-decimals 01-teapot.md:7:1'],
    ['price: 4.555\npriceCurrency: JPY\n', 'price-decimals 01-teapot.md:7:1'],
    ['priceCurrency: ABC\n', 'priceCurrency 01-teapot.md:7:1'],
    ['gtin: "6291041500214"\n', 'gtin 01-teapot.md:7:1'],
    ['image: {file: a.jpg, alt: A teapot}\n', 'photo-missing 01-teapot.md:7:9'],
    ['image: {file: a.jpg}\n', 'missing-key 01-teapot.md:7:1'],
    ['colour: red\n', 'unknown-key 01-teapot.md:7:1'],
    ['category: food\n', 'caution 01-teapot.md:7:1'],
    ['category: [children]\nminAge: 3\n', 'caution 01-teapot.md:7:1'],
    ['category: [plant]\n', 'caution 01-teapot.md:7:1'],
    ['category: [cosmetic]\n', 'caution 01-teapot.md:7:1'],
    ['category: [food]\nallergens: [ham]\ningredients: ham\n', 'allergens 01-teapot.md:8:13'],
    ['spare: {count: 3, price: 4, address: here}\n', 'address 01-teapot.md:7:29'],
  ])('with `%s` is found at fault: %s', (more, finding) => {
    expect(rules(box(item(more)))).toContain(finding);
  });

  test('that can hurt and has no category is found at fault, and `category: none` answers it', () => {
    const jam = item('').replace('kind: teapot', 'kind: plum jam');
    expect(rules(box(jam))).toEqual(['category 01-teapot.md:3:1']);
    expect(rules(box(jam.replace('lead: true', 'lead: true\ncategory: none')))).toEqual([]);
  });

  test('with a fault in one field is still checked for every other', () => {
    const faults = rules(
      box(
        item(
          'colour: red\nprice: 4.555\nimage: {file: a.jpg, alt: A teapot}\ncategory: [food]\nallergens: [ham]\n',
        ),
      ),
    );
    expect(faults.map((fault) => fault.split(' ')[0]).sort()).toEqual([
      'allergens',
      'caution',
      'photo-missing',
      'price-decimals',
      'unknown-key',
    ]);
  });

  test('that links to a record that is not there is found at fault where the link stands', () => {
    expect(rules(box(item('', 'See\n[May](../../2025-05/cycle.md).\n')))).toEqual([
      'link-missing 01-teapot.md:9:1',
    ]);
  });

  test('in Markdown, a picture without text is found at fault', () => {
    expect(rules(box(item('', '![](../photos/a.jpg)\n')))).toEqual(['picture-text 01-teapot.md:8:1']);
  });
});

describe('a cycle', () => {
  test('with two lead items, or none, is found at fault', () => {
    const second = { 'cycles/2026-01/items/02-tin.md': item('') };
    expect(rules(box(item(''), second))).toContain('lead-twice 02-tin.md:4:1');
    expect(rules(box(item('').replace('lead: true\n', '')))).toContain('lead-missing cycle.md:2:1');
  });

  test('whose folder is not a month is found at fault', () => {
    expect(rules({ ...box(item('')), 'cycles/2026-13/cycle.md': CYCLE })).toEqual([
      'cycle-folder 2026-13:1:1',
    ]);
  });

  test('that places an item it does not hold is found at fault', () => {
    expect(rules({ ...box(item('')), 'cycles/2026-01/cycle.md': `${CYCLE}\n::item[cup]\n` })).toEqual([
      'placement cycle.md:8:1',
    ]);
  });

  test('whose call has no address is found at fault', () => {
    const call = CYCLE.replace('reveal:', 'call: spare\nreveal:');
    expect(rules({ ...box(item('')), 'cycles/2026-01/cycle.md': call })).toEqual([
      'call-address cycle.md:5:1',
    ]);
  });
});

describe('a box', () => {
  const withLogo = (logo: string, [width, height]: readonly [number, number] = [800, 800]) => {
    const photos = [
      { path: 'photos/logo.png', hash: 'a', width, height, tint: '#888888', dominant: '#888888' },
    ];
    const files = { ...box(item('')), 'box.md': BOX.replace('call: join', `call: join\nlogo: ${logo}`) };
    return wholeBox(sourcesOf({ ...files, 'photos/logo.svg': '<svg/>', 'photos/note.txt': '' }, photos));
  };

  test('has a logo by the name of a file, which says the box’s name, or with words of its own', () => {
    expect(withLogo('logo.png').diagnostics).toEqual([]);
    expect(withLogo('logo.png').value?.settings.logo).toMatchObject({
      file: 'photos/logo.png',
      alt: 'A Box',
    });
    const told = withLogo('{file: logo.png, alt: A teapot}');
    expect(told.value?.settings.logo).toMatchObject({ alt: 'A teapot' });
  });

  test.each([
    ['logo.svg', [800, 800], 'must fix logo-drawing 11:1'],
    ['Logo.PDF', [800, 800], 'must fix logo-drawing 11:1'],
    ['lgoo.png', [800, 800], 'must fix photo-missing 11:1'],
    ['note.txt', [800, 800], 'must fix photo-missing 11:1'],
    ['logo.png', [800, 111], 'look at logo-small 11:1'],
    ['{file: logo.png, alt: A teapot, caption: A pot}', [800, 800], 'must fix logo 11:1'],
  ] as const)('with the logo %s of %s pixels is found at fault', (logo, size, finding) => {
    const { diagnostics } = withLogo(logo, size);
    expect(
      diagnostics.map(({ weight, rule, location: at }) => `${weight} ${rule} ${at.line}:${at.column}`),
    ).toEqual([finding]);
  });

  test('of the demo gives no finding but notes', async () => {
    const dir = join(import.meta.dirname, '../../content');
    const paths = (await readdir(dir, { recursive: true, withFileTypes: true }))
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(dir.length + 1))
      .sort();
    const texts = await Promise.all(
      paths
        .filter((path) => path.endsWith('.md'))
        .map(async (path) => ({ path, text: await readFile(join(dir, path), 'utf8') })),
    );
    const photos = paths
      .filter((path) => /\.(?:jpg|png)$/.test(path))
      .map((path) => ({ path, hash: path, width: 1280, height: 1600, tint: '#888888', dominant: '#888888' }));
    const { value, diagnostics } = wholeBox({ texts, photos, paths });
    const findings = diagnostics.filter(({ weight }) => weight !== 'note');
    expect(findings).toEqual([]);
    expect(value?.cycles).toHaveLength(13);
    expect(value?.cycles.every((cycle) => cycle.items.length === 5)).toBe(true);
  });

  test('never throws at any front matter: it gives records or findings', () => {
    const line = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom(
        'name: x',
        'kind: [a, b]',
        '- a',
        '  b: c',
        'image: {file: ',
        '? a',
        '&a *a',
        'also: *a',
        'also: &a [*a]',
        'care: !a b',
        '!!js/function x',
        '---',
        'price: .nan',
        'gtin: 1e3',
        'lead: yes',
        '\t',
        'reveal: 2026-02-30T25:61',
      ),
      fc
        .tuple(
          fc.constantFrom(
            'name',
            'summary',
            'reveal',
            'shipped',
            'image',
            'voices',
            'spare',
            'category',
            'palette',
            'calls',
            'url',
          ),
          fc.jsonValue(),
        )
        .map(([key, value]) => `${key}: ${JSON.stringify(value)}`),
    );
    const file = fc.array(line, { maxLength: 12 }).map((lines) => `---\n${lines.join('\n')}\n---\n`);
    fc.assert(
      fc.property(file, file, file, (boxFile, cycleFile, itemFile) => {
        const findings = found({
          'box.md': boxFile,
          'cycles/2026-01/cycle.md': cycleFile,
          'cycles/2026-01/items/01-a.md': itemFile,
        });
        // A box.md of noise never makes a whole record, so something is always said.
        expect(findings.length).toBeGreaterThan(0);
        for (const { location: place } of findings) expect(place.line).toBeGreaterThan(0);
      }),
      { numRuns: shareOf(300) },
    );
  });
});

describe('codes', () => {
  test('a GTIN ends in its check digit (GS1’s worked example: 629104150021 takes 3)', () => {
    expect(isGtin('6291041500213')).toBe(true);
    for (const digit of [0, 1, 2, 4, 5, 6, 7, 8, 9]) expect(isGtin(`629104150021${digit}`)).toBe(false);
  });

  test('currencies have the decimals of ISO 4217', () => {
    expect(['GBP', 'JPY', 'BHD', 'XCG', 'CLF', 'ABC'].map(currencyDecimals)).toEqual([
      2,
      0,
      3,
      2,
      4,
      undefined,
    ]);
  });

  test('dates exist or do not, as the Gregorian calendar has it (ISO 8601)', () => {
    expect(['2024-02-29', '2000-02-29', '2026-12-31'].map(isDate)).toEqual([true, true, true]);
    expect(
      ['2026-02-29', '1900-02-29', '2026-02-30', '2026-13-01', '2026-1-1', ''].map(isDate),
    ).not.toContain(true);
    expect(
      ['2026-03-19T19:00', '2026-03-19T19:00+01:00', '2026-03-19T19:00:30Z'].map(isDateTime),
    ).not.toContain(false);
    expect(['2026-03-19', '2026-03-19T24:00', '2026-03-19T19'].map(isDateTime)).not.toContain(true);
  });

  test('time zones are IANA’s', () => {
    expect([isTimeZone('Asia/Tokyo'), isTimeZone('Europe/Atlantis')]).toEqual([true, false]);
  });
});

describe('a kind', () => {
  test.each([
    ['plum jam', 'food'],
    ['herb tea', 'drink'],
    ['hand salve', 'cosmetic'],
    ['wax melt', 'candle'],
    ['herb snips', 'blade'],
    ['tulip bulb', 'plant'],
    ['seed packet', 'plant'],
    ['seed tin', undefined],
    ['plant mister', undefined],
    ['bulb planter', undefined],
    ['candle snuffer', undefined],
    ['tin of tea', 'drink'],
    ['jar of honey', 'food'],
    ['bar of soap', 'cosmetic'],
    ['tin of plant ties', undefined],
    ['bird seed', undefined],
  ])('`%s` suggests %s', (kind, category) => {
    expect(suggestedCategory(kind)).toBe(category);
  });
});

describe('Markdown', () => {
  test('keeps a time of day and directives that are none of ours as they were typed', () => {
    const words = JSON.stringify(parseMarkdown('At 10:30 we :smile.\n\n::unknown[x]\n\n::box\n'));
    expect(words).toContain('At 10:30 we :smile.');
    expect(words).toContain('::unknown[x]');
    expect(words).toContain('"leafDirective","name":"box"');
  });
});

test('the table of fields is the one the schemas give', async () => {
  await expect(recordReference()).toMatchFileSnapshot('../../src/content/FIELDS.md');
});
