/** The sitemap: every public page once, with the day it last changed and its pictures. */
import type { Cycle, Item, Picture } from '../model/box.ts';
import { latestChange } from '../model/calendar.ts';
import { kindsWithPage } from '../model/kinds.ts';
import { referencesIn } from '../model/story-references.ts';
import {
  absoluteAddress,
  articlePath,
  CATALOGUE_PATH,
  groupPath,
  HOME_PATH,
  SITEMAP_PATH,
} from '../render/addresses.ts';
import { itemPlate } from '../render/layouts.ts';
import { widestPath } from '../render/pictures.ts';
import { type SitemapFile, type SitemapPage, sitemapFiles } from '../render/sitemap-files.ts';
import { defined } from '../text/defined.ts';
import { remembered } from '../text/remembered.ts';
import { type PlannedDocument, type PlanningChannel, plannedDocument } from './channel.ts';

const picturesOf = ({ hero, wholeBox, peek, items, story }: Cycle): readonly Picture[] =>
  [
    hero,
    ...referencesIn(story).pictures,
    ...items.flatMap((item) => [...item.pictures, ...referencesIn(item.story).pictures]),
    wholeBox,
    peek?.picture,
  ].filter((picture) => picture !== undefined);

const widestPaths = (pictures: readonly Picture[]): readonly string[] => [
  ...new Set(pictures.map((picture) => widestPath(picture, itemPlate))),
];

/** Site paths of an article's pictures: a cycle that did not change is not asked again. */
const picturePaths = remembered((cycle: Cycle): readonly string[] => widestPaths(picturesOf(cycle)));

/** The site path of an item's first picture, where it has one. */
const firstPaths = remembered(({ pictures }: Item): readonly string[] => widestPaths(pictures.slice(0, 1)));

/** A page that is listed; `images` are site paths. */
interface PlannedPage {
  readonly path: string;
  readonly changed?: string;
  readonly images: readonly string[];
}

interface SitemapData {
  readonly url: string;
  readonly pages: readonly PlannedPage[];
}

const filesOf = (site: SitemapData): readonly SitemapFile[] => {
  const addressOf = (path: string): string => absoluteAddress(site, path);
  const pages = site.pages.map(
    ({ path, images, ...page }): SitemapPage => ({
      ...page,
      address: addressOf(path),
      images: images.map(addressOf),
    }),
  );
  return sitemapFiles(SITEMAP_PATH, pages, addressOf);
};

const sitemapFile = (data: SitemapData) => ({
  content: filesOf(data)
    .map(({ text }) => text)
    .join(''),
});

/**
 * One file certainly holds as much: a file's name has 255 bytes at most, and each is three in an address. What is over
 * may still fit.
 */
const SURELY_ONE_FILE = { pages: 5000, images: 25_000 };

/** The documents of a sitemap. How many files a very long one is cut into follows from its text, which is made at once. */
const documentsOf = (data: SitemapData): readonly PlannedDocument[] => {
  const images = data.pages.reduce((sum, page) => sum + page.images.length, 0);
  if (data.pages.length <= SURELY_ONE_FILE.pages && images <= SURELY_ONE_FILE.images)
    return [plannedDocument(SITEMAP_PATH, 'list', data, sitemapFile)];
  return filesOf(data).map(({ path, text }) =>
    plannedDocument(path, 'list', text, (content) => ({ content })),
  );
};

/** The sitemap, in as many files as it needs. */
export const sitemap: PlanningChannel<'site'> = {
  name: 'sitemap',
  where: 'site',
  plan: ({ box }) => {
    const { settings, cycles } = box;
    const page = (path: string, ids: readonly string[], images: readonly string[]): PlannedPage =>
      defined({ path, changed: latestChange(box, ids), images });
    const all = cycles.map(({ id }) => id);
    const pages = [
      page(HOME_PATH, all, []),
      page(CATALOGUE_PATH, all, []),
      ...kindsWithPage(box).map((group) =>
        page(
          groupPath(group),
          group.items.map(({ cycle }) => cycle),
          [...new Set(group.items.flatMap(firstPaths))],
        ),
      ),
      ...[...cycles].reverse().map((cycle) => page(articlePath(cycle), [cycle.id], picturePaths(cycle))),
    ];
    return { documents: documentsOf({ url: settings.url, pages }) };
  },
};
