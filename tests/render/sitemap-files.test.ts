import { describe, expect, test } from 'vitest';
import { type SitemapPage, sitemapFiles } from '../../src/render/sitemap-files.ts';

const addressOf = (path: string): string => `https://sill.example/${path}`;
const many = (count: number, images: readonly string[] = []): readonly SitemapPage[] =>
  Array.from({ length: count }, (_, i) => ({
    address: addressOf(`boxes/${i}.html`),
    changed: `2026-0${1 + (i % 3)}-01`,
    images,
  }));
const addressesIn = (text: string): string[] =>
  [...text.matchAll(/<url><loc>([^<]*)<\/loc>/g)].map(([, address = '']) => address);

// sitemaps.org 0.9: at most 50,000 addresses and 52,428,800 bytes a file.
describe('a sitemap', () => {
  test.each([0, 1, 50_000])('of %i pages is one file', (count) => {
    const files = sitemapFiles('sitemap.xml', many(count), addressOf);
    expect(files.map(({ path }) => path)).toEqual(['sitemap.xml']);
    expect(addressesIn(files[0]?.text ?? '')).toHaveLength(count);
  });

  test('of more pages than a file may name becomes an index of files, every page in one of them', () => {
    const pages = many(120_001);
    const [index, ...parts] = sitemapFiles('sitemap.xml', pages, addressOf);
    expect(parts.map(({ path }) => path)).toEqual(['sitemap-1.xml', 'sitemap-2.xml', 'sitemap-3.xml']);
    expect(parts.map(({ text }) => addressesIn(text).length)).toEqual([50_000, 50_000, 20_001]);
    expect(parts.flatMap(({ text }) => addressesIn(text))).toEqual(pages.map(({ address }) => address));
    expect(index?.path).toBe('sitemap.xml');
    const named = [...(index?.text ?? '').matchAll(/<sitemap><loc>([^<]*)<\/loc><lastmod>([^<]*)</g)];
    expect(named.map(([, address, day]) => [address, day])).toEqual(
      [1, 2, 3].map((n) => [addressOf(`sitemap-${n}.xml`), '2026-03-01']),
    );
  });

  test('of more bytes than a file may have is split before it is too large', () => {
    const limit = 4000;
    const pages = many(200, [addressOf('pictures/ä&b.jpg')]);
    const [, ...parts] = sitemapFiles('sitemap.xml', pages, addressOf, { pages: 50_000, bytes: limit });
    expect(parts.length).toBeGreaterThan(5);
    const sizes = parts.map(({ text }) => Buffer.byteLength(text));
    expect(sizes.filter((size) => size > limit)).toEqual([]);
    // None is split long before it has to be.
    expect(sizes.slice(0, -1).filter((size) => size < limit * 0.9)).toEqual([]);
    expect(parts.flatMap(({ text }) => addressesIn(text))).toEqual(pages.map(({ address }) => address));
  });

  test('leaves out a day that is not known, and escapes addresses', () => {
    const [file] = sitemapFiles(
      'sitemap.xml',
      [{ address: 'https://sill.example/?a=1&b=2', images: [] }],
      addressOf,
    );
    expect(file?.text).toContain('<url><loc>https://sill.example/?a=1&amp;b=2</loc></url>');
  });
});
