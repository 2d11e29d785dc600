/** What a first visit costs, and what an independent auditor says of the pages: figures are printed, bytes are held. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { CHROMIUM } from '../support/chromium.ts';
import { halfOf, isWhole } from '../support/share-of.ts';
import { type StaticServer, serveFolder } from '../support/static-server.ts';
import { describeWith, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const pages = pagesBelow(site);
const kind = pages.find(({ path }) => path.startsWith('kinds/'))?.path ?? '';
const PAGES = ['index.html', 'boxes/2026-03-first-sowings.html', 'catalogue.html', kind] as const;

const KB = 1000;
const kb = (bytes: number): string => `${(bytes / KB).toFixed(1)} kB`;

interface Loaded {
  readonly address: string;
  /** Compressed, as it came over the wire. */
  readonly bytes: number;
  readonly picture: boolean;
}

const withoutPictures = (html: string): string =>
  html.replace(/<figure class="plate[\s\S]*?<\/figure>|<picture>[\s\S]*?<\/picture>/g, '');

/** Everything a page loads by itself, without scrolling, at a phone's width. */
const firstLoad = async (
  browser: Browser,
  address: string,
  pictures: boolean,
): Promise<readonly Loaded[]> => {
  const page: Page = await browser.newPage({ viewport: { width: 390, height: 844 }, deviceScaleFactor: 2 });
  const loaded: Promise<Loaded>[] = [];
  // The same article as it would be without any: figures, captions and all.
  const html = pictures ? '' : withoutPictures(await (await fetch(address)).text());
  if (!pictures)
    await page.route(address, (route) =>
      route.fulfill({ body: html, contentType: 'text/html; charset=utf-8' }),
    );
  page.on('requestfinished', (request) => {
    loaded.push(
      request.sizes().then(({ responseBodySize }) => ({
        address: request.url(),
        bytes: responseBodySize,
        picture: request.resourceType() === 'image',
      })),
    );
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  await page.evaluate('document.fonts.ready');
  const all = await Promise.all(loaded);
  await page.close();
  if (pictures) return all;
  const bytes = gzipSync(html, { level: 6 }).length;
  return all.map((one) => (one.address === address ? { ...one, bytes } : one));
};

const total = (loaded: readonly Loaded[]): number => loaded.reduce((sum, { bytes }) => sum + bytes, 0);

describeWith('nginx', 'nginx-light', 'a first visit', () => {
  let server: StaticServer;
  let browser: Browser;
  beforeAll(async () => {
    server = await serveFolder(site);
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(async () => {
    await browser?.close();
    await server?.stop();
  });

  // What is compressed, without the headers of the answers, which are the server's.
  test('to an article without pictures costs at most 31 kB, and runs no script', async () => {
    const loaded = await firstLoad(browser, `${server.base}boxes/2026-02-sharpen-mend.html`, false);
    const lines = loaded.map(
      ({ address, bytes }) => `  ${kb(bytes).padStart(8)}  ${address.slice(server.base.length)}`,
    );
    console.log(`First load of an article without pictures: ${kb(total(loaded))}\n${lines.join('\n')}`);
    expect(loaded.filter(({ address }) => address.endsWith('.js'))).toEqual([]);
    expect(total(loaded)).toBeLessThanOrEqual(BARE_BUDGET);
  });

  test.each(PAGES)('to %s loads at most 350 kB at 390 px, and nothing moves as it loads', async (path) => {
    const loaded = await firstLoad(browser, server.base + path, true);
    console.log(`First load of ${path} at 390 px: ${kb(total(loaded))} in ${loaded.length} files`);
    expect(total(loaded)).toBeLessThanOrEqual(350 * KB);

    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    await page.addInitScript(() => {
      const shifts: number[] = [];
      (globalThis as { shifts?: number[] }).shifts = shifts;
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
      }).observe({ type: 'layout-shift' as never, buffered: true });
    });
    await page.goto(server.base + path, { waitUntil: 'networkidle' });
    const shifts = await page.evaluate(() => (globalThis as { shifts?: number[] }).shifts ?? []);
    await page.close();
    expect(shifts.reduce((sum, shift) => sum + shift, 0)).toBeLessThan(0.01);
  });
});

/** Page, style sheet, icon, and the letters it begins with. */
const BARE_BUDGET = 31 * KB;

/** Lighthouse's categories that are held to full marks. */
const HELD = ['accessibility', 'best-practices', 'seo'];

interface Report {
  readonly categories: Readonly<
    Record<string, { readonly score: number | null; readonly auditRefs: readonly { readonly id: string }[] }>
  >;
  readonly audits: Readonly<
    Record<
      string,
      { readonly score: number | null; readonly title: string; readonly scoreDisplayMode: string }
    >
  >;
}

/**
 * Lighthouse 12 (Google, Apache-2.0), as a phone. Speed is printed and not held: it depends on the machine and on
 * what else runs there.
 */
describeWith('nginx', 'nginx-light', 'Lighthouse gives full marks', () => {
  let server: StaticServer;
  beforeAll(async () => {
    server = await serveFolder(site);
  });
  afterAll(() => server?.stop());

  const [first, article, catalogue, ofKind] = PAGES;
  test.each(halfOf([article, first, ofKind, catalogue]))('for %s', { timeout: 120_000 }, (path) => {
    const { stdout, stderr } = spawnSync(
      process.execPath,
      [
        join(import.meta.dirname, '../../node_modules/lighthouse/cli/index.js'),
        server.base + path,
        '--quiet',
        '--output=json',
        '--max-wait-for-load=20000',
        // What speed takes longest to look at is the same on every page but the one that has a script.
        ...(isWhole || path === catalogue ? [] : [`--only-categories=${HELD}`]),
        `--chrome-flags=--headless=new ${(CHROMIUM.args ?? []).filter((flag) => flag !== '--headless').join(' ')}`,
      ],
      { encoding: 'utf8', env: { ...process.env, CHROME_PATH: CHROMIUM.executablePath }, maxBuffer: 64e6 },
    );
    if (!stdout.startsWith('{')) throw new Error(stderr);
    const { categories, audits }: Report = JSON.parse(stdout);
    const scores = Object.entries(categories).map(
      ([name, { score }]) => `${name} ${Math.round((score ?? 0) * 100)}`,
    );
    const short = Object.values(categories).flatMap(({ auditRefs }) =>
      auditRefs.flatMap(({ id }) => {
        const audit = audits[id];
        return audit?.score != null && audit.score < 1 && audit.scoreDisplayMode === 'binary'
          ? [`${id}: ${audit.title}`]
          : [];
      }),
    );
    console.log(`Lighthouse, ${path}: ${scores.join(', ')}${short.map((line) => `\n  ${line}`).join('')}`);
    for (const name of HELD) expect([name, categories[name]?.score, short]).toEqual([name, 1, short]);
  });
});
