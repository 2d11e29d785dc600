/** Addresses that were shown and are no longer made: no published address dies in silence. */
import { blockLines, flowText } from '../../content/write-yaml.ts';
import { type Diagnostic, type Location, lookAt, mustFix } from '../../diagnostics/diagnostic.ts';
import { nearest } from '../../diagnostics/nearest.ts';
import type { Box, Cycle, Item, Moment, ShownAddress } from '../../model/box.ts';
import { dateInZone } from '../../model/calendar.ts';
import { kindKey, kindsWithPage } from '../../model/kinds.ts';
import { locationIn } from '../../model/location-in.ts';
import { findCycle } from '../../model/relations.ts';
import { articlePath, CATALOGUE_PATH, groupPath } from '../../render/addresses.ts';
import {
  anchorsOf,
  destinationFrom,
  formerArticlePaths,
  keptAddresses,
} from '../../render/public-addresses.ts';

/** A line for a record's front matter, as the owner may copy it. */
const line = (formerly: readonly string[]): string => `\`formerly: ${flowText(formerly)}\``;

const shownHere = ({ location }: ShownAddress): NonNullable<Diagnostic['related']> => ({
  location,
  message: 'it was first shown by this line; take the line out if nobody has ever seen the address',
});

const onDay = ({ firstShown }: ShownAddress): string =>
  firstShown === undefined ? 'it was shown before' : `it was first shown on ${firstShown}`;

/** Last part of an article's address, as records write it. */
const addressIn = (path: string): string => path.replace(/^boxes\//, '').replace(/\.html$/, '');

/** The cycle whose article stands at a page's address, or did before. */
const ownerOf = (box: Box, path: string): Cycle | undefined =>
  box.cycles.find((cycle) => articlePath(cycle) === path || formerArticlePaths(cycle).includes(path));

const lostFinding = (
  location: Location,
  message: string,
  fix: string,
  shown: ShownAddress,
  rule = 'address-lost',
): Diagnostic => ({ ...mustFix(rule, location, message, fix), related: shownHere(shown) });

/** A cycle that was never shown and holds at least half of what was shown in a lost one: its folder was renamed. */
const renamedTo = (box: Box, path: string, all: readonly ShownAddress[]): Cycle | undefined => {
  const anchors = all.flatMap(({ address }) => {
    const { path: page, fragment } = destinationFrom(address);
    return page === path && fragment !== undefined ? [fragment] : [];
  });
  const shown = new Set(all.map(({ cycle }) => cycle));
  const holds = ({ items }: Cycle, anchor: string): boolean =>
    items.some((item) => anchorsOf(item).includes(anchor));
  return box.cycles.find(
    (cycle) =>
      !shown.has(cycle.id) &&
      anchors.length > 0 &&
      anchors.filter((anchor) => holds(cycle, anchor)).length * 2 >= anchors.length,
  );
};

/** The cycle's page has another address now. */
const movedArticle = (cycle: Cycle, path: string, shown: ShownAddress): Diagnostic => {
  const old = addressIn(path);
  const now = articlePath(cycle);
  const keep = `\`address: ${flowText(old)}\` to keep the old one`;
  const differs = now.toLowerCase() !== path.toLowerCase();
  return lostFinding(
    locationIn(cycle.source, 'address', 'theme'),
    `Unexpected new address \`${now}\`, expected \`${path}\`: ${onDay(shown)}`,
    differs
      ? `Write ${line([...(cycle.formerly ?? []), old])} into it, and the old address sends on to the new one; or ${keep}`
      : `Write ${keep}: some disks do not tell capitals from small letters, so there cannot be a page at each`,
    shown,
  );
};

/** The page of a kind whose name was changed, by its slug; the catalogue where none is like it. */
const likeKind = (box: Box, slug: string): string => {
  const { lang } = box.settings;
  const groups = kindsWithPage(box);
  const key = kindKey(slug, lang);
  const last = key.split('-').at(-1) ?? '';
  const like = nearest(
    slug,
    groups.map((group) => group.slug),
  );
  const found =
    groups.find((group) => kindKey(group.slug, lang) === key) ??
    groups.find((group) => kindKey(group.slug, lang).split('-').at(-1) === last) ??
    groups.find((group) => group.slug === like);
  return found ? groupPath(found) : CATALOGUE_PATH;
};

/** A page that is no longer made, with the cycle that tells of what it told, or the page that box.md may send it on to. */
interface LostPage {
  readonly path: string;
  readonly shown: ShownAddress;
  readonly now: Cycle | string;
}

const lostPage = (box: Box, path: string, shown: ShownAddress, all: readonly ShownAddress[]): LostPage => {
  const { cycle, sort } = shown;
  if (cycle !== undefined)
    return { path, shown, now: findCycle(box, cycle) ?? renamedTo(box, path, all) ?? CATALOGUE_PATH };
  const slug = path.replace(/^.*\//, '').replace(/\.html$/, '');
  return { path, shown, now: sort === 'kind' ? likeKind(box, slug) : CATALOGUE_PATH };
};

/** What can be done about a page that no record of a cycle can send on, where lines are given that send it on. */
const wayOut = ({ shown: { sort, cycle } }: LostPage): string => {
  if (cycle !== undefined)
    return `Bring cycles/${cycle}/ back; or write the lines of \`formerly\` here, and its address sends on to the catalogue`;
  return sort === 'kind'
    ? 'Write the lines of `formerly` here, and the address sends on; or give the kind its old name back'
    : 'Write the lines of `formerly` here, and the address sends on again';
};

const lostPageFindings = ({ settings }: Box, lost: readonly LostPage[]): readonly Diagnostic[] => {
  const byBox = lost.flatMap(({ path, now }) => (typeof now === 'string' ? [[path, now] as const] : []));
  // The same for all of them: a record has one `formerly`.
  const lines = blockLines({ formerly: { ...settings.formerly, ...Object.fromEntries(byBox) } });
  return lost.map((one) => {
    const { path, shown, now } = one;
    if (typeof now !== 'string') return movedArticle(now, path, shown);
    const what = shown.cycle === undefined ? `\`${path}\`` : `the box of ${shown.cycle}`;
    const finding = lostFinding(
      locationIn(settings.source, 'formerly'),
      `Unexpected end of ${what}, expected it to stay${shown.cycle === undefined ? '' : ` at \`${path}\``}: ${onDay(shown)}`,
      wayOut(one),
      shown,
      shown.cycle === undefined ? 'address-lost' : 'cycle-removed',
    );
    return { ...finding, written: { lines, invented: false } };
  });
};

/** The item that has most likely taken a lost one's place: the only one that came later, or the one most like it. */
const successorOf = (
  cycle: Cycle,
  lost: string,
  shown: ShownAddress,
  all: readonly ShownAddress[],
): Item | undefined => {
  const since = shown.firstShown ?? '';
  const before = new Set(
    all
      .filter(({ cycle: id, firstShown = '' }) => id === cycle.id && firstShown <= since)
      .map(({ address }) => destinationFrom(address).fragment),
  );
  const later = cycle.items.filter(({ slug }) => !before.has(slug));
  if (later.length < 2) return later[0];
  const like = nearest(
    lost,
    later.map(({ slug }) => slug),
  );
  return later.find(({ slug }) => slug === like);
};

const lostAnchor = (
  cycle: Cycle,
  slug: string,
  shown: ShownAddress,
  all: readonly ShownAddress[],
): Diagnostic => {
  const item = successorOf(cycle, slug, shown, all);
  const message = `Unexpected end of the anchor \`${slug}\`, expected an item that keeps it: ${onDay(shown)}, and links to it lead to the top of the page now`;
  const finding = item
    ? lookAt(
        'anchor-lost',
        locationIn(item.source, 'slug', 'name'),
        message,
        `Write ${line([...(item.formerly ?? []), slug])} into it if this is the item; or \`slug: ${flowText(slug)}\` to keep the old one`,
      )
    : lookAt(
        'anchor-lost',
        locationIn(cycle.source, 'theme'),
        message,
        `Write ${line([slug])} into the item that has taken its place, or bring the item back`,
      );
  return { ...finding, related: shownHere(shown) };
};

const sealedAgain = (cycle: Cycle, path: string, shown: ShownAddress): Diagnostic => ({
  ...lookAt(
    'address-sealed',
    locationIn(cycle.source, 'reveal'),
    `Unexpected seal on \`${path}\`, expected it to stay open: ${onDay(shown)}; it leads nowhere until the box is revealed again`,
    'Write the moment at which it was revealed, unless it has to be hidden',
  ),
  related: shownHere(shown),
});

/**
 * What is wrong with the addresses that were shown by the day of a moment, in the box's zone: a page that is no longer
 * made must be fixed, because all that led to it leads nowhere; an anchor that is gone still opens its page, and a box
 * that is sealed again comes back; `open` is the part of the box whose pages are made. Of a page that is gone, its anchors are not told of.
 */
export const lostAddresses = (
  box: Box,
  open: Box,
  shown: readonly ShownAddress[],
  asOf: Moment,
): readonly Diagnostic[] => {
  const today = dateInZone(asOf, box.settings.timeZone);
  const known = shown.filter(({ firstShown = '' }) => firstShown <= today);
  if (known.length === 0) return [];
  const [kept, keptWhenOpen] = [keptAddresses(open), keptAddresses(box)];
  const pages = new Map<string, ShownAddress>();
  for (const one of known) {
    const { path } = destinationFrom(one.address);
    if (!pages.has(path)) pages.set(path, one);
  }
  const lost: LostPage[] = [];
  const sealed: Diagnostic[] = [];
  for (const [path, one] of pages) {
    if (kept.has(path)) continue;
    const owner = ownerOf(box, path);
    if (owner) sealed.push(sealedAgain(owner, path, one));
    // A kind's page comes back with the cycle that is sealed again, and what box.md sends on has findings of its own.
    else if (!keptWhenOpen.has(path) && box.settings.formerly?.[path] === undefined)
      lost.push(lostPage(box, path, one, known));
  }
  const told = new Set<string>();
  const lostAnchors = known.flatMap((one): readonly Diagnostic[] => {
    const { path, fragment } = destinationFrom(one.address);
    if (fragment === undefined || !kept.has(path) || kept.has(one.address)) return [];
    const owner = ownerOf(open, path);
    const key = `${owner?.id} ${fragment}`;
    if (!owner || owner.id !== one.cycle || told.has(key)) return [];
    told.add(key);
    return [lostAnchor(owner, fragment, one, known)];
  });
  return [...lostPageFindings(box, lost), ...sealed, ...lostAnchors];
};
