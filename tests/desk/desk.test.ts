import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type FrameLocator, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bareThing, planNextThing } from '../../src/workspace/begin/index.ts';
import { tinyBox } from '../cli/tiny-box.ts';
import { photo } from '../io/photos.ts';
import { sharePictures, writeFiles } from '../io/temporary.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { compiledCommand } from '../support/compiled.ts';
import { closedDesk, type DeskProcess, openedDesk } from '../support/open-desk.ts';
import { describeWith } from '../support/tools.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const HEIC = join(import.meta.dirname, '../fixtures/photos/halves.heic');
const ITEM = 'cycles/2026-03/items/01-basket.md';
/** A carrier's list whose columns nobody has named yet. */
const LIST = `Consignment;Date sent;Delivery date;Courier;Destination county
${Array.from({ length: 40 }, (_, i) => `C${i};03/03/2026;${i < 38 ? `${String(5 + (i % 14)).padStart(2, '0')}/03/2026` : ''};Heronway;Inland`).join('\n')}
`;

/** An item that its summary and its picture do not name, so that there is something to advise. */
const SCRAPER = `---
name: Steel dough scraper
kind: dough scraper
lead: true
brand: Fenn Smiths
description: A flat blade that lifts a loaf from the board and cuts it in two.
category: none
image:
  - {file: basket.jpg, alt: A flat blade with a wooden grip on a floured board}
---

A scraper of this size lifts a whole loaf from the board in one stroke. Hold it flat, push it under the loaf with a little flour before it, and turn the loaf over with your other hand. Rinse it at once, dry it, and keep it where the air can come to it. Ada bought hers from a smith in the next valley, who had made it for her aunt and was surprised that anybody still asked. It has a grip of pear wood that is glued and pinned, and no corner that could hold flour.
`;

describeWith('chromium', 'chromium', 'the desk in Chromium', () => {
  let folder: string;
  let desk: DeskProcess;
  let browser: Browser;
  let page: Page;
  const go = (path: string) => page.goto(desk.address + path);
  const record = (path = ITEM): Promise<string> => readFile(join(folder, 'content', path), 'utf8');
  const article = (): FrameLocator => page.frameLocator('iframe[data-shown]:not(.coming)');
  const faults: string[] = [];

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'lidlore-desk-'));
    await writeFiles(folder, { ...(await tinyBox()), 'content/cycles/2026-04/items/01-scraper.md': SCRAPER });
    await sharePictures(folder);
    desk = await openedDesk(folder);
    browser = await chromium.launch(CHROMIUM);
    page = await browser.newPage();
    page.on('pageerror', (error) => faults.push(String(error)));
    page.on('console', (message) => {
      // What is refused on purpose is no fault of a page.
      if (message.type() === 'error' && !/409|ERR_FAILED/.test(message.text())) faults.push(message.text());
    });
  });
  afterAll(async () => {
    await browser.close();
    desk.child.kill('SIGKILL');
    await rm(folder, { recursive: true, force: true });
  });

  test('a field is written, saved after a pause, and seen in the article; then it is taken back', async () => {
    await go(`write/${ITEM}`);
    const before = await record();
    await page.locator('#field-name').fill('Cane proving basket, round');
    await article().getByRole('heading', { name: 'Cane proving basket, round' }).first().waitFor();
    expect(await record()).toBe(
      before.replace('name: Cane proving basket', 'name: Cane proving basket, round'),
    );
    await page.getByRole('button', { name: 'Take back' }).click();
    await page.getByText('Taken back.').waitFor();
    expect(await record()).toBe(before);
  });

  test('a field that is gone to by the keys is not under the bar with the button', async () => {
    await go(`write/${ITEM}`);
    await page.setViewportSize({ width: 1024, height: 500 });
    await page.locator('#field-name').focus();
    const gaps: number[] = [];
    for (let field = 0; field < 8; field += 1) {
      const here = await page.locator(':focus').boundingBox();
      const bar = await page.locator('.save').boundingBox();
      gaps.push((bar?.y ?? 0) - ((here?.y ?? 0) + (here?.height ?? 0)));
      await page.keyboard.press('Tab');
    }
    await page.setViewportSize({ width: 1280, height: 720 });
    expect(gaps.filter((gap) => gap < 0)).toEqual([]);
  });

  test('a story is typed, its mentions are underlined, and a fault is told at its field while the last good page stays', async () => {
    await go(`write/${ITEM}`);
    const story = page.getByLabel('Story');
    await story.fill(
      `${await story.inputValue()}\nA proving basket likes to be dry. Beat it on a board after each loaf, and leave it in the air until the evening.\n`,
    );
    const shown = page.frames().find((frame) => frame.url().endsWith('.html'));
    if (!shown) throw new Error('Expected a page beside the writing');
    await shown.evaluate(() => Object.assign(globalThis, { stayed: true }));
    await story.press('Control+End');
    await story.pressSequentially('Then put it by.');
    await article().getByText('Then put it by.').waitFor();
    // The page beside it was changed where it stands, and is what it would be if it were loaded.
    const body = (): Promise<unknown> => shown.evaluate('document.body.outerHTML');
    const [stayed, here] = [await shown.evaluate('globalThis.stayed'), await body()];
    await shown.goto(shown.url());
    expect([stayed, here]).toEqual([true, await body()]);
    await expect.poll(() => page.locator('.under .u').allTextContents()).toContain('proving basket');
    await page.locator('#field-price').fill('cheap');
    await page.locator('#field-price-found .must').waitFor();
    await page.getByText('What you see is older than the text').waitFor();
    await article().getByText('Beat it on a board').waitFor();
    await page.locator('#field-price').fill('18.50');
    await page.getByText('What you see is older than the text').waitFor({ state: 'detached' });
    expect(await record()).toContain('price: 18.50\n');
  });

  test('a file that another program saves is shown at once; where both write, both versions are shown', async () => {
    await go(`write/${ITEM}`);
    const theirs = (await record()).replace('size: 22 cm', 'size: 23 cm');
    await writeFiles(folder, { [`content/${ITEM}`]: theirs });
    await expect.poll(() => page.locator('#field-size').inputValue(), { timeout: 8_000 }).toBe('23 cm');
    await page.route('**/news', (route) => route.abort());
    await go(`write/${ITEM}`);
    await writeFiles(folder, { [`content/${ITEM}`]: theirs.replace('size: 23 cm', 'size: 24 cm') });
    await page.locator('#field-size').fill('25 cm');
    await page.getByRole('heading', { name: 'This was changed in another program meanwhile' }).waitFor();
    expect(await record()).toContain('size: 24 cm');
    await page.getByRole('button', { name: 'Put what I wrote over it' }).click();
    await page.getByText('Saved.').waitFor();
    expect(await record()).toContain('size: 25 cm');
    await page.unroute('**/news');
  });

  test('advice is taken with one press, and taken back', async () => {
    const told = 'cycles/2026-04/cycle.md';
    await go('proof/2026-04');
    const before = await record(told);
    const item = page.locator('.advice > li').first();
    const after = (await item.locator('.after dd').textContent()) ?? '';
    await item.getByRole('button', { name: 'Take it' }).click();
    await page.getByText('The sentence is changed.').waitFor();
    expect(await record(told)).toContain(after);
    await page.getByRole('button', { name: 'Take back' }).click();
    await page.getByText('Taken back.').waitFor();
    expect(await record(told)).toBe(before);
  });

  test('photos are dropped, a phone’s HEIC among them; one is given to a record with its words and the point to keep', async () => {
    await go('photos/2026-03');
    await page.locator('input[type=file]').setInputFiles([
      { name: 'IMG 2041.JPG', mimeType: 'image/jpeg', buffer: Buffer.from(await photo(900, 600)) },
      { name: 'IMG_2042.heic', mimeType: 'image/heic', buffer: readFileSync(HEIC) },
      { name: 'basket.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') },
    ]);
    await page.getByRole('button', { name: 'Put them in' }).click();
    await page.getByText('but not all of them').waitFor();
    const photos = join(folder, 'content/cycles/2026-03/photos');
    expect(
      ['img-2041.jpg', 'img-2042.heic', 'basket-2.jpg'].map((name) => existsSync(join(photos, name))),
    ).toEqual([true, true, false]);
    const one = page.locator('#photo-img-2042-heic');
    await one.getByLabel('What it shows').selectOption({ label: 'Cane proving basket' });
    await one.getByLabel('In words').fill('The basket in two halves of colour.');
    await one.getByRole('button', { name: 'Put it in' }).click();
    await page.getByText('Saved.').waitFor();
    const image = page.locator('#photo-img-2042-heic img');
    await image.scrollIntoViewIfNeeded();
    await expect
      .poll(() => image.evaluate((picture) => (picture as unknown as { naturalWidth: number }).naturalWidth))
      .toBeGreaterThan(0);
    const box = await image.boundingBox();
    await image.click({
      position: { x: Math.round((box?.width ?? 0) * 0.25), y: Math.round((box?.height ?? 0) * 0.75) },
    });
    await page.locator('#photo-img-2042-heic').getByRole('button', { name: 'Save' }).click();
    await expect
      .poll(() => record())
      .toMatch(
        /file: img-2042\.heic[\s\S]*alt: The basket in two halves of colour\.[\s\S]*focus: 2[45]% 7[45]%/,
      );
  });

  test('a carrier’s list is dropped, its columns are shown for a yes, and the paper on it is there', async () => {
    await go('parcels/2026-03');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'export.csv', mimeType: 'text/csv', buffer: Buffer.from(LIST) });
    await page.getByRole('button', { name: 'Look at it' }).first().click();
    const chosen = (label: string) => page.getByLabel(label).inputValue();
    await page.getByRole('heading', { name: 'What export.csv seems to hold' }).waitFor();
    expect([
      await chosen('The day it left'),
      await chosen('The day it arrived'),
      await chosen('Who carries it'),
      await chosen('How its dates are written'),
    ]).toEqual(['Date sent', 'Delivery date', 'Courier', 'DD/MM/YYYY']);
    await page.getByText('38 of 40 parcels have arrived').first().waitFor();
    await page.getByRole('button', { name: 'Yes, this is it' }).click();
    await page.getByText('The list is in its place.').waitFor();
    await article().getByRole('heading', { name: 'Parcels of March 2026' }).waitFor();
    expect(await record('cycles/2026-03/parcels.csv')).toBe(LIST);
    expect(await record('box.md')).toMatch(
      /parcels:\n {2}shipped: Date sent\n {2}delivered: Delivery date\n/,
    );
  });

  test('the moment is moved: sealed before the reveal, shown at it', async () => {
    await go('moment/2026-04');
    await page.getByRole('link', { name: 'A minute before the reveal' }).click();
    await article().getByRole('heading', { name: 'Crumb & Co' }).waitFor();
    expect(await article().getByText('dough scraper').count()).toBe(0);
    await page.getByRole('link', { name: 'At the reveal' }).click();
    await article().getByText('dough scraper').first().waitFor();
  });

  test('a voice is chosen from what was pasted, and the call is changed', async () => {
    await go('voices/2026-03');
    await page
      .getByLabel('What people wrote')
      .fill('[19:04] Ada Finch: My loaf has stripes now!\nhttps://spam.example\n');
    await page.getByRole('button', { name: 'Look through them' }).click();
    await page.getByLabel('Ada Finch has agreed').check();
    await page.getByRole('button', { name: 'Put these into the record' }).click();
    await page.getByText('The voices are in the record.').waitFor();
    expect(await record('cycles/2026-03/cycle.md')).toContain(
      'voices: [{text: My loaf has stripes now!, name: Ada F., consent: 2026-03-27}]',
    );
    await go('cycle/2026-03');
    await page.getByLabel('Places left').fill('12');
    await page.getByRole('button', { name: 'Change it' }).click();
    await page.getByText('The call is changed').waitFor();
    expect(await record('box.md')).toContain('places: 12');
  });

  test('a second desk on the folder says where the first one is; the site is readied; Ctrl-C closes', async () => {
    const [program = '', ...rest] = compiledCommand('desk', '--no-open');
    const second = await new Promise<string>((resolve) => {
      let said = '';
      const child = spawn(program, rest, { cwd: folder });
      child.stdout.setEncoding('utf8').on('data', (text: string) => (said += text));
      child.on('exit', () => resolve(said));
    });
    expect(second).toContain(`A desk is open on this folder already: ${desk.address}`);
    await go('ready/2026-03');
    await page.getByRole('button', { name: 'Ready the site' }).click();
    await page.getByRole('heading', { name: 'What was made' }).waitFor({ timeout: 60_000 });
    expect(existsSync(join(folder, 'site/index.html'))).toBe(true);
    expect(readFileSync(join(folder, 'site/index.html'), 'utf8')).not.toContain('dough scraper');
    expect(faults).toEqual([]);
  });

  test('on a phone the other records are behind one control, which the keys open; on a wide screen they stand there', async () => {
    await go(`write/${ITEM}`);
    const list = page.locator('#record-list');
    const control = page.getByText('Another record');
    expect([await list.isVisible(), await control.isVisible()]).toEqual([true, false]);
    await page.setViewportSize({ width: 390, height: 800 });
    expect([await list.isVisible(), await control.isVisible()]).toEqual([false, true]);
    await control.press('Enter');
    await list.getByText('The box').waitFor();
    await page.setViewportSize({ width: 1280, height: 720 });
  });

  test('no page of the desk has an axe violation', async () => {
    const free = await browser.newContext({ bypassCSP: true, viewport: { width: 390, height: 800 } });
    const tab = await free.newPage();
    const found: string[] = [];
    for (const path of [
      'cycle/2026-03',
      `write/${ITEM}`,
      'photos/2026-03',
      'proof/2026-03',
      'parcels/2026-03',
      'pieces/2026-03',
      'pieces/2026-03/article?width=wide&colours=dark',
      'voices/2026-03',
      'moment/2026-03',
      'findings/2026-03',
      'ready/2026-03',
      'history/2026-03',
    ]) {
      await tab.goto(desk.address + path);
      await tab.evaluate(axe);
      const violations = await tab.evaluate(async () => {
        const { axe: tool, document } = globalThis as unknown as {
          axe: { run: (of: unknown, options: object) => Promise<{ violations: readonly { id: string }[] }> };
          document: { documentElement: { scrollWidth: number } };
        };
        const { violations: all } = await tool.run(document, { iframes: false });
        return [
          ...all.map(({ id }) => id),
          ...(document.documentElement.scrollWidth > 390 ? ['wider than the screen'] : []),
        ];
      });
      found.push(...violations.map((one) => `${path}: ${one}`));
    }
    await free.close();
    expect(found).toEqual([]);
  });

  test('a page that stayed open goes on with a desk that is opened again, and what was changed before can be taken back', async () => {
    const before = await record('box.md');
    await go(`write/${ITEM}`);
    expect(await closedDesk(desk)).toBe(0);
    await page.locator('#field-size').fill('26 cm');
    desk = await openedDesk(folder);
    await expect.poll(() => record(), { timeout: 8_000 }).toContain('size: 26 cm\n');
    await page.getByText('Saved.').waitFor();
    await go('history/2026-03');
    // What was changed is said by its name, its file small below it.
    expect(await page.locator('.changes li p:first-child').allTextContents()).toEqual(
      expect.arrayContaining(['Cane proving basket: size', 'The box: call, places']),
    );
    for (let change = 0; change < 2; change += 1) {
      await go('history/2026-03');
      await page.getByRole('button', { name: 'Take back', exact: true }).click();
      await page.getByText('Taken back.').waitFor();
    }
    expect(await record('box.md')).not.toBe(before);
    expect(await record('box.md')).not.toContain('places: 12');
  });

  test('a thing is begun by its name alone, and what it still needs is told; taken back, it is gone', async () => {
    await go(`write/${ITEM}`);
    await page.getByText('Another thing …').click();
    await page.locator('.adding').getByLabel('Name').fill('Linen cloth: large');
    await page.locator('.adding').getByRole('button', { name: 'Begin it' }).first().click();
    await page.getByText('It is begun.').waitFor();
    // What asks for a story stands beside its field, and nothing in it has to be deleted.
    expect(await page.getByLabel('Story').inputValue()).toBe('');
    await page.getByText('Write its story here').waitFor();
    const path = 'cycles/2026-03/items/02-linen-cloth-large.md';
    // What is begun here is what `lidlore begin` lays out.
    const { text } = planNextThing(bareThing('Linen cloth: large', 'cloth'), '2026-03', [ITEM]);
    expect(await record(path)).toBe(text);
    await expect
      .poll(() => page.locator('#field-brand-found .must').textContent())
      .toContain('Nothing stands here yet.');
    await page.getByRole('button', { name: 'Take back', exact: true }).click();
    await page.getByText('Taken back.').waitFor();
    expect(existsSync(join(folder, 'content', path))).toBe(false);
  });
});
