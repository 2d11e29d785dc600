/** Where things stand on the site, and how one page names another. Site paths have no leading slash. */
import type { Box, BoxSettings, Cycle, Item } from '../model/box.ts';
import { hasKindPage, kindGroupOf } from '../model/kinds.ts';
import { findItem } from '../model/relations.ts';
import type { Target } from '../model/story.ts';

export const HOME_PATH = 'index.html';
export const CATALOGUE_PATH = 'catalogue.html';
export const SITEMAP_PATH = 'sitemap.xml';

/** Site path of a cycle's article. */
export const articlePath = (cycle: Cycle): string => `boxes/${cycle.address}.html`;

/** Site path of the page that holds every item of a kind; undefined where too few share it for a page. */
export const kindPagePath = (box: Box, kind: string): string | undefined =>
  hasKindPage(box, kind) ? `kinds/${kindGroupOf(box, kind)?.slug}.html` : undefined;

/** Fragment, without `#`, of an item's section in its article. */
export const itemAnchor = (item: Item): string => item.slug;

/** A path as it is written in an address: RFC 3986 §2.1 percent-encoding, slashes kept. */
const encoded = (path: string): string => path.split('/').map(encodeURIComponent).join('/');

/**
 * Address of `toPath` as seen from `fromPage` (both site paths, `toPath` without a fragment). Always names the
 * file, so that it works from a domain's root, from a sub-path and opened from disk.
 */
export const relativeAddress = (fromPage: string, toPath: string): string => {
  const from = fromPage.split('/').slice(0, -1);
  const to = toPath.split('/');
  const name = to.pop() ?? '';
  let shared = 0;
  while (shared < from.length && shared < to.length && from[shared] === to[shared]) shared += 1;
  const up = from.slice(shared).map(() => '..');
  return encoded([...up, ...to.slice(shared), name].join('/'));
};

/** Absolute address of a site path; the home page is the site's bare address. */
export const absoluteAddress = (settings: BoxSettings, path: string): string =>
  path === HOME_PATH ? settings.url : settings.url + encoded(path);

/**
 * Address of a cycle's article, or of an item's section in it, as seen from `page` (a site path); undefined for a
 * record that the box does not hold.
 */
export const recordAddress = (box: Box, target: Target, page: string): string | undefined => {
  const cycle = box.cycles.find((other) => other.id === target.cycle);
  if (!cycle) return undefined;
  const path = articlePath(cycle);
  const address = relativeAddress(page, path);
  if (target.item === undefined) return address;
  const item = findItem(box, target.cycle, target.item);
  return item && `${path === page ? '' : address}#${itemAnchor(item)}`;
};

/** Address of an item's section as seen from `page`. Throws for an item that is not of the box. */
export const itemAddress = (box: Box, item: Item, page: string): string => {
  const address = recordAddress(box, { cycle: item.cycle, item: item.slug }, page);
  if (address === undefined) throw new Error(`Expected the item ${item.slug} of ${item.cycle} in the box`);
  return address;
};

/** Full address of a record, for what is read away from the site; undefined for one that the box does not hold. */
export const absoluteRecordAddress = (box: Box, target: Target): string | undefined => {
  const address = recordAddress(box, target, HOME_PATH);
  return address && box.settings.url + address;
};

/** Full address of an item's section. Throws for an item that is not of the box. */
export const absoluteItemAddress = (box: Box, item: Item): string =>
  box.settings.url + itemAddress(box, item, HOME_PATH);
