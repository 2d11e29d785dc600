/**
 * The site on a host as src/HOSTING.md sets it up: the settings are read from that page, nginx runs them, and Chromium
 * visits under their strict Content-Security-Policy.
 */
import { readFileSync } from 'node:fs';
import { cp, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { parseFile } from '../../src/content/front-matter.ts';
import { type Scheme, schemesOf } from '../../src/render/colours.ts';
import { lidlore } from '../cli/terminal.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { type StaticServer, serveWith } from '../support/static-server.ts';
import { describeWith, filesBelow, pagesBelow } from '../support/tools.ts';

const ROOT = join(import.meta.dirname, '../..');
const site = inject('demoSite');
const files = filesBelow(site);

const [whole = '', inSubPath = ''] = [
  ...readFileSync(join(ROOT, 'src/HOSTING.md'), 'utf8').matchAll(/```nginx\n([\s\S]*?)```/g),
].map(([, block]) => block);

/** Throws where the page no longer has what is to be changed, so that its settings are never passed by. */
const replaced = (text: string, from: string, to: string): string => {
  if (!text.includes(from)) throw new Error(`Expected ${from} in the settings of src/HOSTING.md`);
  return text.replaceAll(from, to);
};

/** The page's settings for a folder, with the part for a sub-path or without; Debian's own types go before, as there. */
const settingsFor = (folder: string, port: number, more = ''): string => {
  const root = replaced(replaced(whole, 'listen 80;', `listen 127.0.0.1:${port};`), '/srv/box/site', folder);
  const part = more && replaced(more, '/srv/box/site', folder);
  return `include /etc/nginx/mime.types; default_type application/octet-stream;
${more ? replaced(replaced(root, `root ${folder};`, 'root /nowhere;'), '    error_page', `${part}    error_page`) : root}`;
};

const paletteOf = (path: string): readonly string[] => {
  const source = { path, text: readFileSync(join(ROOT, 'content', path), 'utf8') };
  return parseFile(source).data?.palette as readonly string[];
};

/** A page of each kind, with the palette that it bears: its cycle's, or the box's. */
const PAGES = [
  ['index.html', 'cycles/2026-03/cycle.md'],
  ['boxes/2026-03-first-sowings.html', 'cycles/2026-03/cycle.md'],
  ['boxes/2025-12-evergreen-ember.html', 'cycles/2025-12/cycle.md'],
  ['catalogue.html', 'box.md'],
  ['kinds/hand-tool.html', 'box.md'],
] as const;

const rgb = (hex: string): string =>
  `rgb(${[1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)).join(', ')})`;

interface Visit {
  readonly page: Page;
  /** What the browser refused, and what it wrote to its console. */
  readonly complaints: readonly string[];
}

/** Runs in each page before its own: a policy's refusal is an event of the document. */
const REPORT_REFUSALS = `addEventListener('securitypolicyviolation', (event) =>
  complain([event.violatedDirective, event.blockedURI, event.sourceFile, event.lineNumber].join(' ')));`;

const visit = async (
  browser: Browser,
  address: string,
  colorScheme: 'light' | 'dark',
  waitUntil: 'networkidle' | 'load' = 'networkidle',
): Promise<Visit> => {
  const page = await browser.newPage({ colorScheme });
  const complaints: string[] = [];
  await page.exposeFunction('complain', (text: string) => complaints.push(text));
  await page.addInitScript({ content: REPORT_REFUSALS });
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.goto(address, { waitUntil });
  return { page, complaints };
};

interface Seen {
  readonly ground: string;
  readonly text: string;
  readonly named: Readonly<Record<string, string>>;
  /** Colour in a picture's place, beside the one that its page gives. */
  readonly places: readonly (readonly [shown: string, given: string])[];
}

const SEEN = `(names) => {
  const [body, root] = [getComputedStyle(document.body), getComputedStyle(document.documentElement)];
  return {
    ground: body.backgroundColor,
    text: body.color,
    named: Object.fromEntries(names.map((name) => [name, root.getPropertyValue('--' + name)])),
    places: [...document.querySelectorAll('picture img')].map((img) => [
      getComputedStyle(img).backgroundColor,
      img.dataset.tint,
    ]),
  };
}`;

const seenOn = (page: Page, names: readonly string[]): Promise<Seen> =>
  page.evaluate<Seen>(`(${SEEN})(${JSON.stringify(names)})`);

const expectColours = async (page: Page, { ...colours }: Scheme): Promise<void> => {
  const { ground, text, named, places } = await seenOn(page, Object.keys(colours));
  expect({ ground, text, named }).toEqual({
    ground: rgb(colours.paper),
    text: rgb(colours.ink),
    named: colours,
  });
  for (const [shown, given] of places) expect(shown).toBe(rgb(given));
};

describe('a file of the site', () => {
  test('holds nothing inline but JSON-LD: no style, no script, no handler, no address that is data', () => {
    const marked = files.filter((path) => /\.(?:html|svg)$/.test(path));
    expect(marked.length).toBeGreaterThan(15);
    const faults = marked.flatMap((path) => {
      const text = readFileSync(join(site, path), 'utf8');
      const inline = text
        .replace(/<script type="application\/ld\+json">[^<]*<\/script>/g, '')
        .match(/<style\b|<script(?![^>]*\ssrc=)[^>]*>|<[^>]*\s(?:style|on\w+)=|["'(](?:data|javascript):/gi);
      return (inline ?? []).map((fault) => `${path}: ${fault}`);
    });
    expect(faults).toEqual([]);
  });

  test('that is a page names its colours by a style sheet of its own that is small', () => {
    const sheets = new Map<string, string[]>();
    for (const { path, text } of pagesBelow(site)) {
      const named = [...text.matchAll(/<link rel="stylesheet" href="[^"]*(assets\/colours\.\w+\.css)">/g)];
      expect(named.length, path).toBe(1);
      const sheet = named[0]?.[1] ?? '';
      sheets.set(sheet, [...(sheets.get(sheet) ?? []), path]);
    }
    expect([...sheets.keys()].sort()).toEqual(files.filter((path) => path.startsWith('assets/colours.')));
    for (const sheet of sheets.keys()) expect(readFileSync(join(site, sheet)).length).toBeLessThan(500);
    // Pages of one palette share a sheet: those of the box itself, and the first page with the newest article.
    expect([...sheets.values()]).toContainEqual(['404.html', 'catalogue.html', ...kindPages()]);
    expect([...sheets.values()]).toContainEqual(['boxes/2026-03-first-sowings.html', 'index.html']);
  });
});

const kindPages = (): readonly string[] => files.filter((path) => path.startsWith('kinds/'));

describe.each(['light', 'dark'] as const)('opened from disk, in %s', (scheme) => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(() => browser?.close());

  test.each(PAGES)('%s has the colours of its palette', async (path, record) => {
    // Chromium complains of fonts that are asked for before the style sheet is, which it takes from no disk.
    const { page } = await visit(browser, pathToFileURL(join(site, path)).href, scheme, 'load');
    await expectColours(page, schemesOf(paletteOf(record))[scheme]);
    await page.close();
  });
});

describeWith('nginx', 'nginx-light', 'on a host that is set up as the page on hosting says', () => {
  let server: StaticServer;
  let browser: Browser;
  beforeAll(async () => {
    server = await serveWith((port) => settingsFor(site, port));
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(async () => {
    await browser?.close();
    await server?.stop();
  });

  const ask = (path: string, headers: Record<string, string> = {}): Promise<Response> =>
    fetch(server.base + path, { headers });

  test.each(
    PAGES.flatMap(([path, record]) => [[path, record, 'light'] as const, [path, record, 'dark'] as const]),
  )('%s (%s) keeps its colours in the %s, and nothing of it is refused', async (path, record, scheme) => {
    const { page, complaints } = await visit(browser, server.base + path, scheme);
    await expectColours(page, schemesOf(paletteOf(record))[scheme]);
    // CSP Level 3: a block of data is no script to the policy, so `script-src` does not ask after it.
    expect(await page.locator('script[type="application/ld+json"]').count()).toBe(1);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('an address at any depth that leads nowhere shows the page for it, coloured, with status 404', async () => {
    for (const path of ['nowhere', 'boxes/no/where.html', 'boxes/', 'assets/site.0123456789.css']) {
      const { page, complaints } = await visit(browser, server.base + path, 'dark');
      await expectColours(page, schemesOf(paletteOf('box.md')).dark);
      expect(complaints).toEqual([
        'Failed to load resource: the server responded with a status of 404 (Not Found)',
      ]);
      await page.close();
      const answer = await ask(path);
      expect([answer.status, answer.headers.get('cache-control')]).toEqual([404, 'no-cache']);
    }
  });

  test('the search finds, and its results are shown, without a complaint', async () => {
    const { page, complaints } = await visit(browser, `${server.base}catalogue.html`, 'light');
    expect(await page.locator('[type=reset]').isVisible()).toBe(false);
    await page.fill('#q', 'misters');
    await page.locator('#results').getByText('Brass plant mister').first().waitFor();
    expect(await page.locator('[type=reset]').isVisible()).toBe(true);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('the icons are drawn in their colours where they are opened by themselves', async () => {
    for (const [path, scheme] of [
      ['icon.svg', 'light'],
      ['icon-dark.svg', 'dark'],
    ] as const) {
      const { page, complaints } = await visit(browser, server.base + path, 'light');
      const fill = await page.evaluate("getComputedStyle(document.querySelector('path')).fill");
      expect(fill).toBe(rgb(schemesOf(paletteOf('box.md'))[scheme].accent));
      // A picture by itself names no icon, so Chromium asks for one by its usual name.
      expect(complaints.filter((text) => !text.includes('status of 404'))).toEqual([]);
      await page.close();
    }
  });

  test('what is refused is counted: a style that is put into a page is', async () => {
    const { page, complaints } = await visit(browser, `${server.base}index.html`, 'light');
    const styled = '<p style="color:red" onclick="alert()">A</p><style>p{}</style>';
    await page.evaluate(`document.body.insertAdjacentHTML('beforeend', '${styled}')`);
    // Some versions look at a handler when it is written, others when it is to be run.
    await page.evaluate("document.querySelector('[onclick]').click()");
    await expect.poll(() => complaints.filter((text) => /^(?:style|script)-src-/.test(text)).length).toBe(3);
    await page.close();
  });

  test('a name that bears its content is kept for a year, any other is asked after, and what is unchanged is not sent', async () => {
    for (const path of files) {
      const answer = await fetch(server.base + encodeURI(path), { method: 'HEAD' });
      const isHashed = /^(?:assets|pictures)\//.test(path);
      expect([path, answer.headers.get('cache-control')]).toEqual([
        path,
        isHashed ? 'public, max-age=31536000, immutable' : 'no-cache',
      ]);
    }
    const tag = (await ask('index.html')).headers.get('etag') ?? '';
    expect((await ask('index.html', { 'if-none-match': tag })).status).toBe(304);
  });

  test('each file comes with its own type, and texts compressed', async () => {
    const types: Record<string, string> = {
      '.html': 'text/html; charset=utf-8',
      '.css': 'text/css; charset=utf-8',
      '.js': 'application/javascript; charset=utf-8',
      '.json': 'application/json; charset=utf-8',
      '.xml': 'text/xml; charset=utf-8',
      '.txt': 'text/plain; charset=utf-8',
      '.svg': 'image/svg+xml',
      '.avif': 'image/avif',
      '.webp': 'image/webp',
      '.jpg': 'image/jpeg',
      '.png': 'image/png',
      '.woff2': 'font/woff2',
    };
    const kinds = new Map(files.map((path) => [extname(path), path]));
    expect([...kinds.keys()].sort()).toEqual(Object.keys(types).sort());
    for (const [extension, path] of kinds) {
      const answer = await ask(encodeURI(path), { 'accept-encoding': 'gzip' });
      const isPacked = !/avif|webp|jpg|png|woff2/.test(extension);
      expect([extension, answer.headers.get('content-type'), answer.headers.get('content-encoding')]).toEqual(
        [extension, types[extension], isPacked ? 'gzip' : null],
      );
      await answer.arrayBuffer();
    }
  });

  test('every answer bears the headers, and what a build keeps for itself is not there', async () => {
    for (const path of ['', 'nowhere', 'feed.xml', files.find((one) => one.endsWith('.css')) ?? '']) {
      const { headers } = await ask(path);
      for (const name of [
        'content-security-policy',
        'x-content-type-options',
        'referrer-policy',
        'permissions-policy',
        'cross-origin-opener-policy',
      ])
        expect(headers.get(name), `${path} ${name}`).toBeTruthy();
    }
    expect((await readFile(join(site, '.lidlore'))).length).toBeGreaterThan(0);
    expect((await ask('.lidlore')).status).toBe(404);
  });
});

describeWith('nginx', 'nginx-light', 'in a sub-path', () => {
  let dir: string;
  let server: StaticServer;
  let browser: Browser;
  beforeAll(async () => {
    dir = await mkdtemp(join(tmpdir(), 'lidlore-sub-path-'));
    await cp(join(ROOT, 'content'), join(dir, 'content'), { recursive: true, preserveTimestamps: true });
    await symlink(join(ROOT, '.lidlore'), join(dir, '.lidlore'));
    const record = join(dir, 'content/box.md');
    const text = await readFile(record, 'utf8');
    await writeFile(record, text.replace('url: https://sillandsprig.example/', '$&reveals/'));
    const { status, stderr } = await lidlore(
      dir,
      'build',
      '--as-of',
      '2026-03-27',
      '--without',
      'proof,film',
    );
    expect(status, stderr).toBe(0);
    server = await serveWith((port) => settingsFor(join(dir, 'site'), port, inSubPath), '/reveals/');
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(async () => {
    await browser?.close();
    await server?.stop();
    await rm(dir, { recursive: true, force: true });
  });

  test.each([...PAGES, ['boxes/no/where.html', 'box.md'] as const])(
    '%s keeps its colours',
    async (path, record) => {
      const { page, complaints } = await visit(browser, server.base + path, 'dark');
      await expectColours(page, schemesOf(paletteOf(record)).dark);
      expect(complaints.filter((text) => !text.includes('status of 404'))).toEqual([]);
      expect(complaints.length).toBe(path.includes('no/where') ? 1 : 0);
      await page.close();
    },
  );
});
