/** No published address dies in silence: what moves, goes or is sealed again is told, with the line to write. */
import { describe, expect, test } from 'vitest';
import { type BuiltSite, type Files, siteOf } from '../support/built.ts';
import { cycleText, itemText, SHOWN, SHOWN_BOX } from '../support/shown-box.ts';

const ASOF = Date.UTC(2026, 3, 2);
const BOX = SHOWN_BOX['box.md'] ?? '';

/** The box with some files changed, and others gone where they are undefined. */
const changed = (
  changes: Readonly<Record<string, string | undefined>>,
  shown: string | undefined = SHOWN,
): Files =>
  Object.fromEntries(
    Object.entries({ ...SHOWN_BOX, 'addresses.csv': shown, ...changes }).flatMap(([path, text]) =>
      text === undefined ? [] : [[path, text]],
    ),
  );

const RULES = /^(?:address|anchor|cycle-removed|formerly)/;
const told = ({ diagnostics }: BuiltSite): readonly string[] =>
  diagnostics
    .filter(({ rule }) => RULES.test(rule))
    .map(({ weight, rule, location: { file, line } }) => `${weight} ${rule} ${file}:${line}`);
const fixes = ({ diagnostics }: BuiltSite): string =>
  diagnostics
    .filter(({ rule }) => RULES.test(rule))
    .map(({ fix }) => fix)
    .join('\n');
const build = (changes: Parameters<typeof changed>[0], shown?: string, asOf = ASOF): Promise<BuiltSite> =>
  siteOf(changed(changes, shown), asOf);

/** The line that a finding proposes, without its quotes. */
const proposed = (text: string): string => /`(formerly: [^`]+)`/.exec(text)?.[1] ?? '';
/** The lines that the first finding with any gives to write. */
const linesOf = ({ diagnostics }: BuiltSite): string => {
  const lines = diagnostics.find(({ written }) => written?.invented === false)?.written?.lines ?? [];
  return lines.join('\n');
};

const MARCH = 'cycles/2026-03';

test('where all is as it was nothing is told, and every line is of an address that is made', async () => {
  const built = await build({});
  expect(told(built)).toEqual([]);
  for (const line of SHOWN.trim().split('\n').slice(1)) {
    const [page = '', anchor] = (line.split(',')[0] ?? '').split('#');
    expect(built.site.get(page)).toContain(anchor === undefined ? '<h1>' : ` id="${anchor}"`);
  }
});

describe('a page that has another address now', () => {
  const renamed = { [`${MARCH}/cycle.md`]: cycleText('2026-03', 'Proving') };

  test('must be fixed, at the record, with the line that sends on and the line that keeps it', async () => {
    const built = await build(renamed);
    expect(told(built)).toEqual([`must fix address-lost ${MARCH}/cycle.md:2`]);
    expect(built.site.size).toBe(0);
    expect(fixes(built)).toContain('`formerly: [2026-03-rising]`');
    expect(fixes(built)).toContain('`address: 2026-03-rising`');
    const [{ related } = {}] = built.diagnostics.filter(({ rule }) => rule === 'address-lost');
    expect(related?.location).toEqual({ file: 'addresses.csv', line: 8, column: 1 });
  });

  test('is sent on to with the line that was proposed: no text there, every anchor kept', async () => {
    const line = proposed(fixes(await build(renamed)));
    const built = await build({ [`${MARCH}/cycle.md`]: cycleText('2026-03', 'Proving', `${line}\n`) });
    expect(told(built)).toEqual([]);
    const page = built.site.get('boxes/2026-03-rising.html') ?? '';
    expect(page).toContain(
      '<link rel="canonical" href="https://crumb.example/box/boxes/2026-03-proving.html">',
    );
    expect(page).toContain('<meta http-equiv="refresh" content="0; url=2026-03-proving.html">');
    expect(page).toContain('<a href="2026-03-proving.html">');
    expect(page).toContain('<li id="flour-sieve"><a href="2026-03-proving.html#flour-sieve">');
    expect(page).not.toMatch(/noindex|shed|<style|style=|<script/);
    for (const [path, text] of built.site)
      if (path !== 'boxes/2026-03-rising.html') expect(text, path).not.toContain('2026-03-rising');
  });

  test('keeps what it was called before that', async () => {
    const record = cycleText('2026-03', 'Proving', 'formerly: [2026-03-dough]\n');
    expect(fixes(await build({ [`${MARCH}/cycle.md`]: record }))).toContain(
      '`formerly: [2026-03-dough, 2026-03-rising]`',
    );
  });

  test('by its capitals alone has to keep them', async () => {
    const record = cycleText('2026-03', 'Rising', 'address: 2026-03-Rising\n');
    const built = await build({ [`${MARCH}/cycle.md`]: record });
    expect(told(built)).toEqual([`must fix address-lost ${MARCH}/cycle.md:6`]);
    expect(fixes(built)).not.toContain('formerly');
  });

  test('may go where its line is taken out, because nobody has seen it', async () => {
    const shown = SHOWN.split('\n')
      .filter((line) => !line.includes('2026-03-rising'))
      .join('\n');
    expect(told(await build(renamed, shown))).toEqual([]);
  });

  test('is not missed on a day before it was shown', async () => {
    expect(told(await build(renamed, SHOWN, Date.UTC(2026, 2, 26)))).toEqual([]);
    expect(told(await build(renamed, SHOWN, Date.UTC(2026, 2, 27)))).toHaveLength(1);
  });

  test('is missed whatever a spreadsheet made of the day', async () => {
    expect(told(await build(renamed, SHOWN.replaceAll('2026-03-27', '27/03/26')))).toContain(
      `must fix address-lost ${MARCH}/cycle.md:2`,
    );
  });
});

describe('a cycle that is gone', () => {
  const gone = Object.fromEntries(
    Object.keys(SHOWN_BOX)
      .filter((path) => path.startsWith('cycles/2026-01/'))
      .map((path) => [path, undefined]),
  );
  /** Without the kinds, whose pages go too where two of a kind are left. */
  const articles = SHOWN.split('\n')
    .filter((line) => !line.startsWith('kinds/'))
    .join('\n');

  test('must be fixed, and box.md can send its address on', async () => {
    const built = await build({ ...gone }, articles);
    expect(told(built)).toEqual(['must fix cycle-removed box.md:1']);
    const lines = linesOf(built);
    expect(lines).toBe('formerly:\n  boxes/2026-01-crust.html: catalogue.html');
    const mended = await build(
      { ...gone, 'box.md': BOX.replace('call: join\n', `call: join\n${lines}\n`) },
      articles,
    );
    expect(told(mended)).toEqual([]);
    expect(mended.site.get('boxes/2026-01-crust.html')).toContain('url=../catalogue.html"');
  });

  test('with its kinds too is sent on by the same lines for all of them', async () => {
    const built = await build(gone);
    expect(told(built)).toHaveLength(3);
    const lines = linesOf(built);
    expect([...lines.matchAll(/^ {2}(\S+): /gm)].map(([, path]) => path)).toEqual([
      'boxes/2026-01-crust.html',
      'kinds/flour-sieve.html',
      'kinds/spoon.html',
    ]);
    const mended = await build({ ...gone, 'box.md': BOX.replace('call: join\n', `call: join\n${lines}\n`) });
    expect(told(mended)).toEqual([]);
  });

  test('whose folder was renamed is found again by its things', async () => {
    const moved = Object.fromEntries(
      Object.entries(SHOWN_BOX)
        .filter(([path]) => path.startsWith('cycles/2026-01/'))
        .map(([path, text]) => [path.replace('2026-01', '2025-12'), text]),
    );
    const only = Object.fromEntries(
      Object.keys(SHOWN_BOX)
        .filter((path) => /2026-0[23]/.test(path))
        .map((path) => [path, undefined]),
    );
    const shown = articles.replace(/boxes.2026-0[23].*\n/g, '');
    const built = await build({ ...gone, ...only, ...moved }, shown);
    expect(told(built)).toEqual(['must fix address-lost cycles/2025-12/cycle.md:2']);
    expect(fixes(built)).toContain('`formerly: [2026-01-crust]`');
  });

  test('is none where its record is only at fault', async () => {
    const built = await build({ 'cycles/2026-01/cycle.md': '---\ntheme: [\n---\n' });
    expect(told(built)).toEqual([]);
    expect(built.diagnostics.some(({ weight }) => weight === 'must fix')).toBe(true);
  });
});

describe('a kind’s page that is gone', () => {
  const respelt = (kind: string) =>
    Object.fromEntries(
      ['2026-01', '2026-02', '2026-03'].map((month) => [
        `cycles/${month}/items/02-flour-sieve.md`,
        itemText('Flour sieve', kind, false),
      ]),
    );
  test.each([
    ['flour siever', 'kinds/flour-siever.html'],
    ['drum sieve', 'kinds/drum-sieve.html'],
    ['tin', 'catalogue.html'],
  ])('named %s now, must be fixed in box.md with the lines to write', async (kind, to) => {
    const built = await build(respelt(kind));
    expect(told(built)).toEqual(['must fix address-lost box.md:1']);
    const lines = linesOf(built);
    expect(lines).toBe(`formerly:\n  kinds/flour-sieve.html: ${to}`);
    const mended = await build({
      ...respelt(kind),
      'box.md': BOX.replace('call: join\n', `call: join\n${lines}\n`),
    });
    expect(told(mended)).toEqual([]);
    expect(mended.site.get('kinds/flour-sieve.html')).toContain('rel="canonical"');
  });
});

describe('an anchor that is gone', () => {
  const file = `${MARCH}/items/02-hair-sieve.md`;
  const renamed = (more = '') => ({
    [`${MARCH}/items/02-flour-sieve.md`]: undefined,
    [file]: itemText('Hair sieve', 'flour sieve', false, more),
  });

  test('is told of at the item that came in its place, and leads to it with the line proposed', async () => {
    const built = await build(renamed());
    expect(told(built)).toEqual([`look at anchor-lost ${file}:2`]);
    const line = proposed(fixes(built));
    expect(line).toBe('formerly: [flour-sieve]');
    const mended = await build(renamed(`${line}\n`));
    expect(told(mended)).toEqual([]);
    expect(mended.site.get('boxes/2026-03-rising.html')).toMatch(
      /<section class="item" id="hair-sieve"[^>]*>\s*<header>\s*<span id="flour-sieve"><\/span>/,
    );
    expect(mended.site.get('feed.xml')).not.toContain('flour-sieve"');
  });

  test('is told of at the cycle where nothing came in its place', async () => {
    const built = await build(
      { [`${MARCH}/items/02-flour-sieve.md`]: undefined },
      SHOWN.replace(/kinds.*\n/g, ''),
    );
    expect(told(built)).toEqual([`look at anchor-lost ${MARCH}/cycle.md:2`]);
  });

  test('is told of once, however many addresses its page had', async () => {
    const shown = SHOWN.replaceAll(
      /boxes\/2026-03-rising(.*)\n/g,
      'boxes/2026-03-rising$1\nboxes/2026-03-dough$1\n',
    );
    const built = await build(
      { ...renamed(), [`${MARCH}/cycle.md`]: cycleText('2026-03', 'Rising', 'formerly: [2026-03-dough]\n') },
      shown,
    );
    expect(told(built)).toEqual([`look at anchor-lost ${file}:2`]);
  });
});

test('a box that is sealed again is looked at and nothing more: nobody is kept from hiding it', async () => {
  const built = await build({
    [`${MARCH}/cycle.md`]: cycleText('2026-03', 'Proving', 'formerly: [2026-03-rising]\n').replace(
      '03-19T19',
      '05-19T19',
    ),
  });
  expect(told(built)).toEqual([`look at address-sealed ${MARCH}/cycle.md:5`]);
  expect([...built.site.keys()].filter((path) => path.includes('2026-03'))).toEqual([]);
  expect([...built.site.values()].join('\n')).not.toMatch(/2026-03-|Proving/);
});

describe('what records say of former addresses has to fit together', () => {
  const cycle = (month: string, theme: string, formerly: string) => ({
    [`cycles/${month}/cycle.md`]: cycleText(month, theme, `formerly: ${formerly}\n`),
  });
  const box = (formerly: string) => ({
    'box.md': BOX.replace('call: join\n', `call: join\nformerly: ${formerly}\n`),
  });
  const item = (formerly: string) => ({
    [`${MARCH}/items/02-flour-sieve.md`]: itemText(
      'Flour sieve',
      'flour sieve',
      false,
      `formerly: ${formerly}\n`,
    ),
  });
  test.each<readonly [string, Parameters<typeof changed>[0], string]>([
    [
      'its own page',
      cycle('2026-03', 'Rising', '[2026-03-rising]'),
      'must fix formerly-taken cycles/2026-03/cycle.md:6',
    ],
    [
      'another’s page',
      cycle('2026-03', 'Rising', '[2026-01-crust]'),
      'must fix formerly-taken cycles/2026-03/cycle.md:6',
    ],
    [
      'another’s page but for capitals',
      cycle('2026-03', 'Rising', '[2026-01-CRUST]'),
      'must fix formerly-taken cycles/2026-03/cycle.md:6',
    ],
    [
      'a page that two claim',
      { ...cycle('2026-01', 'Crust', '[old]'), ...cycle('2026-03', 'Rising', '[old]') },
      'must fix formerly-taken cycles/2026-03/cycle.md:6',
    ],
    [
      'a page twice',
      cycle('2026-03', 'Rising', '[old, old]'),
      'must fix formerly-taken cycles/2026-03/cycle.md:6',
    ],
    [
      'a page that box.md sends on as well',
      { ...cycle('2026-03', 'Rising', '[old]'), ...box('{boxes/old.html: catalogue.html}') },
      'must fix formerly-taken box.md:11',
    ],
    ['the first page', box('{index.html: catalogue.html}'), 'must fix formerly-taken box.md:11'],
    ['a kind’s page', box('{kinds/spoon.html: catalogue.html}'), 'must fix formerly-taken box.md:11'],
    [
      'an address that the site has not',
      box('{old.html: kinds/fork.html}'),
      'must fix formerly-nowhere box.md:11',
    ],
    [
      'an item that an article has not',
      box('{old.html: boxes/2026-03-rising.html#fork}'),
      'must fix formerly-nowhere box.md:11',
    ],
    [
      'a page that sends on itself',
      { ...cycle('2026-03', 'Rising', '[old]'), ...box('{older.html: boxes/old.html}') },
      'must fix formerly-chain box.md:11',
    ],
    ['itself', box('{old.html: old.html}'), 'must fix formerly-chain box.md:11'],
    ['another’s anchor', item('[spoon]'), `must fix formerly-taken ${MARCH}/items/02-flour-sieve.md:8`],
    ['its own anchor', item('[flour-sieve]'), `must fix formerly-taken ${MARCH}/items/02-flour-sieve.md:8`],
    [
      'an anchor of the page’s own',
      item('[peek]'),
      `must fix formerly-taken ${MARCH}/items/02-flour-sieve.md:8`,
    ],
    [
      'the id of a heading',
      item('[spoon-name]'),
      `must fix formerly-taken ${MARCH}/items/02-flour-sieve.md:8`,
    ],
    ['an anchor twice', item('[a, a]'), `must fix formerly-taken ${MARCH}/items/02-flour-sieve.md:8`],
  ])('not: %s', async (_, changes, expected) => {
    expect(told(await build(changes))).toContain(expected);
  });

  test('two that send each other on are told of both, each with a way out', async () => {
    const built = await build(box('{a.html: b.html, b.html: a.html}'));
    expect(told(built)).toEqual(['must fix formerly-chain box.md:11', 'must fix formerly-chain box.md:11']);
    expect(fixes(built)).toBe(
      'Write where `a.html` leads to, as catalogue.html\nWrite where `b.html` leads to, as catalogue.html',
    );
  });

  test.each(['../a.html', '/a.html', 'https://crumb.example/a.html', 'a', '.well/a.html', 'a b.html'])(
    'and an address is a page of the site: not %s',
    async (path) => {
      const built = await build(box(`{"${path}": catalogue.html}`));
      expect(told(built)).toEqual(['must fix formerly box.md:11']);
    },
  );

  test('a page from before the site was made here may be sent on, to a part of a page too', async () => {
    const built = await build(box('{blog/march.html: boxes/2026-03-rising.html#spoon}'));
    expect(told(built)).toEqual([]);
    const page = built.site.get('blog/march.html') ?? '';
    expect(page).toContain('url=../boxes/2026-03-rising.html#spoon"');
    expect(page).toContain(
      '<link rel="canonical" href="https://crumb.example/box/boxes/2026-03-rising.html">',
    );
    expect(page).toContain('>Wooden spoon</a>');
  });
});
