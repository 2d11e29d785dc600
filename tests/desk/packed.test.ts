/** A first cycle from nothing, by the packed program: `lidlore begin`, the desk in a browser, and the site on a server. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { photo } from '../io/photos.ts';
import { writeFiles } from '../io/temporary.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { closedDesk, type DeskProcess, openedDesk } from '../support/open-desk.ts';
import { installPacked } from '../support/packed.ts';
import { serveFolder } from '../support/static-server.ts';
import { describeWith } from '../support/tools.ts';

const HEIC = readFileSync(join(import.meta.dirname, '../fixtures/photos/halves.heic'));
const CYCLE = 'cycles/2026-03';
const BASKET = `${CYCLE}/items/01-cane-proving-basket.md`;
const SCRAPER = `${CYCLE}/items/02-steel-dough-scraper.md`;
const LIST = `Consignment;Date sent;Delivery date;Courier
${Array.from({ length: 40 }, (_, i) => `C${i};03/03/2026;${i < 38 ? `${String(5 + (i % 14)).padStart(2, '0')}/03/2026` : ''};Heronway`).join('\n')}
`;

describeWith('chromium', 'chromium', 'the packed program in an empty folder', () => {
  let folder: string;
  let program: readonly string[];
  let desk: DeskProcess;
  let browser: Browser;
  let page: Page;
  const faults: string[] = [];
  const box = (): string => join(folder, 'box');
  const record = (path: string): string => readFileSync(join(box(), 'content', path), 'utf8');
  const go = (path: string) => page.goto(desk.address + path);
  const article = () => page.frameLocator('iframe[data-shown]:not(.coming)');

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'lidlore-packed-'));
    await writeFiles(folder, { 'package.json': '{"name":"a-shop","private":true}' });
    mkdirSync(box());
    program = [installPacked(folder).program];
    browser = await chromium.launch(CHROMIUM);
    page = await browser.newPage();
    page.on('pageerror', (error) => faults.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text());
    });
  }, 120_000);
  afterAll(async () => {
    await browser.close();
    desk?.child.kill('SIGKILL');
    await rm(folder, { recursive: true, force: true });
  });

  test('a box is begun, written, pictured, mended, seen before and after, readied and served', async () => {
    const [lidlore = ''] = program;
    execFileSync(
      lidlore,
      [
        ...[
          'begin',
          '2026-03',
          '--yes',
          '--name',
          'Crumb & Co',
          '--currency',
          'GBP',
          '--zone',
          'Europe/London',
        ],
        ...['--about', 'A small box of baking tools, with the story of each.', '--language', 'en-GB'],
        ...['--join', 'https://crumb.example/join', '--address', 'https://crumb.example/'],
        ...['--theme', 'Proving', '--things', 'Cane proving basket; Steel dough scraper'],
        ...['--shipped', '2026-03-03', '--reveal', '2026-03-19T19:00'],
      ],
      { cwd: box(), stdio: 'pipe' },
    );
    expect(readdirSync(box())).toEqual(['content']);
    desk = await openedDesk(box(), ['--as-of', '2026-03-27', '--port', '4990'], program);

    // Two items by form.
    const fill = async (field: string, text: string): Promise<void> => {
      await page.locator(`#field-${field}`).fill(text);
    };
    const savedAs = (path: string, text: string) => expect.poll(() => record(path)).toContain(text);
    await go(`write/${BASKET}`);
    await page
      .getByLabel('Story')
      .fill(
        'Ada weaves each one by the fen. Dust it with rice flour before the loaf goes in, and beat it on a board after.\n',
      );
    await fill('brand', 'Fenn Weavers');
    await fill('description', 'A round basket of cane that shapes one loaf while it rises.');
    await savedAs(BASKET, 'description: A round basket of cane that shapes one loaf while it rises.\n');
    await go(`write/${SCRAPER}`);
    await page
      .getByLabel('Story')
      .fill(
        'It lifts a whole loaf from the board in one stroke. Rinse it at once, dry it, and keep it where the air can come to it.\n',
      );
    await fill('brand', 'Fenn Smiths');
    await fill('description', 'A flat blade that lifts a loaf from the board and cuts it in two.');
    await page.getByText('More that can be said').click();
    await fill('goesWith', 'It lifts the loaf out of the basket.');
    await savedAs(SCRAPER, 'goesWith: It lifts the loaf out of the basket.\n');
    // There was no article to be seen when the page was opened.
    await article().getByText('It lifts the loaf out of the basket.').waitFor();

    // Two photos of a phone are dropped.
    await go('photos/2026-03');
    const dropped = await page.evaluateHandle(
      (files) => {
        const { DataTransfer: Transfer } = globalThis as unknown as {
          DataTransfer: new () => { readonly items: { readonly add: (file: File) => void } };
        };
        const held = new Transfer();
        for (const { name, type, base64 } of files)
          held.items.add(
            new File([Uint8Array.from(atob(base64), (one) => one.charCodeAt(0))], name, { type }),
          );
        return held;
      },
      [
        {
          name: 'IMG_2041.JPG',
          type: 'image/jpeg',
          base64: Buffer.from(await photo(1300, 900)).toString('base64'),
        },
        { name: 'IMG_2042.HEIC', type: 'image/heic', base64: HEIC.toString('base64') },
      ],
    );
    await page.locator('form[data-drop]').dispatchEvent('drop', { dataTransfer: dropped });
    await page.getByText('The photo is in its place.').waitFor();
    for (const [name, label, words] of [
      ['img-2041-jpg', 'Cane proving basket', 'A round basket with dough in it.'],
      ['img-2042-heic', 'Steel dough scraper', 'A flat blade on a floured board.'],
    ] as const) {
      const one = page.locator(`#photo-${name}`);
      await one.getByLabel('What it shows').selectOption({ label });
      await one.getByLabel('In words').fill(words);
      await one.getByRole('button', { name: 'Put it in' }).click();
      await page.getByText('Saved.').waitFor();
    }
    // What was said of the first photo may still stand there when the second is put in.
    await expect.poll(() => record(SCRAPER)).toMatch(/file: img-2042\.heic/);

    // The carrier's list.
    await go('parcels/2026-03');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'export.csv', mimeType: 'text/csv', buffer: Buffer.from(LIST) });
    await page.getByRole('button', { name: 'Look at it' }).first().click();
    await page.getByRole('button', { name: 'Yes, this is it' }).click();
    await page.getByText('The list is in its place.').waitFor();
    expect(record(`${CYCLE}/parcels.csv`)).toBe(LIST);

    // One piece of advice.
    await go('proof/2026-03');
    const advice = page.locator('.advice > li').first();
    const after = (await advice.locator('.after dd').textContent()) ?? '';
    await advice.getByRole('button', { name: 'Take it' }).click();
    await page.getByText('The sentence is changed.').waitFor();
    expect([BASKET, SCRAPER, `${CYCLE}/cycle.md`].some((path) => record(path).includes(after))).toBe(true);

    // Before the reveal, and at it.
    await go('moment/2026-03');
    await page.getByRole('link', { name: 'A minute before the reveal' }).click();
    await article().getByRole('heading', { name: 'Crumb & Co' }).waitFor();
    expect(await article().getByText('dough scraper').count()).toBe(0);
    await page.getByRole('link', { name: 'At the reveal' }).click();
    await article().getByText('dough scraper').first().waitFor();

    await go('ready/2026-03');
    await page.getByRole('button', { name: 'Ready the site' }).click();
    await page.getByRole('heading', { name: 'What was made' }).waitFor({ timeout: 30_000 });
    expect(faults).toEqual([]);
    expect(await closedDesk(desk)).toBe(0);

    const server = await serveFolder(join(box(), 'site'));
    try {
      await page.goto(server.base);
      await page
        .getByRole('link', { name: /Proving/ })
        .first()
        .click();
      await page.getByRole('heading', { name: 'Steel dough scraper' }).first().waitFor();
      const picture = page.getByRole('img', { name: 'A flat blade on a floured board.' }).first();
      await picture.scrollIntoViewIfNeeded();
      await expect
        .poll(() => picture.evaluate((one) => (one as unknown as { naturalWidth: number }).naturalWidth))
        .toBeGreaterThan(0);
      expect(await page.getByText(after.slice(0, 40)).count()).toBeGreaterThan(0);
    } finally {
      await server.stop();
    }
    expect(existsSync(join(box(), 'backroom/2026-03/proof.html'))).toBe(true);
  }, 90_000);
});
