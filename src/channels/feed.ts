/** The feed: the last twelve reveals as Atom 1.0 (RFC 4287), newest first. */

import type { Cycle } from '../model/box.ts';
import { isoInstant, momentOf } from '../model/calendar.ts';
import { absoluteAddress, articlePath, HOME_PATH } from '../render/addresses.ts';
import { html, htmlSource, joinHtml } from '../render/html.ts';
import { FEED_PATH } from '../render/page.ts';
import type { Channel } from './channel.ts';

const SHOWN = 12;

export const feed: Channel = {
  name: 'feed',
  where: 'site',
  make: ({ box }) => {
    const { settings } = box;
    const changed = (cycle: Cycle): number =>
      Math.max(cycle.reveal, (cycle.updated && momentOf(`${cycle.updated}T12:00`, settings.timeZone)) || 0);
    const cycles = box.cycles.slice(-SHOWN).reverse();
    const updated = isoInstant(Math.max(0, ...cycles.map(changed)));
    const entries = cycles.map((cycle) => {
      const address = absoluteAddress(settings, articlePath(cycle));
      return html`<entry>
<id>${address}</id>
<title>${cycle.title}</title>
<link rel="alternate" type="text/html" href="${address}"/>
<published>${isoInstant(cycle.reveal)}</published>
<updated>${isoInstant(changed(cycle))}</updated>
<author><name>${cycle.author}</name></author>
<summary>${cycle.summary}</summary>
</entry>`;
    });
    const document = html`<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${settings.lang}">
<id>${absoluteAddress(settings, FEED_PATH)}</id>
<title>${settings.name}</title>
<subtitle>${settings.description}</subtitle>
<link rel="self" type="application/atom+xml" href="${absoluteAddress(settings, FEED_PATH)}"/>
<link rel="alternate" type="text/html" href="${absoluteAddress(settings, HOME_PATH)}"/>
<updated>${updated}</updated>
<author><name>${settings.author}</name></author>
${joinHtml(entries, '\n')}
</feed>
`;
    return {
      outputs: [
        {
          where: 'site',
          path: FEED_PATH,
          text: `<?xml version="1.0" encoding="utf-8"?>\n${htmlSource(document)}`,
        },
      ],
      diagnostics: [],
    };
  },
};
