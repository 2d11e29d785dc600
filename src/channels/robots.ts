/** robots.txt (RFC 9309): everything public may be read, and here is the list of it. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { BoxSettings } from '../model/box.ts';
import { locationIn } from '../model/location-in.ts';
import { absoluteAddress, SITEMAP_PATH } from '../render/addresses.ts';
import { type PlanningChannel, plannedDocument, type Tools } from './channel.ts';

/** `sitemap` is its full address. */
const robotsText = (
  sitemap: string,
  comment: readonly string[],
): string => `${comment.map((line) => `# ${line}`).join('\n')}
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

const robotsFile = (sitemap: string, { wording }: Tools) => ({
  content: robotsText(sitemap, wording.site.robots),
});

/** What robots are told; it reports a site in a folder, where they do not look. */
export const robots: PlanningChannel<'site'> = {
  name: 'robots',
  where: 'site',
  plan: ({ box: { settings } }) => ({
    documents: [plannedDocument('robots.txt', 'list', absoluteAddress(settings, SITEMAP_PATH), robotsFile)],
    diagnostics: belowTheRoot(settings),
  }),
};
