/** The frame that every public page shares: head, masthead, foot. */

import type { Box, Cycle, Moment } from '../model/box.ts';
import { callFor } from '../model/calls.ts';
import { absoluteAddress, articlePath, CATALOGUE_PATH, HOME_PATH, relativeAddress } from './addresses.ts';
import { assetPath } from './assets.ts';
import { documentText, schemeElement } from './document.ts';
import type { Html } from './html.ts';
import type { TextOutput } from './output.ts';
import { jsonLdScript } from './structured-data.ts';
import type { Templates } from './templates.ts';
import { typeset } from './typeset.ts';

export interface PageInput {
  readonly box: Box;
  readonly asOf: Moment;
  readonly templates: Templates;
  /** Site path, `boxes/2026-03-first-sowings.html`. */
  readonly path: string;
  readonly title: string;
  readonly description: string;
  readonly type: 'article' | 'website';
  readonly palette: readonly string[];
  readonly body: Html;
  readonly graph: object;
  /** Style sheets of templates/ that this page needs beside the site's own. */
  readonly styles?: readonly string[];
  /** The cycle the page tells of: its call stands in the masthead. */
  readonly cycle?: Cycle;
  readonly social?: { readonly path: string; readonly alt: string };
  readonly published?: string;
  readonly modified?: string;
}

export const ICON_PATH = 'icon.svg';
export const FEED_PATH = 'feed.xml';
export const JSON_FEED_PATH = 'feed.json';

/** Parts of the two faces that every page begins with: loaded at once, before the style sheet asks for them. */
const FIRST_FONTS = ['fonts/alegreya.woff2', 'fonts/sorts-mill-goudy.woff2'] as const;

/** How addresses on one page are written: from the page itself, so that the folder can be moved anywhere. */
export const linker =
  (page: string) =>
  (path: string): string =>
    relativeAddress(page, path);

/** A public page as a file. */
export const pageOutput = (input: PageInput): TextOutput => {
  const { box, templates, path } = input;
  const { settings } = box;
  const link = linker(path);
  const published = (paths: readonly string[]): readonly string[] =>
    paths
      .map((asset) => assetPath(templates, asset))
      .filter((asset) => asset !== undefined)
      .map(link);
  const newest = box.cycles.at(-1);
  const body = templates.render('page', {
    lang: settings.lang,
    title: typeset(input.title, settings.lang),
    siteName: typeset(settings.name, settings.lang),
    description: typeset(input.description, settings.lang),
    isHome: path === HOME_PATH,
    canonical: absoluteAddress(settings, path),
    type: input.type,
    published: input.published,
    modified: input.modified,
    social: input.social && { address: absoluteAddress(settings, input.social.path), alt: input.social.alt },
    locale: settings.lang.replace('-', '_'),
    styles: published(['site.css', ...(input.styles ?? [])]),
    fonts: published(FIRST_FONTS),
    scheme: schemeElement(input.palette),
    icon: link(ICON_PATH),
    feed: link(FEED_PATH),
    jsonFeed: link(JSON_FEED_PATH),
    jsonLd: jsonLdScript(input.graph),
    home: link(HOME_PATH),
    catalogue: link(CATALOGUE_PATH),
    newest: newest && { href: link(articlePath(newest)), current: articlePath(newest) === path },
    call: callFor(box, input.cycle, input.asOf),
    email: settings.email,
    tagline: typeset(settings.description, settings.lang),
    postal: settings.postalAddress && Object.values(settings.postalAddress).filter(Boolean).join(', '),
    body: input.body,
  });
  return { where: 'site', path, text: documentText(body) };
};
