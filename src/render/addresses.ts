/** Where things stand on the site, and how one page names another. Site paths have no leading slash. */
import type { Box, BoxSettings, Cycle, Item } from '../model/box.ts';
import { hasKindPage, type KindGroup, kindGroupOf } from '../model/kinds.ts';
import { findCycle, findItem } from '../model/relations.ts';
import type { Target } from '../model/story.ts';

/** Site path of the home page. */
export const HOME_PATH = 'index.html';
/** Site path of the catalogue. */
export const CATALOGUE_PATH = 'catalogue.html';
/** Site path of the sitemap, of its index where it has several files. */
export const SITEMAP_PATH = 'sitemap.xml';

/** Site path of a cycle's article. */
export const articlePath = (cycle: Pick<Cycle, 'address'>): string => `boxes/${cycle.address}.html`;

/** Site path of the page of a kind that has one. */
export const groupPath = ({ slug }: KindGroup): string => `kinds/${slug}.html`;

/** Site path of the page that holds every item of a kind; undefined where too few share it for a page. */
export const kindPagePath = (box: Box, kind: string): string | undefined => {
  const group = kindGroupOf(box, kind);
  return group && hasKindPage(box, kind) ? groupPath(group) : undefined;
};

/** Fragment, without `#`, of an item's section in its article. */
export const itemAnchor = (item: Pick<Item, 'slug'>): string => item.slug;

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
export const absoluteAddress = ({ url }: Pick<BoxSettings, 'url'>, path: string): string =>
  path === HOME_PATH ? url : url + encoded(path);

/** A site path's address from the root of its host, for a page that is served at any depth: `/box/icon.svg`. */
export const rootedAddress = (site: Pick<BoxSettings, 'url'>, path: string): string =>
  new URL(absoluteAddress(site, path)).pathname;

/** Where a record stands on the site: a page, and for an item its section there. */
export interface Destination {
  /** Site path. */
  readonly path: string;
  /** Without `#`. */
  readonly fragment?: string;
}

/** Where an item is told of: its section in its cycle's article. */
export const itemDestination = (cycle: Pick<Cycle, 'address'>, item: Pick<Item, 'slug'>): Destination => ({
  path: articlePath(cycle),
  fragment: itemAnchor(item),
});

/** Where a link to a record leads; undefined for a record that the box does not hold. */
export const destinationOf = (box: Box, target: Target): Destination | undefined => {
  const cycle = findCycle(box, target.cycle);
  if (!cycle) return undefined;
  if (target.item === undefined) return { path: articlePath(cycle) };
  const item = findItem(box, target.cycle, target.item);
  return item && itemDestination(cycle, item);
};

const withFragment = (address: string, { fragment }: Destination): string =>
  fragment === undefined ? address : `${address}#${fragment}`;

/** Address of a destination as seen from `page` (a site path); a section of that page is named by its fragment alone. */
export const addressFrom = (page: string, to: Destination): string =>
  withFragment(to.path === page && to.fragment !== undefined ? '' : relativeAddress(page, to.path), to);

/** Full address of a destination, for what is read away from the site. */
export const fullAddress = (site: Pick<BoxSettings, 'url'>, to: Destination): string =>
  withFragment(site.url + encoded(to.path), to);
