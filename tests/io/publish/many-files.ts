/** Many files of a site, as like a real one's as a test needs: most are pictures that stay when a page changes. */
import { createHash } from 'node:crypto';
import type { PublishedFile } from '../../../src/io/publish/publish.ts';

/** Of 20 files one is a page of the named site; every third picture is, too, and the others are of every site. */
const isOfSite = (i: number): boolean => i % 20 === 0 || i % 3 === 0;

/** Path → text of `count` files. */
export const manyTexts = (site: string, count: number): Record<string, string> =>
  Object.fromEntries(
    Array.from({ length: count }, (_, i) => {
      const text = `${isOfSite(i) ? site : 'every site'} ${i} `.repeat(50);
      return [i % 20 === 0 ? `boxes/${i}.html` : `pictures/${isOfSite(i) ? site : 'all'}-${i}.jpg`, text];
    }),
  );

export const manyFiles = (site: string, count: number): PublishedFile[] =>
  Object.entries(manyTexts(site, count)).map(([path, text]) => ({
    path,
    key: createHash('sha256').update(text).digest('base64url'),
    step: path.endsWith('.html') ? 'page' : 'asset',
    bring: async () => text,
  }));
