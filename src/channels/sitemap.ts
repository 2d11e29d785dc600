/** The sitemap: every public page once, with the day it last changed and its pictures. */
import type { Cycle, Picture } from '../model/box.ts';
import { changedOn } from '../model/calendar.ts';
import { kindsWithPage } from '../model/kinds.ts';
import { cycleOf } from '../model/relations.ts';
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
import { type SitemapPage, sitemapFiles } from '../render/sitemap-files.ts';
import { defined } from '../text/defined.ts';
import { remembered } from '../text/remembered.ts';
import { type PlanningChannel, plannedDocument } from './channel.ts';

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

/** A page that is listed; `images` are site paths. */
interface PlannedPage {
  readonly path: string;
  readonly changed?: string;
  readonly images: readonly string[];
}

const sitemapPages = (
  site: { readonly url: string },
  pages: readonly PlannedPage[],
): readonly SitemapPage[] =>
  pages.map(({ path, images, ...page }) => ({
    ...page,
    address: absoluteAddress(site, path),
    images: images.map((image) => absoluteAddress(site, image)),
  }));

export const sitemap: PlanningChannel = {
  name: 'sitemap',
  where: 'site',
  plan: ({ box }) => {
    const { settings, cycles } = box;
    const site = { url: settings.url };
    const days = new Map(cycles.map((cycle) => [cycle, changedOn(cycle, settings.timeZone)]));
    const changed = (of: readonly Cycle[]): string | undefined =>
      of
        .map((cycle) => days.get(cycle) ?? '')
        .sort()
        .at(-1);
    const page = (path: string, of: readonly Cycle[], images: readonly string[]): PlannedPage =>
      defined({ path, changed: changed(of), images });
    const pages = [
      page(HOME_PATH, cycles, []),
      page(CATALOGUE_PATH, cycles, []),
      ...kindsWithPage(box).map((group) =>
        page(
          groupPath(group),
          group.items.map((item) => cycleOf(box, item)),
          widestPaths(group.items.flatMap((item) => item.pictures.slice(0, 1))),
        ),
      ),
      ...[...cycles].reverse().map((cycle) => page(articlePath(cycle), [cycle], picturePaths(cycle))),
    ];
    const files = sitemapFiles(SITEMAP_PATH, sitemapPages(site, pages), (path) =>
      absoluteAddress(site, path),
    );
    return {
      documents: files.map(({ path, text }) =>
        plannedDocument(path, 'list', text, (content) => ({ content })),
      ),
    };
  },
};
