/** Words as long as words get, on pages as narrow as screens get: they break, and nothing runs out of the page. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { siteOf } from '../support/built.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { nastyBox } from '../support/nasty-box.ts';
import { describeWith } from '../support/tools.ts';

const { site, diagnostics } = await siteOf(nastyBox(), Date.UTC(2026, 2, 27));
const pages = [...site.keys()].filter((path) => path.endsWith('.html'));
const dir = await mkdtemp(join(tmpdir(), 'lidlore-long-words-'));
for (const [path, text] of site) {
  await mkdir(dirname(join(dir, path)), { recursive: true });
  await writeFile(join(dir, path), text);
}
afterAll(() => rm(dir, { recursive: true, force: true }));

test('every kind of page is among them', () => {
  expect(diagnostics.filter(({ weight }) => weight === 'must fix')).toEqual([]);
  for (const kind of [/^index/, /^404/, /^catalogue/, /^boxes\//, /^kinds\//])
    expect(pages.some((path) => kind.test(path))).toBe(true);
});

describeWith('chromium', 'chromium', 'in Chromium', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(() => browser?.close());

  // WCAG 2.2, 1.4.10 Reflow, from 320 CSS pixels; 360 and 390 are phones, 768 a tablet, 1280 a desk.
  test.each([320, 360, 390, 768, 1280])(
    'no page is wider than %i px, and no word is cut off',
    async (width) => {
      const page = await browser.newPage({ viewport: { width, height: 800 } });
      const found: string[] = [];
      for (const path of pages) {
        await page.goto(pathToFileURL(join(dir, path)).href);
        // It names its sheet from the host's root, where a page opened from disk finds none.
        if (path === '404.html')
          await page.addStyleTag({ path: join(import.meta.dirname, '../../templates/not-found.css') });
        found.push(
          ...(
            await page.evaluate(() => {
              interface Part {
                tagName: string;
                className: string;
                scrollWidth: number;
                clientWidth: number;
                closest: (s: string) => unknown;
                getBoundingClientRect: () => { left: number; right: number };
              }
              const { document, getComputedStyle } = globalThis as unknown as {
                document: { documentElement: Part; querySelectorAll: (s: string) => Iterable<Part> };
                getComputedStyle: (one: object) => { overflowX: string };
              };
              const { clientWidth, scrollWidth } = document.documentElement;
              // Tables and code scroll by themselves; what is for screen readers alone has no size.
              const parts = [...document.querySelectorAll('body *')].filter(
                (one) => !one.closest('.table, pre, .visually-hidden, select, .skip'),
              );
              return [
                ...(scrollWidth > clientWidth ? [`the page: ${scrollWidth}`] : []),
                ...parts
                  .filter((one) => one.getBoundingClientRect().right > clientWidth + 1)
                  .map((one) => `out: ${one.tagName}.${one.className}`),
                ...parts
                  .filter(
                    (one) =>
                      getComputedStyle(one).overflowX === 'hidden' && one.scrollWidth > one.clientWidth + 1,
                  )
                  .map((one) => `cut: ${one.tagName}.${one.className}`),
              ].slice(0, 4);
            })
          ).map((fault) => `${path} ${fault}`),
        );
      }
      await page.close();
      expect(found).toEqual([]);
    },
  );

  // CSS Text 3, 6.1: hyphens are put by the language of the element.
  test('words are hyphenated in the language of the page', async () => {
    const page = await browser.newPage();
    for (const path of pages.filter((one) => one !== '404.html')) {
      await page.goto(pathToFileURL(join(dir, path)).href);
      const said = await page.evaluate(() => {
        const { document, getComputedStyle } = globalThis as unknown as {
          document: { documentElement: { lang: string }; querySelector: (s: string) => object };
          getComputedStyle: (one: object) => { hyphens: string };
        };
        const { hyphens } = getComputedStyle(document.querySelector('h1'));
        return { lang: document.documentElement.lang, hyphens };
      });
      expect({ path, ...said }).toEqual({ path, lang: 'de', hyphens: 'auto' });
    }
    await page.close();
  });
});
