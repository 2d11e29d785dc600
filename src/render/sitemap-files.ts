/** Sitemaps as text: sitemaps.org protocol 0.9, with pictures by Google's extension (sitemap-image 1.1). */
import { utf8Length } from '../text/utf8.ts';
import { type Html, htmlSource } from './html.ts';
import { xml, xmlDocument } from './xml.ts';

/** A page as a sitemap lists it. */
export interface SitemapPage {
  /** Full address. */
  readonly address: string;
  /** The day the page last changed, `YYYY-MM-DD`. */
  readonly changed?: string;
  /** Full addresses. */
  readonly images: readonly string[];
}

/** A file of a sitemap. */
export interface SitemapFile {
  /** Site path. */
  readonly path: string;
  readonly text: string;
}

interface SitemapLimits {
  readonly pages: number;
  readonly bytes: number;
}

/** sitemaps.org, "Using Sitemap index files": at most 50,000 addresses and 50 MB, uncompressed. */
const LIMITS: SitemapLimits = { pages: 50_000, bytes: 50 * 1024 * 1024 };

/** Google, "Image sitemaps": up to 1,000 pictures a page. */
const MOST_IMAGES = 1000;

const pageElement = ({ address, changed, images }: SitemapPage): Html =>
  xml`<url><loc>${address}</loc>${changed && xml`<lastmod>${changed}</lastmod>`}${images
    .slice(0, MOST_IMAGES)
    .map((image) => xml`<image:image><image:loc>${image}</image:loc></image:image>`)}</url>
`;

const urlset = (elements: readonly Html[]): string =>
  xmlDocument(
    xml`<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9" xmlns:image="http://www.google.com/schemas/sitemap-image/1.1">
${elements}</urlset>`,
  );

interface Drawn {
  readonly element: Html;
  readonly changed?: string;
}

/** Runs of pages of which each fits in one file. */
const split = (pages: readonly SitemapPage[], limits: SitemapLimits): readonly (readonly Drawn[])[] => {
  const frame = utf8Length(urlset([]));
  const runs: Drawn[][] = [];
  let room = 0;
  for (const page of pages) {
    const element = pageElement(page);
    const size = utf8Length(htmlSource(element));
    const run = runs.at(-1);
    const drawn = { element, ...(page.changed === undefined ? {} : { changed: page.changed }) };
    if (run && run.length < limits.pages && size <= room) {
      run.push(drawn);
      room -= size;
    } else {
      runs.push([drawn]);
      room = limits.bytes - frame - size;
    }
  }
  return runs;
};

const latest = (run: readonly Drawn[]): string | undefined =>
  run
    .map(({ changed }) => changed)
    .filter((changed) => changed !== undefined)
    .sort()
    .at(-1);

/**
 * The sitemap of `pages` at `path` (a site path): one file, or an index of as many as the limits ask for, numbered
 * from 1 beside it. `addressOf` gives the full address of a site path.
 */
export const sitemapFiles = (
  path: string,
  pages: readonly SitemapPage[],
  addressOf: (path: string) => string,
  limits: SitemapLimits = LIMITS,
): readonly SitemapFile[] => {
  const runs = split(pages, limits);
  if (runs.length < 2) return [{ path, text: urlset((runs[0] ?? []).map(({ element }) => element)) }];
  const parts = runs.map((run, i) => ({
    path: path.replace(/\.xml$/, `-${i + 1}.xml`),
    text: urlset(run.map(({ element }) => element)),
    changed: latest(run),
  }));
  const index = xml`<sitemapindex xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${parts.map(
  (part) =>
    xml`<sitemap><loc>${addressOf(part.path)}</loc>${part.changed && xml`<lastmod>${part.changed}</lastmod>`}</sitemap>
`,
)}</sitemapindex>`;
  return [{ path, text: xmlDocument(index) }, ...parts.map(({ path: at, text }) => ({ path: at, text }))];
};
