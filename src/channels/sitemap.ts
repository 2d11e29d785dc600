/** The sitemap: every public page once, with the day it last changed and its pictures. */
import { visit } from 'unist-util-visit';
import type { Cycle, Picture, Story } from '../model/box.ts';
import { changedOn } from '../model/calendar.ts';
import { kindsWithPage } from '../model/kinds.ts';
import { cycleOf } from '../model/relations.ts';
import type { OpenCycle } from '../model/seal.ts';
import {
  absoluteAddress,
  articlePath,
  CATALOGUE_PATH,
  HOME_PATH,
  kindPagePath,
  SITEMAP_PATH,
} from '../render/addresses.ts';
import { itemPlate } from '../render/layouts.ts';
import { widestPath } from '../render/pictures.ts';
import { type SitemapPage, sitemapFiles } from '../render/sitemap-files.ts';
import type { Channel } from './channel.ts';

const picturesIn = ({ tree }: Story): readonly Picture[] => {
  const pictures: Picture[] = [];
  visit(tree, 'image', ({ data }) => {
    if (data?.picture) pictures.push(data.picture);
  });
  return pictures;
};

const picturesOf = ({ hero, wholeBox, peek, items, story }: Cycle): readonly Picture[] =>
  [
    hero,
    ...picturesIn(story),
    ...items.flatMap((item) => [...item.pictures, ...picturesIn(item.story)]),
    wholeBox,
    peek?.picture,
  ].filter((picture) => picture !== undefined);

export const sitemap: Channel<'site'> = {
  name: 'sitemap',
  where: 'site',
  make: ({ box }) => {
    const { settings, cycles } = box;
    const addressOf = (path: string): string => absoluteAddress(settings, path);
    const changed = (of: readonly OpenCycle[]): { readonly changed?: string } => {
      const day = of
        .map((cycle) => changedOn(cycle, settings.timeZone))
        .sort()
        .at(-1);
      return day === undefined ? {} : { changed: day };
    };
    const images = (pictures: readonly Picture[]): readonly string[] => [
      ...new Set(pictures.map((picture) => addressOf(widestPath(picture, itemPlate)))),
    ];
    const pages: readonly SitemapPage[] = [
      { address: addressOf(HOME_PATH), ...changed(cycles), images: [] },
      { address: addressOf(CATALOGUE_PATH), ...changed(cycles), images: [] },
      ...kindsWithPage(box).map(({ kind, items }) => ({
        address: addressOf(kindPagePath(box, kind) as string),
        ...changed(items.map((item) => cycleOf(box, item))),
        images: images(items.flatMap((item) => item.pictures.slice(0, 1))),
      })),
      ...[...cycles].reverse().map((cycle) => ({
        address: addressOf(articlePath(cycle)),
        ...changed([cycle]),
        images: images(picturesOf(cycle)),
      })),
    ];
    return {
      outputs: sitemapFiles(SITEMAP_PATH, pages, addressOf).map((file) => ({
        where: 'site' as const,
        ...file,
      })),
      diagnostics: [],
    };
  },
};
