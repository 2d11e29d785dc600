/** The page for an address that leads nowhere. A host serves it at any depth, so its addresses are absolute. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import {
  absoluteAddress,
  articlePath,
  CATALOGUE_PATH,
  HOME_PATH,
  rootedAddress,
} from '../render/addresses.ts';
import { assetPath, colourSheetPath } from '../render/assets.ts';
import { documentText } from '../render/document.ts';
import type { MadeDocument } from '../render/output.ts';
import { DARK_ICON_PATH, ICON_PATH } from '../render/page.ts';
import { type SiteFacts, siteFactsOf } from '../render/site-facts.ts';
import { typeset } from '../render/typeset.ts';
import { defined } from '../text/defined.ts';
import type { Wording } from '../wording/wording.ts';
import { colourSheet, type PlanningChannel, plannedDocument, type Tools } from './channel.ts';

interface NotFoundData {
  readonly site: Pick<SiteFacts, 'name' | 'url' | 'lang'>;
  readonly newest?: { readonly path: string; readonly theme: string };
}

const notFoundView = ({ site, newest }: NotFoundData, words: Wording['site'], styles: readonly string[]) => {
  const name = typeset(site.name, site.lang);
  return {
    words: words.notFound,
    title: words.page.title(words.notFound.title, name),
    lang: site.lang,
    name,
    /** Each from the root of its host, whichever of the site's names the page was asked of. */
    styles: styles.map((path) => rootedAddress(site, path)),
    icon: rootedAddress(site, ICON_PATH),
    darkIcon: rootedAddress(site, DARK_ICON_PATH),
    home: absoluteAddress(site, HOME_PATH),
    catalogue: absoluteAddress(site, CATALOGUE_PATH),
    newest: newest && {
      href: absoluteAddress(site, newest.path),
      theme: typeset(newest.theme, site.lang),
    },
  };
};

declare module '../render/templates.ts' {
  interface TemplateData {
    'not-found': ReturnType<typeof notFoundView>;
  }
}

const notFoundPage = (
  data: NotFoundData,
  { templates, wording }: Tools,
  [colours = '']: readonly string[],
): MadeDocument<Diagnostic> => {
  const own = assetPath(templates, 'not-found.css');
  const styles = [colourSheetPath(colours), ...(own === undefined ? [] : [own])];
  return {
    content: documentText(templates.render('not-found', notFoundView(data, wording.site, styles))),
  };
};

/** The page that a host shows for an address that leads nowhere. */
export const notFound: PlanningChannel<'site'> = {
  name: 'not-found',
  where: 'site',
  plan: ({ box: { settings, cycles } }) => {
    const newest = cycles.at(-1);
    const { name, url, lang } = siteFactsOf(settings);
    const data: NotFoundData = defined({
      site: { name, url, lang },
      newest: newest && { path: articlePath(newest), theme: newest.theme },
    });
    const colours = colourSheet(settings.palette);
    return { documents: [plannedDocument('404.html', 'page', data, notFoundPage, [colours])] };
  },
};
