/** Who lands on an item from a search, and who reads on. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { CHROMIUM } from '../support/chromium.ts';
import { describeWith, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const articles = pagesBelow(site).filter(({ path }) => path.startsWith('boxes/'));
const landings = articles.flatMap(({ path, text }) =>
  [...text.matchAll(/<section class="item" id="([^"]+)"/g)].map(([, anchor = '']) => ({ path, anchor })),
);

const SCREENS = [
  { width: 390, height: 844 },
  { width: 1280, height: 800 },
];

interface Part {
  readonly id: string;
  querySelector: (s: string) => Part | null;
  getBoundingClientRect: () => { top: number; bottom: number; left: number; right: number };
}
interface Page {
  document: { querySelectorAll: (s: string) => Iterable<Part> };
  innerHeight: number;
}

describeWith('chromium', 'chromium', 'in Chromium', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(() => browser?.close());

  test.each(SCREENS)(
    'an item shows itself, its box and the next one in the first screen of $width × $height',
    async (viewport) => {
      const page = await browser.newPage({ viewport });
      const missing: string[] = [];
      for (const { path, anchor } of landings) {
        await page.goto(`${pathToFileURL(join(site, path)).href}#${anchor}`);
        const unseen = await page.evaluate((anchor) => {
          const { document, innerHeight } = globalThis as unknown as Page;
          const [item] = document.querySelectorAll(`[id="${anchor}"]`);
          const isSeen = (part: string): boolean => {
            const box = item?.querySelector(part)?.getBoundingClientRect();
            return box !== undefined && box.top >= 0 && box.bottom > box.top && box.bottom <= innerHeight;
          };
          const picture = item?.querySelector('.plate img')?.getBoundingClientRect();
          // A part of the picture is enough to know the thing by.
          const isPictured = picture !== undefined && picture.top < innerHeight - 200;
          return [
            ...['h2', '.ways a[href="#main"]', '.ways .next'].filter((part) => !isSeen(part)),
            ...(isPictured ? [] : ['.plate img']),
          ];
        }, anchor);
        missing.push(...unseen.map((part) => `${path}#${anchor} ${part}`));
      }
      await page.close();
      expect(missing).toEqual([]);
    },
  );

  test.each(SCREENS)(
    'an item that nobody landed on has its links at its end, and its number where the others have theirs, at $width × $height',
    async (viewport) => {
      const page = await browser.newPage({ viewport });
      for (const { path } of articles) {
        await page.goto(pathToFileURL(join(site, path)).href);
        const { early, places } = await page.evaluate(() => {
          const { document } = globalThis as unknown as Page;
          const items = [...document.querySelectorAll('.item')];
          const boxOf = (item: Part, part: string) =>
            item.querySelector(part)?.getBoundingClientRect() ?? {
              top: Number.NaN,
              bottom: Number.NaN,
              left: Number.NaN,
              right: Number.NaN,
            };
          return {
            early: items
              .filter((item) => !(boxOf(item, '.ways').top >= boxOf(item, '.prose').bottom))
              .map(({ id }) => id),
            // The number ends before the heading begins, or both begin on one line.
            places: items.map((item) => {
              const number = boxOf(item, '.numeral');
              const heading = boxOf(item, 'h2');
              return Math.round(heading.left - (number.right < heading.left ? number.right : number.left));
            }),
          };
        });
        expect({ path, early }).toEqual({ path, early: [] });
        expect({ path, places: new Set(places).size }).toEqual({ path, places: 1 });
      }
      await page.close();
    },
  );
});

test('an item leads to its box and to the next one once', () => {
  expect(landings.length).toBeGreaterThan(0);
  for (const { text } of articles)
    for (const section of text.split('<section class="item"').slice(1)) {
      expect(section.match(/href="#main"/g)).toHaveLength(1);
      expect(section.match(/class="next"/g)).toHaveLength(1);
    }
});

test('the first page shows the newest box once', () => {
  const home = pagesBelow(site).find(({ path }) => path === 'index.html')?.text ?? '';
  const main = home.slice(home.indexOf('<main'), home.indexOf('</main>'));
  const newest = articles.at(-1)?.path ?? '';
  expect(main.split(`href="${newest}"`)).toHaveLength(2);
  const year = /<section class="year"[\s\S]*?<\/section>/.exec(main)?.[0];
  expect(year?.match(/<li>/g)).toHaveLength(articles.length - 1);
});
