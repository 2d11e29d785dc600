/** Where things stand on the site, and how one page names another. Site paths have no leading slash. */
import type { BoxSettings, Cycle, Item } from '../model/box.ts';

const HOME = 'index.html';

/** Site path of a cycle's article. */
export const articlePath = (cycle: Cycle): string => `boxes/${cycle.address}.html`;

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
  path === HOME ? settings.url : settings.url + encoded(path);
