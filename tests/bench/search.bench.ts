/** The catalogue's search over twenty years: bytes of each part, and how long a key takes on a slow phone. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { afterAll, expect, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import { assets } from '../../src/channels/assets.ts';
import { catalogue } from '../../src/channels/catalogue/index.ts';
import type { PublicInput } from '../../src/channels/channel.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import type { Box } from '../../src/model/box.ts';
import { unsealed } from '../../src/model/seal.ts';
import { compileTemplates } from '../../src/render/templates.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { carriedOut } from '../support/carried-out.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { archive } from './archive.ts';

const root = join(import.meta.dirname, '../..');
const dir = mkdtempSync(join(tmpdir(), 'lidlore-archive-'));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

/** Writes the catalogue's files without its pictures, and gives their sizes by name. */
const publish = async (box: Box, to: string) => {
  const {
    files,
    assets: own,
    scripts,
  } = readTemplates({
    own: join(root, 'templates'),
    scripts: join(root, 'dist/browser'),
  });
  const templates = compileTemplates(files, own, scripts).value;
  const language = await languageFor(box.settings.lang);
  const asOf = Date.UTC(2026, 0, 1);
  const input: PublicInput = {
    box: unsealed(box, asOf),
    asOf,
    templates,
    wording: wordingFor(box.settings.lang),
    language,
    faces: { digest: 'the faces', lacking: async () => [] },
  };
  const began = performance.now();
  const made = await Promise.all([catalogue, assets].map((channel) => carriedOut(channel, input)));
  const outputs = made.flatMap((one) => one.outputs);
  const took = performance.now() - began;
  const sizes: { path: string; raw: number; gzip: number }[] = [];
  for (const output of outputs) {
    if (!('text' in output || 'bytes' in output)) continue;
    const bytes = 'text' in output ? Buffer.from(output.text) : Buffer.from(output.bytes);
    mkdirSync(join(to, dirname(output.path)), { recursive: true });
    writeFileSync(join(to, output.path), bytes);
    if (/search|catalogue/.test(output.path))
      sizes.push({ path: output.path, raw: bytes.length, gzip: gzipSync(bytes, { level: 9 }).length });
  }
  return { sizes, made: took };
};

/** What people type: letter by letter, with finished words, slips, beginnings, several words, nothing known. */
const TYPED = [
  'green mister from spring',
  'terracota pot',
  'watering can',
  'copper garden label 2019',
  'beeswax candls',
  'scissors',
  'oak tray with compost and seedlings',
  'thermometr',
  'bambo trelis',
  'winter kitchen bowls',
];

/** Each on a fresh page. What else the machine does can only add to a time, so the least of the rounds counts. */
const ROUNDS = 3;

interface Round {
  /** Milliseconds from the focus to the first result, and until every part has come. */
  readonly first: number;
  readonly all: number;
  readonly keys: readonly { readonly text: string; readonly ms: number }[];
}

/** Runs in the page: begins to search, waits for all parts, then types. A key's time includes style and layout. */
const typeEverything = async (typed: readonly string[]): Promise<Round> => {
  const { document, Event } = globalThis as unknown as {
    Event: new (name: string, options: object) => object;
    document: {
      body: { getBoundingClientRect: () => unknown };
      querySelector: (selector: string) => unknown;
      getElementById: (id: string) => {
        value: string;
        textContent: string;
        focus: () => void;
        dispatchEvent: (event: object) => void;
      };
    };
  };
  const field = document.getElementById('q');
  const found = document.getElementById('found');
  const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
  const key = (text: string): number => {
    field.value = text;
    const began = performance.now();
    field.dispatchEvent(new Event('input', { bubbles: true }));
    document.body.getBoundingClientRect();
    return performance.now() - began;
  };
  const began = performance.now();
  field.focus();
  key('mister');
  while (!/\d/.test(found.textContent)) await pause(5);
  const first = performance.now() - began;
  // Between two parts there is a moment without a script: only a longer one is the end.
  let all = 0;
  for (let quiet = 0; quiet < 10; await pause(50)) {
    if (document.querySelector('head script[src*="stories"]')) quiet = 0;
    else {
      if (quiet === 0) all = performance.now() - began;
      quiet += 1;
    }
  }
  const keys: { text: string; ms: number }[] = [];
  for (const text of typed)
    for (let end = 1; end <= text.length; end += 1) {
      keys.push({ text: text.slice(0, end), ms: key(text.slice(0, end)) });
      await pause(130);
    }
  return { first, all, keys };
};

const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] as number;

test('the catalogue of 240 cycles', async () => {
  const whole = archive();
  const { sizes, made } = await publish(whole, join(dir, 'whole'));
  const year = await publish({ ...whole, cycles: whole.cycles.slice(-12) }, join(dir, 'year'));
  const say = (line: string): void => console.log(line);
  const list = (of: typeof sizes): void => {
    for (const { path, raw, gzip } of of)
      say(`  ${path.replace(/\.[0-9a-f]{10}\./, '.')}: ${kB(raw)}, gzip ${kB(gzip)}`);
  };
  say(
    `240 cycles, ${whole.cycles.flatMap(({ items }) => items).length} items; made in ${made.toFixed(0)} ms`,
  );
  list(sizes);
  say('12 cycles');
  list(year.sizes);
  const gzipOf = (of: typeof sizes, pattern: RegExp): number =>
    of.filter(({ path }) => pattern.test(path)).reduce((sum, { gzip }) => sum + gzip, 0);
  const first = gzipOf(sizes, /search\.|names/);
  say(
    `before the first result at 240 cycles: script and names, gzip ${kB(first)}; with the page ${kB(first + gzipOf(sizes, /html/))}`,
  );
  say(`index at 12 cycles, gzip ${kB(gzipOf(year.sizes, /search\//))}`);

  const browser = await chromium.launch(CHROMIUM);
  try {
    const rounds: Round[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
      const devtools = await page.context().newCDPSession(page);
      await page.goto(pathToFileURL(join(dir, 'whole/catalogue.html')).href);
      await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
      rounds.push(await page.evaluate(typeEverything, TYPED));
      await page.close();
    }
    const least = (of: (round: Round) => number): number => Math.min(...rounds.map(of));
    const keys = (rounds[0] as Round).keys.map(({ text }, i) => ({
      text,
      ms: least((round) => round.keys[i]?.ms ?? Number.POSITIVE_INFINITY),
    }));
    const sorted = keys.map(({ ms }) => ms).sort((a, b) => a - b);
    say(
      `Chromium at a quarter of its speed: first result ${least(({ first }) => first).toFixed(0)} ms, all parts ${least(({ all }) => all).toFixed(0)} ms after the focus`,
    );
    say(
      `a key (${keys.length}, the least of ${ROUNDS} rounds): p50 ${quantile(sorted, 0.5).toFixed(1)} ms, p95 ${quantile(sorted, 0.95).toFixed(1)} ms, most ${(sorted.at(-1) as number).toFixed(1)} ms`,
    );
    const slowest = [...keys].sort((a, b) => b.ms - a.ms).slice(0, 8);
    say(`  slowest: ${slowest.map(({ text, ms }) => `"${text}" ${ms.toFixed(0)}`).join(', ')}`);
  } finally {
    await browser.close();
  }
  expect(sizes.length).toBeGreaterThan(3);
});
