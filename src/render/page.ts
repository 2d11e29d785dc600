/** The frame that every public page shares: head, masthead, foot. */

import type { Wording } from '../wording/wording.ts';
import { absoluteAddress, CATALOGUE_PATH, HOME_PATH, relativeAddress } from './addresses.ts';
import { assetPath, colourSheetPath } from './assets.ts';
import { documentText } from './document.ts';
import type { Html } from './html.ts';
import type { DrawingJob, PictureOutput } from './output.ts';
import { type PictureSource, socialPicture } from './pictures.ts';
import type { PageFrame } from './site-facts.ts';
import type { Templates } from './templates.ts';
import { typeset } from './typeset.ts';

/** What every page is rendered with: the same for all of a build. */
interface PageTools {
  readonly templates: Templates;
  readonly wording: Wording;
}

/** One page's own part. */
interface PageInput {
  readonly frame: PageFrame;
  /** Site path, `boxes/2026-03-first-sowings.html`. */
  readonly path: string;
  readonly title: string;
  readonly description: string;
  readonly type: 'article' | 'website';
  /** Text of the style sheet that holds its colours. */
  readonly colours: string;
  readonly body: Html;
  /** The page's graph as a script element. */
  readonly graph: Html;
  /** Style sheets of templates/ that this page needs beside the site's own. */
  readonly styles?: readonly string[];
  /** The picture that a link preview shows. */
  readonly social?: (PictureSource & { readonly alt: string }) | undefined;
  /** A drawn picture in its place. */
  readonly drawn?: (PictureOutput<DrawingJob> & { readonly alt: string }) | undefined;
  /** ISO 8601, for an article. */
  readonly published?: string;
  readonly modified?: string | undefined;
}

/** Site path of the icon. */
export const ICON_PATH = 'icon.svg';
/** Site path of the icon for who has asked for dark colours. */
export const DARK_ICON_PATH = 'icon-dark.svg';
/** Site path of the Atom feed. */
export const FEED_PATH = 'feed.xml';
/** Site path of the JSON feed. */
export const JSON_FEED_PATH = 'feed.json';

/** Parts of the two faces that every page begins with: loaded at once, before the style sheet asks for them. */
const FIRST_FONTS = ['fonts/alegreya.woff2', 'fonts/sorts-mill-goudy.woff2'] as const;

/** How addresses on one page are written: from the page itself, so that the folder can be moved anywhere. */
export const linker =
  (page: string) =>
  (path: string): string =>
    relativeAddress(page, path);

/** The picture of a link preview as the page names it: sizes are those of the published file, in pixels. */
const socialView = ({ frame, social, drawn }: PageInput) => {
  if (drawn) {
    const { width, height } = drawn.picture.drawing;
    return { address: absoluteAddress(frame.site, drawn.path), width, height, alt: drawn.alt };
  }
  if (!social) return undefined;
  const { path, picture } = socialPicture(social);
  const { width, height } = picture;
  return { address: absoluteAddress(frame.site, path), width, height, alt: social.alt };
};

const pageView = (input: PageInput, { templates, wording }: PageTools) => {
  const { frame, path } = input;
  const { site, newest } = frame;
  const link = linker(path);
  const words = wording.site.page;
  const name = typeset(site.name, site.lang);
  const title = typeset(input.title, site.lang);
  const published = (paths: readonly string[]): readonly string[] =>
    paths
      .map((asset) => assetPath(templates, asset))
      .filter((asset) => asset !== undefined)
      .map(link);
  return {
    words,
    lang: site.lang,
    title,
    /** Of the browser's window. */
    windowTitle: path === HOME_PATH ? name : words.title(title, name),
    siteName: name,
    description: typeset(input.description, site.lang),
    isHome: path === HOME_PATH,
    canonical: absoluteAddress(site, path),
    type: input.type,
    published: input.published,
    modified: input.modified,
    social: socialView(input),
    locale: site.lang.replace('-', '_'),
    styles: [link(colourSheetPath(input.colours)), ...published(['site.css', ...(input.styles ?? [])])],
    fonts: published(FIRST_FONTS),
    icon: link(ICON_PATH),
    darkIcon: link(DARK_ICON_PATH),
    feed: link(FEED_PATH),
    jsonFeed: link(JSON_FEED_PATH),
    jsonLd: input.graph,
    home: link(HOME_PATH),
    catalogue: link(CATALOGUE_PATH),
    newest: newest === undefined ? undefined : { href: link(newest), current: newest === path },
    call: frame.call,
    email: site.email,
    tagline: typeset(site.description, site.lang),
    postal: site.postalAddress && Object.values(site.postalAddress).filter(Boolean).join(', '),
    body: input.body,
  };
};

declare module './templates.ts' {
  interface TemplateData {
    page: ReturnType<typeof pageView>;
  }
}

/** A public page as a file's text. */
export const pageText = (input: PageInput, tools: PageTools): string =>
  documentText(tools.templates.render('page', pageView(input, tools)));
