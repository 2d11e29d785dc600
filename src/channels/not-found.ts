/** The page for an address that leads nowhere. A host serves it at any depth, so its addresses are absolute. */

import { absoluteAddress, articlePath, CATALOGUE_PATH, HOME_PATH } from '../render/addresses.ts';
import { documentText, schemeElement } from '../render/document.ts';
import { typeset } from '../render/typeset.ts';
import type { Channel } from './channel.ts';

export const notFound: Channel = {
  name: 'not-found',
  where: 'site',
  make: ({ box, templates }) => {
    const { settings } = box;
    const newest = box.cycles.at(-1);
    const page = templates.render('not-found', {
      lang: settings.lang,
      name: typeset(settings.name, settings.lang),
      scheme: schemeElement(settings.palette),
      home: absoluteAddress(settings, HOME_PATH),
      catalogue: absoluteAddress(settings, CATALOGUE_PATH),
      newest: newest && {
        href: absoluteAddress(settings, articlePath(newest)),
        theme: typeset(newest.theme, settings.lang),
      },
    });
    return {
      outputs: [{ where: 'site', path: '404.html', text: documentText(page) }],
      diagnostics: [],
    };
  },
};
