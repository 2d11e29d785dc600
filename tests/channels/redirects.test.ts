/** Pages that send on, and old anchors, as a visitor has them: in Chromium, from a root, a sub-path and a disk. */

import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { lidlore } from '../cli/terminal.ts';
import { contents, writeFiles } from '../io/temporary.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { htmlValidateFaults, nuErrors } from '../support/html-checkers.ts';
import { cycleText, inContent, itemText, SHOWN_BOX } from '../support/shown-box.ts';
import { type StaticServer, serveFolder } from '../support/static-server.ts';
import { describeWith } from '../support/tools.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const BOX = SHOWN_BOX['box.md'] ?? '';
const OLD = 'boxes/2026-03-früh.html';
const NEW = 'boxes/2026-03-rising.html';

let dir = '';
const site = (): string => join(dir, 'site');
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'lidlore-redirects-'));
  await writeFiles(
    dir,
    inContent({
      ...SHOWN_BOX,
      'box.md': BOX.replace(
        'call: join\n',
        'call: join\nformerly: {blog/2019/sieves.html: kinds/flour-sieve.html, old.html: index.html}\n',
      ),
      'cycles/2026-03/cycle.md': cycleText('2026-03', 'Rising', 'formerly: [2026-03-früh]\n'),
      'cycles/2026-03/items/02-flour-sieve.md': itemText(
        'Flour sieve & brush',
        'flour sieve',
        false,
        'formerly: [sieb, 冬の茶]\n',
      ),
    }),
  );
  const { status, stderr } = await lidlore(dir, 'build', '--as-of', '2026-03-27');
  expect(status, stderr).toBe(0);
});
afterAll(() => rm(dir, { recursive: true, force: true }));

test('they are in no list: not in the sitemap, the feeds, the search, nor on any page', async () => {
  const files = await contents(site());
  for (const path of [OLD, 'blog/2019/sieves.html', 'old.html']) {
    const name = path.replace(/^.*\//, '').replace('.html', '');
    for (const [file, text] of Object.entries(files))
      if (file !== path) {
        expect(text, file).not.toContain(encodeURI(path));
        if (name !== 'old') expect(Buffer.from(text, 'latin1').toString('utf8'), file).not.toContain(name);
      }
  }
});

describe('their markup', () => {
  // html-validate, and the Nu HTML Checker (vnu-jar): the WHATWG HTML standard as validator.nu checks it.
  test('passes html-validate, nothing inline and nothing read twice', async () => {
    for (const [path, text] of Object.entries(await contents(site()))) {
      if (!path.endsWith('.html')) continue;
      expect(await htmlValidateFaults(Buffer.from(text, 'latin1').toString('utf8')), path).toEqual([]);
      if (text.includes('http-equiv')) expect(text).not.toMatch(/<style|style=|<script|noindex/);
    }
  });
  describeWith('java', 'default-jre-headless', 'by the Nu checker', () => {
    test('is without an error', () => expect(nuErrors(site())).toEqual([]));
  });
});

describeWith('chromium', 'chromium', 'in Chromium', () => {
  let browser: Browser;
  let page: Page;
  const servers: StaticServer[] = [];
  const bases = new Map<string, string>();
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
    page = await browser.newPage();
    for (const path of ['/', '/some/where/']) servers.push(await serveFolder(site(), path));
    bases.set('from the root of a domain', servers[0]?.base ?? '');
    bases.set('from a sub-path', servers[1]?.base ?? '');
    bases.set('from disk', pathToFileURL(`${site()}/`).href);
  });
  afterAll(async () => {
    await browser?.close();
    for (const server of servers) await server.stop();
  });

  describe.each(['from the root of a domain', 'from a sub-path', 'from disk'])('%s', (where) => {
    const at = (path: string): string => new URL(path, bases.get(where)).href;
    test.each([
      [OLD, NEW],
      ['blog/2019/sieves.html', 'kinds/flour-sieve.html'],
      ['old.html', 'index.html'],
    ])('%s sends on to %s', async (from, to) => {
      await page.goto(at(from));
      await page.waitForURL(at(to));
      expect(await page.locator('h1').count()).toBe(1);
    });

    test('it is no step that the way back would stop at', async () => {
      await page.goto(at('catalogue.html'));
      await page.goto(at(OLD));
      await page.waitForURL(at(NEW));
      await page.goBack();
      expect(page.url()).toBe(at('catalogue.html'));
    });

    test.each(['sieb', '冬の茶', 'flour-sieve'])(
      'the anchor #%s opens the article at its item',
      async (anchor) => {
        await page.setViewportSize({ width: 390, height: 400 });
        await page.goto(`${at(NEW)}#${anchor}`);
        await expect
          .poll(() =>
            page.locator('#flour-sieve h2').evaluate((element) => element.getBoundingClientRect().top),
          )
          .toBeLessThan(200);
        expect(
          await page.locator('#flour-sieve h2').evaluate((element) => element.getBoundingClientRect().top),
        ).toBeGreaterThanOrEqual(0);
      },
    );
  });

  test('an old anchor is nothing to who listens, and moves nothing on the page', async () => {
    await page.goto(pathToFileURL(join(site(), NEW)).href);
    const tree = await page.locator('main').ariaSnapshot();
    const top = () =>
      page.locator('#flour-sieve h2').evaluate((element) => element.getBoundingClientRect().top);
    const before = await top();
    const spans = page.locator('#flour-sieve header > span');
    expect(await spans.count()).toBe(2);
    await spans.evaluateAll((all) => {
      for (const one of all) one.remove();
    });
    expect(await page.locator('main').ariaSnapshot()).toBe(tree);
    expect(await top()).toBe(before);
  });

  test('where a visitor has refreshes turned off, the page says where to, anchor by anchor, for all to read', async () => {
    const html = readFileSync(join(site(), OLD), 'utf8').replace(/<meta http-equiv[^>]*>/, '');
    await page.route('**/still.html', (route) => route.fulfill({ body: html, contentType: 'text/html' }));
    const base = new URL('boxes/still.html', bases.get('from the root of a domain')).href;
    await page.goto(`${base}#sieb`);
    await page.addScriptTag({ content: axe });
    const { violations } = (await page.evaluate('axe.run()')) as { violations: readonly { id: string }[] };
    expect(violations.map(({ id }) => id)).toEqual([]);
    await page.locator('li:has(#sieb) a').click();
    expect(html.match(/<li /g)).toHaveLength(2);
    await page.waitForURL((url) => url.pathname.endsWith('rising.html') && url.hash === '#flour-sieve');
  });
});
