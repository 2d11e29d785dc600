import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { beforeAll, describe, expect, inject, test } from 'vitest';
import { sitemap } from '../../src/channels/sitemap.ts';
import type { Box } from '../../src/model/box.ts';
import { dateInZone } from '../../src/model/calendar.ts';
import { revealedAt, unsealed } from '../../src/model/seal.ts';
import { carriedOut } from '../support/carried-out.ts';
import { checksFile } from '../support/checks-folder.ts';
import { demoBox, publicInput } from '../support/demo-box.ts';
import { readRobots } from '../support/read-robots.ts';
import { describeWith, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const HOME = 'https://sillandsprig.example/';
const text = readFileSync(join(site, 'sitemap.xml'), 'utf8');
const robots = readFileSync(join(site, 'robots.txt'), 'utf8');

const pages = [...text.matchAll(/<url>([\s\S]*?)<\/url>/g)].map(([, source = '']) => ({
  address: /<loc>([^<]*)<\/loc>/.exec(source)?.[1] ?? '',
  changed: /<lastmod>([^<]*)<\/lastmod>/.exec(source)?.[1],
  images: [...source.matchAll(/<image:loc>([^<]*)<\/image:loc>/g)].map(([, address = '']) => address),
}));
const pathOf = (address: string): string => decodeURI(address.slice(HOME.length)) || 'index.html';

let box: Box;
beforeAll(async () => {
  box = await demoBox(join(site, '../.lidlore'));
});

describeWith('xmllint', 'libxml2-utils', 'the sitemap', () => {
  const schema = checksFile('sitemap/all.xsd');
  const lint = (source: string): number | null =>
    spawnSync('xmllint', ['--noout', '--nonet', '--schema', schema as string, '-'], { input: source }).status;

  // sitemaps.org's schema 0.9 with Google's picture extension, by libxml2; skipped where the folder is absent.
  test.skipIf(!schema)('fits the published schema', () => {
    expect(lint(text)).toBe(0);
  });
  test.skipIf(!schema).each([
    ['a day that does not exist', text.replace(/<lastmod>[^<]*/, '<lastmod>2026-02-30')],
    ['a page without an address', text.replace(/<loc>[^<]*<\/loc>/, '')],
    ['a picture without an address', text.replace(/<image:loc>[^<]*<\/image:loc>/, '')],
  ])('the schema finds %s', (_, broken) => {
    expect(broken).not.toBe(text);
    expect(lint(broken)).not.toBe(0);
  });
});

// sitemaps.org 0.9: what its schema cannot say.
describe('the sitemap', () => {
  test('names every public page once, and no other', () => {
    const addresses = pages.map(({ address }) => address);
    const published = pagesBelow(site)
      .map(({ path }) => path)
      .filter((path) => path !== '404.html');
    expect(addresses.map(pathOf).sort()).toEqual(published.sort());
    expect(addresses.filter((address) => !address.startsWith(HOME))).toEqual([]);
  });
  test('names each page by the address the page gives itself', () => {
    for (const { address } of pages)
      expect(readFileSync(join(site, pathOf(address)), 'utf8')).toContain(
        `<link rel="canonical" href="${address}">`,
      );
  });
  test('names pictures that are published, none twice on a page, and each item’s among its article’s', () => {
    for (const { address, images } of pages) {
      expect(images.filter((image) => !existsSync(join(site, pathOf(image))))).toEqual([]);
      expect(new Set(images).size).toBe(images.length);
      if (address.includes('/boxes/')) expect(images.length).toBeGreaterThanOrEqual(6);
      const page = readFileSync(join(site, pathOf(address)), 'utf8');
      const shown = (image: string): boolean => page.includes(image.slice(HOME.length));
      expect(images.filter((image) => !shown(image))).toEqual([]);
    }
  });
  test('dates each article by its record, and a page of many by the newest of them', () => {
    const days = new Map(pages.map(({ address, changed }) => [pathOf(address), changed]));
    for (const cycle of unsealed(box, Date.UTC(2026, 2, 27)).cycles) {
      const revealed = dateInZone(revealedAt(cycle), box.settings.timeZone);
      const later = [revealed, cycle.updated ?? ''].sort().at(-1);
      expect(days.get(`boxes/${cycle.address}.html`)).toBe(later);
    }
    const newest = [...days.values()].sort().at(-1);
    expect([days.get('index.html'), days.get('catalogue.html')]).toEqual([newest, newest]);
    expect(days.get('kinds/hand-tool.html')).toBe(days.get('boxes/2026-03-first-sowings.html'));
    expect(days.get('kinds/plant-support.html')).toBe(days.get('boxes/2025-07-hanging-garden.html'));
  });
  test('is the same bytes when it is made again, and a day later', async () => {
    for (const asOf of [Date.UTC(2026, 2, 27), Date.UTC(2026, 2, 28)])
      expect((await carriedOut(sitemap, await publicInput(box, asOf))).outputs).toEqual([
        { where: 'site', path: 'sitemap.xml', text },
      ]);
  });
});

describe('robots.txt', () => {
  // robots-parser: an independent reader of RFC 9309.
  test('lets every robot read every page and picture, and names the sitemap', () => {
    const rules = readRobots(`${HOME}robots.txt`, robots);
    expect(rules.getSitemaps()).toEqual([`${HOME}sitemap.xml`]);
    for (const { address, images } of pages)
      for (const one of [address, ...images])
        for (const robot of ['Googlebot', 'anyone']) expect(rules.isAllowed(one, robot)).toBe(true);
  });
  // A parser passes over a misspelt directive.
  test('has directives of RFC 9309 alone, and a group before its rules', () => {
    const lines = robots.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
    expect(lines.map((line) => line.split(':')[0])).toEqual(['User-agent', 'Allow', 'Sitemap']);
  });
  test('says nothing of what is private', () => {
    expect(`${robots}${text}`).not.toMatch(/backroom|disallow/i);
  });
});
