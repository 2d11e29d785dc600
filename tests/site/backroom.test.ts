import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { faultsOfLooks } from '../support/axe.ts';
import { calendarFaults, LIBICAL, libicalErrors } from '../support/calendars.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { htmlValidateFaults, nuErrors } from '../support/html-checkers.ts';
import { describeWhen, describeWith, filesBelow } from '../support/tools.ts';

const backroom = join(inject('demoSite'), '../backroom');
const read = (path: string): string => readFileSync(join(backroom, path), 'utf8');

/** The index, and the invitation to what is to come and to what was shown last. */
const pages = ['index.html', '2026-04/invitation.html', '2026-03/invitation.html'];
const events = ['2026-04/invitation.ics', '2026-03/invitation.ics'];

test('every paper is linked from the index, and every link of it leads to a paper', () => {
  const index = read('index.html');
  const links = [...index.matchAll(/href="(\d{4}-[^"]+)"/g)].map(([, href]) => href as string);
  expect(links.filter((href) => !existsSync(join(backroom, href)))).toEqual([]);
  const isPicture = (path: string): boolean => /\.(?:jpg|png)$/.test(path);
  const papers = filesBelow(backroom).filter((path) => path !== 'index.html' && !isPicture(path));
  expect(papers.filter((path) => !links.includes(path))).toEqual([]);
  // Pictures are linked from the paper that shows them.
  const pictures = filesBelow(backroom).filter(isPicture);
  expect(pictures.length).toBeGreaterThan(40);
  for (const path of pictures) {
    const [cycle = '', ...rest] = path.split('/');
    const paper =
      { 'letter-pictures': 'letter-preview.html', thumbnails: 'shoot-list.html' }[rest[0] ?? ''] ??
      'cards.html';
    expect(read(`${cycle}/${paper}`)).toContain(`"${rest.join('/')}"`);
  }
});

/** What is sent, or looks as if it were. */
const LETTERS = /\/letter(?:-preview)?\.html$/;

test('every working paper leads back to the first page, and says that it is private', () => {
  const papers = filesBelow(backroom).filter((path) => /\/.*\.html$/.test(path) && !LETTERS.test(path));
  expect(papers.length).toBeGreaterThan(50);
  const stray = papers.filter((path) => {
    const html = read(path);
    return (
      !html.includes('<a href="../index.html">Back room of Sill &amp; Sprig</a>') ||
      !html.includes('Private:')
    );
  });
  expect(stray).toEqual([]);
});

test('every piece of the demo carries what it must', () => {
  const index = read('index.html');
  expect(index).not.toMatch(/<strong>(?:absent|given away)<\/strong>/);
  expect(index.match(/Every piece carries what it must\./g)).toHaveLength(13);
  expect(index).not.toContain('not made');
});

test('the invitation to the sealed box is the only one beside the newest', () => {
  expect(filesBelow(backroom).filter((path) => path.endsWith('.ics'))).toEqual([...events].reverse());
});

test.each(events)('%s has no fault that readers forgive', (path) => {
  expect(calendarFaults(read(path))).toEqual([]);
});

describeWhen(LIBICAL, 'libical 3 with python3', 'libical3', 'libical', () => {
  test('finds nothing in the events', () => {
    expect(libicalErrors(events.map(read)).flat()).toEqual([]);
  });
});

describeWith('java', 'default-jre-headless', 'the Nu checker', () => {
  // The Nu HTML Checker (vnu-jar): the WHATWG HTML standard as validator.nu checks it.
  test('finds no error in the pages', () => {
    const folder = mkdtempSync(join(tmpdir(), 'lidlore-papers-'));
    for (const path of pages) copyFileSync(join(backroom, path), join(folder, path.replace('/', '-')));
    const errors = nuErrors(folder);
    rmSync(folder, { recursive: true });
    expect(errors).toEqual([]);
  });
});

describe('html-validate', () => {
  test.each(pages)('finds nothing in %s', async (path) => {
    expect(await htmlValidateFaults(read(path))).toEqual([]);
  });
});

describeWith('chromium', 'chromium', 'in Chromium', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(() => browser.close());

  // axe-core: WCAG 2.2 A and AA and its own best practices, every folded part open; and 1.4.10 Reflow at 320 px.
  test.each(pages.slice(0, 2))(
    '%s has no axe violation and fits, light and dark, at 320, 390 and 1280 px',
    async (path) => {
      const page = await browser.newPage();
      await page.goto(pathToFileURL(join(backroom, path)).href);
      await page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
      const found = await faultsOfLooks(page, { widths: [320, 390, 1280] });
      await page.close();
      expect(found).toEqual([]);
    },
  );

  test('a click on a post takes all of it', async () => {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(backroom, '2026-04/invitation.html')).href);
    await page.click('#post-3');
    const [taken, whole] = await page.evaluate<[string, string]>(
      "[String(getSelection()), document.getElementById('post-3').innerText]",
    );
    await page.close();
    expect(taken).toBe(whole);
  });
});
