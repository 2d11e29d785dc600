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
import { catalogue } from '../../src/channels/catalogue.ts';
import { readScripts, readTemplates } from '../../src/io/read-templates.ts';
import type { Box } from '../../src/model/box.ts';
import { compileTemplates } from '../../src/render/templates.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { archive } from './archive.ts';

const root = join(import.meta.dirname, '../..');
const dir = process.env.H6DIR ?? mkdtempSync(join(tmpdir(), 'lidlore-archive-'));
afterAll(() => (process.env.H6DIR ? undefined : rmSync(dir, { recursive: true, force: true })));

const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

/** Writes the catalogue's files without its pictures, and gives their sizes by name. */
const publish = async (box: Box, to: string) => {
  const { files, assets: own } = await readTemplates(join(root, 'templates'));
  const scripts = await readScripts(join(root, 'dist/browser'));
  const templates = compileTemplates(files, own, scripts).value;
  const language = await languageFor(box.settings.lang);
  const input = {
    box,
    asOf: Date.UTC(2026, 0, 1),
    templates,
    language,
    proofs: new Map(),
    parcels: new Map(),
  } as Parameters<typeof catalogue.make>[0];
  const began = performance.now();
  const outputs = [...catalogue.make(input).outputs, ...assets.make(input).outputs];
  const made = performance.now() - began;
  const sizes: { path: string; raw: number; gzip: number }[] = [];
  for (const output of outputs) {
    if (!('text' in output || 'bytes' in output)) continue;
    const bytes = 'text' in output ? Buffer.from(output.text) : Buffer.from(output.bytes);
    mkdirSync(join(to, dirname(output.path)), { recursive: true });
    writeFileSync(join(to, output.path), bytes);
    if (/search|catalogue/.test(output.path))
      sizes.push({ path: output.path, raw: bytes.length, gzip: gzipSync(bytes, { level: 9 }).length });
  }
  return { sizes, made };
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
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    const devtools = await page.context().newCDPSession(page);
    await page.goto(pathToFileURL(join(dir, 'whole/catalogue.html')).href);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    const { first, all, keys } = await page.evaluate(async (typed) => {
      const { document } = globalThis as unknown as { document: any };
      const field = document.getElementById('q');
      const found = document.getElementById('found');
      const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
      const key = (text: string): number => {
        field.value = text;
        const began = performance.now();
        field.dispatchEvent(new (globalThis as any).Event('input', { bubbles: true }));
        // Style and layout belong to what a key costs.
        document.body.getBoundingClientRect();
        return performance.now() - began;
      };
      const began = performance.now();
      field.focus();
      key('mister');
      while (!/\d/.test(found.textContent)) await pause(5);
      const first = performance.now() - began;
      // The stories are all there when a word of a late story is counted, and nothing changes any more.
      for (let same = 0, last = ''; same < 10; await pause(100)) {
        same =
          last === found.textContent && !document.querySelector('head script[src*="stories"]') ? same + 1 : 0;
        last = found.textContent;
      }
      const all = performance.now() - began;
      const keys: { text: string; ms: number }[] = [];
      for (const text of typed)
        for (let end = 1; end <= text.length; end += 1) {
          keys.push({ text: text.slice(0, end), ms: key(text.slice(0, end)) });
          await pause(160);
        }
      return { first, all, keys };
    }, TYPED);
    const sorted = keys.map(({ ms }) => ms).sort((a, b) => a - b);
    say(
      `Chromium at a quarter of its speed: first result ${first.toFixed(0)} ms, all parts ${all.toFixed(0)} ms after the focus`,
    );
    say(
      `a key (${keys.length}): p50 ${quantile(sorted, 0.5).toFixed(1)} ms, p95 ${quantile(sorted, 0.95).toFixed(1)} ms, most ${(sorted.at(-1) as number).toFixed(1)} ms`,
    );
    const slowest = [...keys].sort((a, b) => b.ms - a.ms).slice(0, 8);
    say(`  slowest: ${slowest.map(({ text, ms }) => `"${text}" ${ms.toFixed(0)}`).join(', ')}`);
  } finally {
    await browser.close();
  }
  expect(sizes.length).toBeGreaterThan(3);
});
