/** Whether what records say of former addresses fits together: each leads to one place, and to one that is there. */
import { type Diagnostic, type Location, lookAt } from '../../diagnostics/diagnostic.ts';
import type { Box } from '../../model/box.ts';
import { locationIn } from '../../model/location-in.ts';
import { destinationFrom, formerArticlePaths, livingAt, livingPages } from '../../render/public-addresses.ts';

/** A record's word that a page stood at a site path. */
interface Claim {
  readonly path: string;
  /** As the record writes it. */
  readonly written: string;
  readonly location: Location;
}

const claimsOf = (box: Box): readonly Claim[] => [
  ...box.cycles.flatMap((cycle) =>
    formerArticlePaths(cycle).map((path, i) => ({
      path,
      written: cycle.formerly?.[i] ?? '',
      location: locationIn(cycle.source, `formerly.${i}`, 'formerly'),
    })),
  ),
  ...Object.keys(box.settings.formerly ?? {}).map((path) => ({
    path,
    written: path,
    location: locationIn(box.settings.source, `formerly.${path}`, 'formerly'),
  })),
];

/** Some disks do not tell capitals from small letters, so two pages cannot differ in them alone. */
const onDisk = (path: string): string => path.toLowerCase();

const claimFindings = (box: Box): readonly Diagnostic[] => {
  const pages = new Map([...livingPages(box)].map(([path, target]) => [onDisk(path), { path, target }]));
  const claimed = new Map<string, Claim>();
  return claimsOf(box).flatMap((claim): readonly Diagnostic[] => {
    const key = onDisk(claim.path);
    const living = pages.get(key);
    const before = claimed.get(key);
    if (!before) claimed.set(key, claim);
    if (!living && !before) return [];
    const owner = living?.target.page === 'article' ? living.target.cycle : undefined;
    const related = owner
      ? { location: locationIn(owner.source, 'address', 'theme'), message: 'its page stands there now' }
      : before && { location: before.location, message: 'it is claimed here' };
    return [
      {
        weight: 'must fix',
        rule: 'formerly-taken',
        location: claim.location,
        message: living
          ? `Unexpected former address \`${claim.path}\`, expected one where no page stands now${living.path === claim.path ? '' : `, as \`${living.path}\` does`}`
          : `Unexpected former address \`${claim.path}\`, expected one that nothing else claims`,
        fix: `Take \`${claim.written}\` out of \`formerly\``,
        ...(related && { related }),
      },
    ];
  });
};

/** Where what box.md sends on leads nowhere, or on to another page that sends on, or to what is sealed. */
const targetFindings = (box: Box, open: Box): readonly Diagnostic[] => {
  const { formerly = {}, source } = box.settings;
  const sent = new Map<string, string>([
    ...box.cycles.flatMap((cycle) =>
      formerArticlePaths(cycle).map((path) => [path, `boxes/${cycle.address}.html`] as const),
    ),
    ...Object.entries(formerly),
  ]);
  return Object.entries(formerly).flatMap(([path, address]): readonly Diagnostic[] => {
    const to = destinationFrom(address);
    if (livingAt(open, to)) return [];
    const location = locationIn(source, `formerly.${path}`, 'formerly');
    if (livingAt(box, to))
      return [
        lookAt(
          'formerly-sealed',
          location,
          `Unexpected address \`${address}\` of what is sealed, expected one that can be shown; \`${path}\` leads nowhere until then`,
          'Send it on to something that is open, as catalogue.html, or wait for the reveal',
        ),
      ];
    const further = sent.get(to.path);
    return [
      {
        weight: 'must fix',
        rule: further === undefined ? 'formerly-nowhere' : 'formerly-chain',
        location,
        message:
          further === undefined
            ? `Unexpected address \`${address}\`, expected one that the site has`
            : `Unexpected address \`${address}\`, which only sends on itself, expected one where a page stands`,
        fix:
          further === undefined || further === address || sent.has(destinationFrom(further).path)
            ? `Write where \`${path}\` leads to, as catalogue.html`
            : `Write \`${path}: ${further}\``,
      },
    ];
  });
};

/**
 * What does not fit together in what records say of former addresses, and what of it leads nowhere; `open` is the part of
 * the box whose pages are made.
 */
export const formerlyFindings = (box: Box, open: Box): readonly Diagnostic[] => [
  ...claimFindings(box),
  ...targetFindings(box, open),
];
