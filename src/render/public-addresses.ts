/**
 * Every address of the site that its content decides, and where those lead that stood there before. The first page, the
 * catalogue and the feeds are not among them: their names are the program's own, and no change of content moves them.
 */
import type { Box, Cycle, Item, PublicAddress } from '../model/box.ts';
import { type KindGroup, kindsWithPage } from '../model/kinds.ts';
import { remembered } from '../text/remembered.ts';
import {
  articlePath,
  CATALOGUE_PATH,
  type Destination,
  groupPath,
  HOME_PATH,
  itemDestination,
} from './addresses.ts';

/** What a page that sends on leads to. */
export type RedirectTarget =
  | { readonly page: 'article'; readonly cycle: Cycle; readonly item?: Item }
  | { readonly page: 'kind'; readonly group: KindGroup }
  | { readonly page: 'home' }
  | { readonly page: 'catalogue' };

/** An address where a page stood, and where it sends on to. */
export interface Redirect {
  /** Site path of the page that is left there. */
  readonly path: string;
  readonly to: Destination;
  readonly target: RedirectTarget;
}

/** Site paths of an article as it was once addressed. */
export const formerArticlePaths = ({ formerly = [] }: Pick<Cycle, 'formerly'>): readonly string[] =>
  formerly.map((address) => articlePath({ address }));

/** An item's anchors, its own first. */
export const anchorsOf = ({ slug, formerly = [] }: Pick<Item, 'slug' | 'formerly'>): readonly string[] => [
  slug,
  ...formerly,
];

/** An address of the site in its two parts. */
export const destinationFrom = (address: string): Destination => {
  const [path = '', fragment] = address.split('#');
  return fragment === undefined ? { path } : { path, fragment };
};

/** The same address in one piece, not encoded. */
export const addressText = ({ path, fragment }: Destination): string =>
  fragment === undefined ? path : `${path}#${fragment}`;

/** Every page that the box makes of its content, by site path. */
export const livingPages = remembered(
  (box: Box): ReadonlyMap<string, RedirectTarget> =>
    new Map<string, RedirectTarget>([
      [HOME_PATH, { page: 'home' }],
      [CATALOGUE_PATH, { page: 'catalogue' }],
      ...box.cycles.map((cycle) => [articlePath(cycle), { page: 'article', cycle }] as const),
      ...kindsWithPage(box).map((group) => [groupPath(group), { page: 'kind', group }] as const),
    ]),
);

/** What stands at an address of the site; undefined where the box makes no such page, or an article has no such item. */
export const livingAt = (box: Box, { path, fragment }: Destination): RedirectTarget | undefined => {
  const target = livingPages(box).get(path);
  if (target?.page !== 'article' || fragment === undefined) return target;
  const item = target.cycle.items.find((one) => anchorsOf(one).includes(fragment));
  return item && { ...target, item };
};

/**
 * The pages that send on: one at each former address of a cycle, and those that box.md names. Of an open box they lead
 * to nothing sealed, because it is not there to be led to.
 */
export const redirectsOf = (box: Box): readonly Redirect[] => {
  const ofCycles = box.cycles.flatMap((cycle) =>
    formerArticlePaths(cycle).map(
      (path): Redirect => ({ path, to: { path: articlePath(cycle) }, target: { page: 'article', cycle } }),
    ),
  );
  const ofBox = Object.entries(box.settings.formerly ?? {}).flatMap(([path, address]): Redirect[] => {
    const to = destinationFrom(address);
    const target = livingAt(box, to);
    return target ? [{ path, to, target }] : [];
  });
  return [...ofCycles, ...ofBox];
};

const articleAddresses = (cycle: Cycle): readonly PublicAddress[] => [
  { address: articlePath(cycle), sort: 'article', cycle: cycle.id },
  ...cycle.items.flatMap((item) =>
    anchorsOf(item).map(
      (slug): PublicAddress => ({
        address: addressText(itemDestination(cycle, { slug })),
        sort: 'item',
        cycle: cycle.id,
      }),
    ),
  ),
];

/** Every address of the site that its content decides, each once: articles with their items, kinds, pages that send on. */
export const publicAddresses = (box: Box): readonly PublicAddress[] => [
  ...box.cycles.flatMap(articleAddresses),
  ...kindsWithPage(box).map((group): PublicAddress => ({ address: groupPath(group), sort: 'kind' })),
  ...redirectsOf(box).map(
    ({ path, target, to }): PublicAddress =>
      target.page === 'article' &&
      to.fragment === undefined &&
      formerArticlePaths(target.cycle).includes(path)
        ? { address: path, sort: 'article', cycle: target.cycle.id }
        : { address: path, sort: 'page' },
  ),
];

/** Every address that leads somewhere, the anchors on pages that send on to an article among them. */
export const keptAddresses = remembered(
  (box: Box): ReadonlySet<string> =>
    new Set([
      ...publicAddresses(box).map(({ address }) => address),
      ...redirectsOf(box).flatMap(({ path, target }) =>
        target.page === 'article'
          ? target.cycle.items.flatMap(anchorsOf).map((fragment) => addressText({ path, fragment }))
          : [],
      ),
    ]),
);
