import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { faultsOfLooks } from '../support/axe.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { halfOf } from '../support/share-of.ts';
import { describeWith, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const HOME = 'https://sillandsprig.example/';
/** One of each kind, and the article whose parts stand where its author placed them. */
const kinds = [
  'index.html',
  'catalogue.html',
  'kinds/hand-tool.html',
  '404.html',
  'boxes/2026-03-first-sowings.html',
  'boxes/2025-08-high-balcony.html',
];

describeWith('chromium', 'chromium', 'in Chromium', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(() => browser.close());

  // axe-core: WCAG 2.2 A and AA and its own best practices.
  test.each(kinds)('%s has no axe violation, light and dark, at 390 and 1280 px', async (path) => {
    const page = await browser.newPage();
    // At the site's own address, where the page for what leads nowhere finds its style sheets too.
    await page.route(`${HOME}**`, (route) =>
      route.fulfill({ path: join(site, new URL(route.request().url()).pathname) }),
    );
    await page.goto(HOME + path);
    const found = await faultsOfLooks(page, { widths: [390, 1280] });
    await page.close();
    expect(found).toEqual([]);
  });

  const narrow = pagesBelow(site).flatMap(({ path }) => [320, 360].map((width) => ({ path, width })));
  // WCAG 2.2, 1.4.10 Reflow: no scrolling in two directions at 320 CSS pixels; 360 is the narrowest common phone.
  test.each(halfOf(narrow))('$path fits a screen $width px wide', async ({ path, width }) => {
    const page = await browser.newPage({ viewport: { width, height: 780 } });
    await page.goto(pathToFileURL(join(site, path)).href);
    const { wide, offenders } = await page.evaluate((width) => {
      const { document } = globalThis as unknown as {
        document: {
          documentElement: { scrollWidth: number };
          querySelectorAll: (s: string) => Iterable<{
            tagName: string;
            className: string;
            getBoundingClientRect: () => { right: number };
          }>;
        };
      };
      return {
        wide: document.documentElement.scrollWidth,
        offenders: [...document.querySelectorAll('main *')]
          .filter((one) => one.getBoundingClientRect().right > width + 1)
          .map((one) => `${one.tagName}.${one.className}`)
          .slice(0, 5),
      };
    }, width);
    await page.close();
    expect({ wide, offenders: wide > width ? offenders : [] }).toEqual({ wide: width, offenders: [] });
  });

  // CSS Font Loading: a part of a face is loaded, not asked for, or in error; opened from disk it has its letters too.
  test('an article opened from disk loads its type faces', async () => {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(site, 'boxes/2026-03-first-sowings.html')).href);
    const faces = await page.evaluate(async () => {
      const { document } = globalThis as unknown as {
        document: {
          fonts: Iterable<{ family: string; style: string; status: string }> & { ready: Promise<unknown> };
        };
      };
      await document.fonts.ready;
      return [...document.fonts].map(({ family, style, status }) => `${family} ${style}: ${status}`);
    });
    await page.close();
    // A fallback face is one of the visitor's own: where they have none of that name, the next one serves.
    const own = /^(?:Alegreya|Alegreya Figures|Sorts Mill Goudy) (?:normal|italic):/;
    expect(faces.filter((face) => own.test(face) && face.endsWith(': error'))).toEqual([]);
    const loaded = faces.filter((face) => face.endsWith(': loaded'));
    for (const face of ['Alegreya normal', 'Alegreya italic', 'Sorts Mill Goudy normal'])
      expect(loaded).toContainEqual(expect.stringContaining(face));
  });
});

test('no page needs a script', () => {
  for (const { path, text } of pagesBelow(site)) {
    const scripts = [...text.matchAll(/<script[^>]*>/g)]
      .map(([tag]) => tag)
      .filter((tag) => tag !== '<script type="application/ld+json">')
      // The catalogue is whole without its search (tests/site/search.test.ts).
      .filter(
        (tag) => path !== 'catalogue.html' || !/^<script defer src="assets\/search[.\w]+js">$/.test(tag),
      );
    expect({
      path,
      scripts,
      handlers: / on[a-z]+="/.test(text.replace(/<script.*?<\/script>/gs, '')),
    }).toEqual({ path, scripts: [], handlers: false });
  }
});
