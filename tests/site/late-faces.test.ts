/** A first visit over a slow line: the page is read in a face of the visitor's own, then set in ours, and nothing moves. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { CHROMIUM } from '../support/chromium.ts';
import { halfOf } from '../support/share-of.ts';
import { type StaticServer, serveFolder } from '../support/static-server.ts';
import { describeWhen } from '../support/tools.ts';

const site = inject('demoSite');
/** The last is where a search leads: far down a long page, where everything above may grow or shrink. */
const PAGES = [
  'index.html',
  'boxes/2026-03-first-sowings.html',
  'catalogue.html',
  'boxes/2026-03-first-sowings.html#brass-plant-mister',
] as const;
/** Milliseconds by which every font is late. */
const LATE = 2500;
/** Web Vitals calls a shift of 0.1 good; a page that is read in a fitted face can do better. */
const MOST_SHIFT = 0.02;

/** Families that stand in, by what this machine has of them. */
const STANDING_IN = [
  { family: 'Times', font: 'Liberation Serif', widths: [390] },
  { family: 'DejaVu', font: 'DejaVu Serif', widths: [390, 1280] },
] as const;

interface Visit {
  /** Sum of what every layout shift moved (Layout Instability API), without those that input caused. */
  readonly shift: number;
  /** When the page was first painted, in milliseconds. */
  readonly painted: number;
  readonly loaded: readonly string[];
}

/** The page with the style sheet's other fitted families taken out, so that `family` alone can stand in. */
const onlyWith = async (page: Page, family: string): Promise<void> => {
  await page.route('**/assets/site.*.css', async (route) => {
    const path = new URL(route.request().url()).pathname;
    const sheet = await readFile(join(site, path), 'utf8');
    const others = STANDING_IN.map((one) => one.family).filter((one) => one !== family);
    const body = sheet.replace(/@font-face\s*\{[^}]*\}/g, (rule) =>
      rule.includes('local(') && others.some((other) => rule.includes(` ${other}"`)) ? '' : rule,
    );
    await route.fulfill({ body, contentType: 'text/css; charset=utf-8' });
  });
};

const slowVisit = async (
  browser: Browser,
  address: string,
  family: string,
  width: number,
): Promise<Visit> => {
  const page = await browser.newPage({ viewport: { width, height: 844 } });
  await onlyWith(page, family);
  await page.route('**/*.woff2', async (route) => {
    await pause(LATE);
    await route.continue();
  });
  await page.addInitScript(() => {
    const seen = { shift: 0 };
    (globalThis as { seen?: typeof seen }).seen = seen;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as unknown as { value: number; hadRecentInput: boolean }[])
        if (!entry.hadRecentInput) seen.shift += entry.value;
    }).observe({ type: 'layout-shift' as never, buffered: true });
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  const visit = await page.evaluate(async () => {
    const { document, seen } = globalThis as unknown as {
      document: {
        fonts: Iterable<{ family: string; style: string; status: string }> & { ready: Promise<unknown> };
      };
      seen: { shift: number };
    };
    await document.fonts.ready;
    await new Promise((done) => setTimeout(done, 500));
    return {
      shift: seen.shift,
      painted: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN,
      loaded: [...document.fonts]
        .filter(({ status }) => status === 'loaded')
        .map(({ family, style }) => `${family} ${style}`),
    };
  });
  await page.close();
  return visit;
};

const THERE = ['command -v nginx', ...STANDING_IN.map(({ font }) => `fc-list | grep -q '${font}:'`)].join(
  ' && ',
);
describeWhen(
  THERE,
  'nginx with two serif faces',
  'nginx-light, fonts-liberation, fonts-dejavu-core',
  'over a slow line',
  () => {
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

    const visits = PAGES.flatMap((path) =>
      STANDING_IN.flatMap(({ family, font, widths }) =>
        widths.map((width) => ({ path, family, font, width })),
      ),
    );
    test.each(halfOf(visits))(
      '$path at $width px is read in $font, then set in our faces, and moves less than 0.02',
      { timeout: 30_000 },
      async ({ path, family, width }) => {
        const visit = await slowVisit(browser, server.base + path, family, width);
        console.log(`Layout shift of ${path} at ${width} px, ${family}: ${visit.shift.toFixed(4)}`);
        expect(visit.painted).toBeLessThan(LATE);
        expect(visit.loaded).toEqual(
          expect.arrayContaining([
            'Alegreya normal',
            'Sorts Mill Goudy normal',
            `Alegreya ${family} normal`,
            `Sorts Mill Goudy ${family} normal`,
          ]),
        );
        expect(visit.shift).toBeLessThan(MOST_SHIFT);
      },
    );
  },
);
