/** robots.txt (RFC 9309): everything public may be read, and here is the list of it. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { BoxSettings } from '../model/box.ts';
import { locationIn } from '../model/location-in.ts';
import { absoluteAddress, SITEMAP_PATH } from '../render/addresses.ts';
import { type PlanningChannel, plannedDocument } from './channel.ts';

/** `sitemap` is its full address. */
const robotsText = (sitemap: string): string => `# All of this site may be read and indexed.
# Robots ask for this file at the root of a domain alone (RFC 9309, 2.3): where the site stands in a folder of one,
# the lines below belong in the file at the root.
User-agent: *
Allow: /

Sitemap: ${sitemap}
`;

/** What the owner of a site in a folder has to know, since no robot will tell. */
const belowTheRoot = ({ url, source }: BoxSettings): readonly Diagnostic[] => {
  const { origin, pathname } = new URL(url);
  if (pathname === '/') return [];
  return [
    {
      weight: 'note',
      rule: 'robots-root',
      location: locationIn(source, 'url'),
      message: `robots.txt has no effect below \`${pathname}\`: robots ask for ${origin}/robots.txt alone`,
      fix: `Name the sitemap there: \`Sitemap: ${url}${SITEMAP_PATH}\``,
    },
  ];
};

export const robots: PlanningChannel<'site'> = {
  name: 'robots',
  where: 'site',
  plan: ({ box: { settings } }) => ({
    documents: [
      plannedDocument('robots.txt', 'list', absoluteAddress(settings, SITEMAP_PATH), (sitemap) => ({
        content: robotsText(sitemap),
      })),
    ],
    diagnostics: belowTheRoot(settings),
  }),
};
