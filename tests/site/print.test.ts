/** An article on paper: what belongs together stands on one page, in black on white. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { CHROMIUM } from '../support/chromium.ts';
import { halfOf } from '../support/share-of.ts';
import { describeWith, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const articles = pagesBelow(site)
  .map(({ path }) => path)
  .filter((path) => path.startsWith('boxes/'));

const MARGINS = { top: '1.2cm', bottom: '1.2cm', left: '1.2cm', right: '1.2cm' };

/** As it is compared: style writes labels in capitals, and lines may break anywhere. */
const plain = (text: string): string => text.toLowerCase().replace(/[\s\u00AD]+/g, '');

describeWith('pdftotext', 'poppler-utils', 'printed', () => {
  let browser: Browser;
  const dir = mkdtempSync(join(tmpdir(), 'lidlore-print-'));
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(dir, { recursive: true, force: true });
  });

  // Every article, on one of the papers.
  test.each(
    halfOf(articles.flatMap((path) => (['A4', 'Letter'] as const).map((format) => ({ path, format })))),
  )(
    '$path on $format keeps each label with its heading and what follows, and no page is foot alone',
    async ({ path, format }) => {
      const page = await browser.newPage({ colorScheme: 'dark' });
      await page.goto(pathToFileURL(join(site, path)).href);
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      const { colours, sections, foot } = await page.evaluate(async () => {
        interface Part {
          textContent: string;
          querySelector: (s: string) => Part | null;
        }
        const { document, getComputedStyle } = globalThis as unknown as {
          document: {
            body: object;
            images: Iterable<{ loading: string; decode: () => Promise<void> }>;
            querySelectorAll: (s: string) => Iterable<Part>;
            querySelector: (s: string) => Part | null;
          };
          getComputedStyle: (one: object) => { color: string; backgroundColor: string };
        };
        for (const image of document.images) image.loading = 'eager';
        await Promise.all([...document.images].map((image) => image.decode().catch(() => undefined)));
        const { color, backgroundColor } = getComputedStyle(document.body);
        return {
          colours: `${color} on ${backgroundColor}`,
          sections: [...document.querySelectorAll('.item')].map((item) => ({
            label: item.querySelector('.label > :last-child')?.textContent ?? '',
            heading: item.querySelector('h2')?.textContent ?? '',
            story: item.querySelector('.prose')?.textContent ?? '',
          })),
          foot: document.querySelector('.foot')?.textContent ?? '',
        };
      });
      const file = join(dir, `${path.replace(/\W/g, '-')}-${format}.pdf`);
      await page.pdf({ path: file, format, margin: MARGINS });
      await page.close();
      const pages = execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' })
        .split('\f')
        .map(plain)
        .filter(Boolean);

      expect(colours).toBe('rgb(0, 0, 0) on rgb(255, 255, 255)');
      const apart = sections.filter(({ label, heading, story }) => {
        // The label runs on into the heading, as nothing else on the page does.
        const start = plain(label) + plain(heading);
        const beginning = plain(story).slice(0, 60);
        return !pages.some((text) => text.includes(start) && text.includes(beginning));
      });
      expect(apart.map(({ heading }) => heading)).toEqual([]);
      expect(plain(foot)).not.toContain(pages.at(-1));
    },
  );
});
