/** The catalogue's search as a visitor has it: in Chromium, from disk, by keyboard, without scripts. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import { type PackedIndex, unpackIndex } from '../../src/analysis/search/compact.ts';
import type { HeadFile } from '../../src/analysis/search/published.ts';
import { faultsOfLooks } from '../support/axe.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { describeWith, filesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const catalogue = pathToFileURL(join(site, 'catalogue.html')).href;
const content = join(import.meta.dirname, '../../content/cycles');
const english = await languageFor('en-GB');
const indexFiles = readdirSync(join(site, 'assets/search')).map((file) => join(site, 'assets/search', file));

describe('the index', () => {
  const handedOver = (file: string): unknown => {
    const [, json = ''] = /^lidloreIndex\((.*)\);\n$/.exec(readFileSync(file, 'utf8')) ?? [];
    return JSON.parse(json);
  };
  const words = indexFiles
    .map(handedOver)
    .map((data) => ('index' in (data as object) ? (data as HeadFile).index : (data as PackedIndex)))
    .flatMap((packed) => unpackIndex(packed).forms.map(({ word }) => word));

  test('of twelve cycles is small: 25 kB gzip in all', () => {
    const bytes = indexFiles.reduce(
      (sum, file) => sum + gzipSync(readFileSync(file), { level: 9 }).length,
      0,
    );
    console.log(`search index, 12 cycles: gzip ${bytes} bytes`);
    expect(bytes).toBeLessThan(25_000);
  });

  test('knows the stories, and not a word that only a sealed cycle has', () => {
    expect(words).toContain('colander');
    const wordsIn = (cycles: (id: string) => boolean): ReadonlySet<string> =>
      new Set(
        filesBelow(content)
          .filter((path) => path.endsWith('.md') && cycles(path.split('/')[0] as string))
          .flatMap((path) => english.words(readFileSync(join(content, path), 'utf8')))
          .map(({ folded }) => folded),
      );
    // Sealed as of the demo's moment.
    const others = wordsIn((id) => id !== '2026-04');
    const secret = [...wordsIn((id) => id === '2026-04')].filter((word) => !others.has(word));
    expect(secret.length).toBeGreaterThan(100);
    expect(words.filter((word) => secret.includes(word))).toEqual([]);
  });
});

describeWith('chromium', 'chromium', 'in Chromium, the search', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterEach(() => page.close());
  afterAll(() => browser.close());

  const open = async (query = '', options: Parameters<Browser['newPage']>[0] = {}): Promise<void> => {
    page = await browser.newPage({ viewport: { width: 1280, height: 900 }, ...options });
    await page.goto(catalogue + query);
  };
  const names = (): Promise<string[]> =>
    page.locator('#results li .thing').evaluateAll((things) => things.map((one) => one.textContent ?? ''));
  const status = (): Promise<string> => page.locator('#found').textContent().then(String);
  const settled = (pattern: RegExp): Promise<void> =>
    expect.poll(status, { timeout: 5000 }).toMatch(pattern) as Promise<void>;
  const ask = async (query: string, pattern = /\d|Nothing/): Promise<void> => {
    await page.fill('#q', query);
    await settled(pattern);
  };

  test('loads its index when the visitor begins, and not before', async () => {
    await open();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.waitForTimeout(150);
    expect(asked.filter((address) => address.includes('/search/'))).toEqual([]);
    await page.focus('#q');
    await expect
      .poll(() => asked.filter((address) => address.includes('/search/')).length)
      .toBe(indexFiles.length);
  });

  test.each([
    ['misters', 'Brass plant mister, 300 ml'],
    ['macrame', 'Macramé plant hanger'],
    ['teracotta pot', 'Terracotta pot with saucer, 12 cm'],
    ['wat can', 'Enamel watering can, 1.2 litres'],
    ['that mister from spring', 'Brass plant mister, 300 ml'],
  ])('finds by %s', async (query, name) => {
    await open();
    await ask(query);
    await expect.poll(names).toContain(name);
    expect((await names())[0]).toBe(name);
    expect(await page.locator('#results li').first().locator('mark').count()).toBeGreaterThan(0);
    expect(await page.locator('#everything').isVisible()).toBe(false);
  });

  test('shows of each what its entry shows, and which box it came in', async () => {
    await open();
    await ask('mister');
    const first = page.locator('#results li').first();
    await first.locator('img').waitFor();
    expect(await first.textContent()).toMatch(
      /plant mister, Halloway Brassworks\s+March 2026, First Sowings/,
    );
    expect(await first.textContent()).toContain('Spare pieces for sale');
    expect(await first.locator('a').getAttribute('href')).toMatch(/^boxes\/2026-03-first-sowings\.html#/);
  });

  test('narrows down, counts what each choice would leave, and says all in the address', async () => {
    await open();
    await page.click('.narrow summary');
    await settled(/^$/);
    await expect.poll(() => page.locator('#by-kind option').count()).toBeGreaterThan(10);
    await page.selectOption('#by-date', '2026-03');
    await settled(/^5 of 60/);
    await page.check('#on-sale');
    await settled(/^[1-4] of 60/);
    const left = Number((await status()).split(' ')[0]);
    await expect.poll(() => page.locator('[data-count=sale]').textContent()).toBe(`(${left})`);
    expect(await names()).toHaveLength(left);
    expect(new URL(page.url()).search).toBe('?when=2026-03&sale=on');
    await page.goBack();
    await settled(/^5 of 60/);
    expect(await page.isChecked('#on-sale')).toBe(false);
  });

  test('keeps the query in the address: shared, gone back from, gone forward to', async () => {
    await open('?q=mister');
    await settled(/^\d/);
    expect(await page.inputValue('#q')).toBe('mister');
    expect((await names())[0]).toBe('Brass plant mister, 300 ml');
    await page.press('#q', 'Enter');
    await ask('twine');
    await expect.poll(() => new URL(page.url()).search).toBe('?q=twine');
    await page.goBack();
    await expect.poll(() => page.inputValue('#q')).toBe('mister');
    await expect.poll(async () => (await names())[0]).toBe('Brass plant mister, 300 ml');
    await page.goForward();
    await expect.poll(() => page.inputValue('#q')).toBe('twine');
  });

  test('helps where nothing answers: the nearest spelling, and kinds', async () => {
    await open();
    await ask('terrrracottta', /Nothing/);
    const none = page.locator('#results .none');
    await expect.poll(() => none.textContent()).toMatch(/Did you mean terracotta\?/);
    expect(await none.locator('a').count()).toBeGreaterThan(5);
    await none.getByText('terracotta', { exact: true }).click();
    await settled(/^\d/);
    expect(new URL(page.url()).search).toBe('?q=terracotta');
  });

  test('is worked by keyboard alone, slash and all', async () => {
    await open();
    for (let i = 0; i < 12 && (await page.evaluate('document.activeElement.id')) !== 'q'; i += 1)
      await page.keyboard.press('Tab');
    await page.keyboard.type('twine/');
    await settled(/^\d/);
    expect(await page.inputValue('#q')).toBe('twine/');
    await page.keyboard.press('Enter');
    let text = '';
    for (let i = 0; i < 8 && !/Jute/.test(text); i += 1) {
      await page.keyboard.press('Tab');
      text = (await page.evaluate('document.activeElement.textContent')) as string;
    }
    await page.keyboard.press('Enter');
    await page.waitForURL(/boxes\/.*#/);
  });

  test('is nowhere without scripts, and everything is there', async () => {
    await open('?q=mister', { javaScriptEnabled: false });
    expect(await page.locator('#search').isVisible()).toBe(false);
    expect(await page.locator('.cycle li a').count()).toBe(60);
    expect(await page.locator('.cycle').first().isVisible()).toBe(true);
  });

  test('says so where its index cannot be had, and the page stays', async () => {
    await open();
    await page.evaluate("document.getElementById('search').dataset.head = 'assets/search/gone.js'");
    await page.fill('#q', 'mister');
    await settled(/could not be loaded/);
    expect(await page.locator('#everything').isVisible()).toBe(true);
  });

  // WCAG 2.2, 1.4.4 and 1.4.10: at 200 % a window of 1280 pixels has 640 CSS pixels. Layout Instability (WICG): none.
  test('moves nothing while the page loads, and fits at 200 %', async () => {
    await open('', { viewport: { width: 640, height: 450 }, deviceScaleFactor: 2 });
    const shift = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          let sum = 0;
          new PerformanceObserver((list) => {
            for (const entry of list.getEntries()) sum += (entry as unknown as { value: number }).value;
          }).observe({ type: 'layout-shift', buffered: true } as never);
          setTimeout(() => resolve(sum), 300);
        }),
    );
    // A fallback face that is fitted by its measures is off by a hair; "good" is a tenth (Web Vitals).
    expect(shift).toBeLessThan(0.002);
    await page.click('.narrow summary');
    await ask('pot');
    const wide = await page.evaluate('document.documentElement.scrollWidth');
    expect(wide).toBe(640);
  });

  // axe-core: WCAG 2.2 A and AA and its own best practices, with results, facets and an empty result in sight.
  test('has no axe violation, light and dark', async () => {
    await open('');
    await page.click('.narrow summary');
    const found: string[] = [];
    for (const query of ['mister', 'xyzzy']) {
      await ask(query);
      found.push(...(await faultsOfLooks(page, { widths: [390] })).map((fault) => `${query}, ${fault}`));
    }
    expect(found).toEqual([]);
  });
});
