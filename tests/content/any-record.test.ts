/**
 * Records by mutation and by grammar: each is read, linked and, for a share of them, made into every page; none crashes
 * it, and each is whole or named. `LIDLORE_RECORDS=20000` tries as many; `LIDLORE_SEED` others.
 */
import { expect, test } from 'vitest';
import { siteOf } from '../support/built.ts';
import { type Chance, seeded } from '../support/seeded.ts';
import { shareOf } from '../support/share-of.ts';
import { sourcesOf, wholeBox } from '../support/whole-box.ts';

const RECORDS = Number(process.env.LIDLORE_RECORDS ?? shareOf(1000));
const SEED = Number(process.env.LIDLORE_SEED ?? 20_260_327);
/** One in so many that reads without a must fix is made into its pages too: that takes a hundred times as long. */
const BUILT = 20;

const MONTH = 'cycles/2026-03';
/** A box without photos, which are tried elsewhere: small, so that many are read in the time there is. */
const BASE: Readonly<Record<string, string>> = {
  'box.md': `---
name: Crumb & Co
url: https://crumb.example/
lang: en-GB
timeZone: Europe/London
currency: GBP
description: A small box of baking tools, with the story of each.
author: Ada Crumb
email: ada@crumb.example
every: P1M
palette: ["#5f7358"]
pieces: [article, invitation, live, letter, clip, cards]
calls:
  join: {address: "https://crumb.example/join", text: Join for the next box}
  spare: {address: "https://crumb.example/spare", text: See what is left}
call: join
unsubscribe: "{{stop}}"
---

Crumb & Co sends one good baking tool a month to people who bake at home. [The newest](cycles/2026-03/cycle.md).
`,
  [`${MONTH}/cycle.md`]: `---
theme: Proving
title: A proving basket and a scraper
summary: A round cane proving basket for one loaf of bread, told from the willow bed to the first crust.
shipped: 2026-03-03
reveal: 2026-03-19T19:00
live: {hook: "It holds one loaf.", items: {basket: "Round as a loaf."}, questions: ["How do you prove yours?"]}
replay: {address: "https://video.example/x", beats: {hook: "0:00"}}
peek: {text: In April it is a scraper.}
voices:
  - {text: First loaf on the fifth day., name: Salome, consent: 2026-03-25}
value: {amount: 41.00, on: 2026-03-03}
letter: {subject: A basket for one loaf}
---

We looked for a basket for a year. It came from the **second** valley, and *nobody* there sells any.

## How it was made

- Cane, [soaked](items/01-basket.md) for a night
- Bent on a form[^1]

[^1]: Of pear wood.

| loaf | flour |
|---|---|
| small | 500 g |
`,
  [`${MONTH}/items/01-basket.md`]: `---
name: Cane proving basket, 22 cm
kind: proving basket
also: [banneton]
lead: true
brand: Fenn Weavers
description: A round basket of cane that shapes one loaf while it rises.
material: [cane]
color: straw
size: 22 cm
care: "Knock it out, and dry it."
price: 18.50
spare: {count: 3, price: 18.50, address: "https://shop.example/basket", until: 2026-06-30}
category: none
---

Dust it with rice flour. Then turn the loaf out at once.

> It sings, said Ada.

1. Dust
2. Prove
`,
  [`${MONTH}/items/02-jar.md`]: `---
name: Jar of rye starter
kind: starter
brand: Ada Crumb
description: A live starter of rye, a hundred years old.
goesWith: It raises the loaf that the basket holds.
price: 22.50
category: [food]
allergens: [rye]
mayContain: none
ingredients: Rye, water
---

Feed it on the first day, and it will be up by the third.
`,
};
const RECORD_PATHS = Object.keys(BASE);

/** Odd corners of YAML, Markdown, CSV, calendars and mail, and names of many scripts. */
const SNIPPETS: readonly string[] = [
  ...[
    '~',
    'null',
    'yes',
    'NO',
    '0o17',
    '0x1F',
    '.inf',
    '-.NaN',
    '1_000',
    '12:30:45',
    '2026-03-19',
    '=',
    '<<: *a',
    '!!binary aGk=',
  ],
  ...[
    '&a x',
    '*a',
    '|',
    '>-',
    '|+2',
    '? x',
    '- - - x',
    '{a: {b: [c',
    '[[[[',
    '"\\x41\\u0042\\U0001F600"',
    '"\\ud800"',
    "''",
    '%YAML 1.2',
    '---',
    '...',
    '\t',
    '!<tag:x> y',
    '# x',
    ': ',
    ' : :',
    '@x',
    '`x`',
  ],
  ...[
    '**',
    '***a**b*',
    '[a](b "c',
    '![',
    '![x](y.jpg)',
    '<a',
    '</',
    '<!--',
    '[^1]',
    '[^1]: x',
    '|-|-|',
    '~~~',
    '```',
    ':::x',
    ':x[y]{z}',
    '1)',
    '>',
    '> > >',
    '- - -',
    '\\',
    '&amp;',
    '&#0;',
    '&#xD800;',
    '<https://x>',
    '===',
    '    x',
    '[a]: <',
    '\u00ad',
    '[x](#y)',
    '[x](../2025-09/cycle.md)',
  ],
  ...[
    '","',
    '";"',
    '=1+1',
    'BEGIN:VEVENT',
    'X;Y=Z:a\\, b',
    'Bcc: x',
    '=?utf-8?q?x?=',
    '=0D=0A',
    'From x',
    '.',
  ],
  ...[
    'Ærøskøbing',
    'שלום עולם',
    'مرحبا ﷺ',
    'नमस्ते',
    '漢字かな',
    '한국어',
    'ไทย',
    '👩‍👩‍👧‍👦',
    '🇬🇧',
    'Z͑ͫ̓aͨlgo',
    '\u202eabc',
    '\u200d',
    '\ufeff',
    'İıſẞ',
    'ǅ',
    '𝔘𝔫𝔦',
    '\u2028',
    '゛',
    'a\u0301',
    '￿',
  ],
  ...[
    'constructor',
    '__proto__',
    'toString',
    'x'.repeat(300),
    'word '.repeat(80),
    '"'.repeat(60),
    '('.repeat(60),
    '1'.repeat(40),
    '-1',
    '1e999',
    '0.1.2',
    '../../etc/passwd',
    'C:\\x',
    'NUL',
    'javascript:x',
  ],
];

const KEYS =
  'name theme summary kind lead image voices spare category live peek call calls palette reveal shipped price allergens title letter pieces formerly address value replay'.split(
    ' ',
  );

const lineOf = (chance: Chance): string => {
  const some = (): string => chance.one(SNIPPETS);
  return chance.one([
    () => `${chance.one(KEYS)}: ${some()}`,
    () => `${chance.one(KEYS)}:\n  - ${some()}\n  - ${some()}`,
    () => `${chance.one(KEYS)}: {${chance.one(KEYS)}: ${some()}}`,
    () => `  ${chance.one(KEYS)}: ${some()}`,
    () => some(),
    () => `${some()} ${some()} ${some()}`,
    () => `${'> '.repeat(chance.below(30))}${'- '.repeat(chance.below(30))}${some()}`,
    () => '',
  ])();
};

/** A text with up to four changes: signs, lines, snippets, pieces of itself moved, doubled or gone. */
const mutated = (text: string, chance: Chance): string => {
  let now = text;
  for (let times = 1 + chance.below(4); times > 0; times -= 1) {
    const at = chance.below(now.length + 1);
    const to = Math.min(now.length, at + chance.below(40));
    const lines = now.split('\n');
    const row = chance.below(lines.length);
    now = chance.one([
      () => now.slice(0, at) + chance.one(SNIPPETS) + now.slice(at),
      () => now.slice(0, at) + now.slice(to),
      () => now.slice(0, to) + now.slice(at),
      () => now.slice(0, at) + String.fromCodePoint(1 + chance.below(0xd7ff)) + now.slice(at),
      () => lines.with(row, lineOf(chance)).join('\n'),
      () => lines.toSpliced(row, 1).join('\n'),
      () => lines.toSpliced(row, 0, lineOf(chance)).join('\n'),
      () => now.replace(/: (.+)/, () => `: ${chance.one(SNIPPETS)}`),
    ])();
  }
  return now;
};

const grown = (chance: Chance): string => {
  const some = (most: number): string =>
    Array.from({ length: chance.below(most) }, () => lineOf(chance)).join(chance.one(['\n', '\n\n']));
  return chance.one([() => `---\n${some(12)}\n---\n\n${some(20)}`, () => some(20)])();
};

test(`${RECORDS} records by mutation and grammar: each is read or named, and none stops it`, {
  timeout: 3_600_000,
}, async () => {
  const chance = seeded(SEED);
  const counts = { named: 0, whole: 0, built: 0 };
  let slowest = { ms: 0, text: '' };
  // What is loaded once is not counted as the first record's.
  await siteOf(BASE, Date.UTC(2026, 2, 27));
  let most = 0;
  for (let i = 0; i < RECORDS; i += 1) {
    const path = chance.one(RECORD_PATHS);
    const text = chance.share() < 0.7 ? mutated(BASE[path] ?? '', chance) : grown(chance);
    const files = { ...BASE, [path]: text };
    const said = `record ${i} of seed ${SEED}, ${path}:\n${text}`;
    const begun = performance.now();
    let isWhole = false;
    try {
      const { diagnostics } = wholeBox(sourcesOf(files));
      isWhole = !diagnostics.some(({ weight }) => weight === 'must fix');
      for (const { location, message } of diagnostics) {
        expect(location.line, said).toBeGreaterThan(0);
        expect(message, said).toMatch(/^Unexpected /);
      }
      counts[isWhole ? 'whole' : 'named'] += 1;
      if (isWhole && counts.whole % BUILT === 1) {
        const { site } = await siteOf(files, Date.UTC(2026, 2, 27));
        expect(site.size, said).toBeGreaterThan(3);
        counts.built += 1;
      }
    } catch (error) {
      throw new Error(`${error instanceof Error ? error.stack : error}\nat ${said}`);
    }
    const ms = performance.now() - begun;
    if (ms > slowest.ms) slowest = { ms, text: said };
    most = Math.max(most, process.memoryUsage().rss);
  }
  // What was slow is to be looked at.
  if (slowest.ms > 2000) console.info(slowest.text);
  console.info(
    `Records: ${RECORDS} (seed ${SEED}), ${counts.named} named, ${counts.whole} whole, ${counts.built} of these built; the slowest took ${(slowest.ms / 1000).toFixed(2)} s, ${Math.round(most / 1e6)} MB at most.`,
  );
  expect(counts.named).toBeGreaterThan(RECORDS / 10);
  expect(counts.whole).toBeGreaterThan(RECORDS / 20);
  expect(counts.built).toBeGreaterThan(0);
});
