import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { type StaticServer, serveFolder } from '../support/static-server.ts';
import { describeWith, filesBelow, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const pages = pagesBelow(site);

const addressesIn = (text: string): string[] =>
  [
    ...[...text.matchAll(/ (?:href|src)="([^"]*)"/g)].map((found) => found[1] as string),
    ...[...text.matchAll(/ srcset="([^"]*)"/g)].flatMap((found) =>
      (found[1] as string).split(', ').map((one) => one.split(' ')[0] as string),
    ),
  ].map((address) => address.replaceAll('&amp;', '&'));

const isInternal = (address: string): boolean => !/^(?:[a-z]+:|\/\/)/i.test(address);
const idsIn = (text: string): Set<string> =>
  new Set([...text.matchAll(/ id="([^"]*)"/g)].map((found) => found[1] as string));
const idsByPage = new Map(pages.map(({ path, text }) => [path, idsIn(text)]));

const resolve = (page: string, address: string): { path: string; anchor: string } => {
  const [file = '', anchor = ''] = address.split('#');
  return {
    path: file === '' ? page : posix.join(posix.dirname(page), decodeURIComponent(file)),
    anchor: decodeURIComponent(anchor),
  };
};

// RFC 3986 resolution, as the HTML standard's links use it.
describe('opened from disk', () => {
  test('every internal address and anchor leads somewhere', () => {
    const dead: string[] = [];
    let count = 0;
    for (const { path, text } of pages)
      for (const address of addressesIn(text).filter(isInternal)) {
        count += 1;
        const target = resolve(path, address);
        if (!existsSync(join(site, target.path))) dead.push(`${path}: ${address}`);
        else if (target.anchor && !idsByPage.get(target.path)?.has(target.anchor))
          dead.push(`${path}: ${address} (no such anchor)`);
      }
    expect(dead).toEqual([]);
    expect(count).toBeGreaterThan(1000);
  });

  test('every address in a style sheet leads somewhere', () => {
    const sheets = filesBelow(site).filter((path) => path.endsWith('.css'));
    const addresses = sheets.flatMap((path) =>
      [...readFileSync(join(site, path), 'utf8').matchAll(/url\(["']?([^"')]+)["']?\)/g)].map((found) =>
        posix.join(posix.dirname(path), found[1] as string),
      ),
    );
    expect(addresses.filter((path) => !existsSync(join(site, path)))).toEqual([]);
    expect(addresses.length).toBeGreaterThan(0);
  });

  test('every full address of our own, in pages, structured data and feeds, leads somewhere', () => {
    const home = /<link rel="canonical" href="([^"]*)"/.exec(
      pages.find(({ path }) => path === 'index.html')?.text ?? '',
    )?.[1];
    expect(home).toMatch(/^https:\/\/.*\/$/);
    // Where to join or buy is the shop's to answer, not the site's: the author wrote those addresses.
    const content = join(site, '../content');
    const authored = new Set(
      filesBelow(content)
        .filter((path) => path.endsWith('.md'))
        .flatMap((path) => readFileSync(join(content, path), 'utf8').match(/https?:[^\s"')>]+/g) ?? []),
    );
    authored.delete(home as string);
    const files = filesBelow(site).filter((path) => /\.(?:html|xml|json|txt)$/.test(path));
    const dead = files.flatMap((file) => {
      const text = readFileSync(join(site, file), 'utf8');
      return (
        [...text.matchAll(/https?:\/\/[^\s"'<>&\\]+/g)]
          .map(([address]) => address)
          // A piece's own mark is added to the author's address.
          .filter(
            (address) => address.startsWith(home as string) && !authored.has(address.replace(/\?.*$/, '')),
          )
          .filter((address) => {
            const [path = '', anchor = ''] = decodeURIComponent(address.slice((home as string).length)).split(
              '#',
            );
            const target = path === '' ? 'index.html' : path;
            // Fragments in structured data name things (`#subscription`), not places on a page.
            const inLink = anchor !== '' && text.includes(`href="${address}"`);
            return !existsSync(join(site, target)) || (inLink && !idsByPage.get(target)?.has(anchor));
          })
          .map((address) => `${file}: ${address}`)
      );
    });
    expect(dead).toEqual([]);
  });

  test('no id stands twice on a page', () => {
    const twice = pages.flatMap(({ path, text }) => {
      const ids = [...text.matchAll(/ id="([^"]*)"/g)].map((found) => found[1] as string);
      return ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `${path}: ${id}`);
    });
    expect(twice).toEqual([]);
  });

  test('every published file is named by a page, a style sheet or a letter, or is an entrance', () => {
    const named = new Set(
      pages.flatMap(({ path, text }) =>
        addressesIn(text)
          .filter(isInternal)
          .map((address) => resolve(path, address).path),
      ),
    );
    const letters = pagesBelow(join(site, '../backroom')).filter(({ path }) => path.endsWith('letter.html'));
    const absolute = [...pages, ...letters].map(({ text }) => text).join('');
    const unnamed = filesBelow(site).filter(
      (path) =>
        !named.has(path) &&
        !path.startsWith('assets/') &&
        !['index.html', '404.html', 'robots.txt', 'sitemap.xml'].includes(path) &&
        !absolute.includes(encodeURI(path)),
    );
    expect(unnamed).toEqual([]);
  });
});

describeWith('nginx', 'nginx-light', 'under a sub-path of a static server', () => {
  let server: StaticServer;
  let base = '';
  beforeAll(async () => {
    server = await serveFolder(site, '/some/where/');
    base = server.base;
  });
  afterAll(() => server?.stop());

  test('every page and everything it names is served', async () => {
    const served = pages.filter(({ path }) => path !== '404.html');
    const wanted = new Set(served.map(({ path }) => new URL(path, base).href));
    // The page for an address that leads nowhere names things from the root of its own host: hosting.test.ts asks there.
    for (const { path, text } of served)
      for (const address of addressesIn(text).filter(isInternal))
        wanted.add(new URL(address, new URL(path, base)).href.split('#')[0] as string);
    const missing: string[] = [];
    for (const address of wanted) {
      const answer = await fetch(address, { method: 'HEAD' });
      if (!answer.ok) missing.push(`${answer.status} ${address}`);
    }
    expect(missing).toEqual([]);
    expect([...wanted].every((address) => address.startsWith(base))).toBe(true);
  });
});

test('the 404 page names nothing relative to itself, since a host serves it anywhere', () => {
  const text = pages.find(({ path }) => path === '404.html')?.text ?? '';
  expect(addressesIn(text).filter((address) => isInternal(address) && !address.startsWith('/'))).toEqual([]);
  expect(addressesIn(text).length).toBeGreaterThan(1);
});
