/**
 * A story's Markdown tree becomes Html: the tree is copied and dressed (links, headings, pictures, tables,
 * typesetting), then remark-html serialises it through a sanitizer that knows exactly what the dressing adds.
 */

import type { Element } from 'hast';
import type {
  Definition,
  FootnoteDefinition,
  FootnoteReference,
  Heading,
  Image,
  Link,
  ListItem,
  Node,
  Paragraph,
  Parent,
  Html as RawHtml,
  Root,
  RootContent,
} from 'mdast';
import type { Handlers } from 'mdast-util-to-hast';
import remarkHtml from 'remark-html';
import { unified } from 'unified';
import { SKIP, visit } from 'unist-util-visit';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Picture } from '../model/box.ts';
import type { Target } from '../model/story.ts';
import { lastOf } from '../text/item-at.ts';
import type { Wording } from '../wording/wording.ts';
import { type Html, trusted } from './html.ts';
import type { PictureJob, PictureOutput } from './output.ts';
import { type PictureLayout, type PictureParts, pictureParts } from './pictures.ts';
import { storySchema } from './story-schema.ts';
import { typeset, typesetRuns } from './typeset.ts';

/** How a story is rendered. */
export interface StoryOptions {
  /** Site path of the page the story stands on. */
  readonly page: string;
  /** Starts every id of the story, so that two stories on one page never share one. */
  readonly idPrefix: string;
  /** What the story's highest heading becomes. */
  readonly topHeading: 2 | 3;
  /** Address of a record as seen from the page; undefined keeps the link's words and drops the link. */
  readonly addressOf: (target: Target) => string | undefined;
  readonly layout: PictureLayout;
  /** BCP 47; decides quotes and dashes. */
  readonly lang: string;
  /** What stands in a story that no author wrote. */
  readonly words: Wording['site']['story'];
  /** The file the tree was read from: findings name it. */
  readonly file?: string;
  /** Full address of a site path, for a story that is read away from the site: see PictureOptions. */
  readonly away?: (path: string) => string;
  /** Leave headings and signs as they were written: for comparing with the CommonMark specification. */
  readonly plain?: boolean;
}

/** A story as markup, with the pictures it names and what was found in it. */
export interface RenderedStory {
  readonly html: Html;
  readonly outputs: readonly PictureOutput<PictureJob>[];
  readonly diagnostics: readonly Diagnostic[];
}

/** A node that becomes an element of our choosing (`data.hName`, the convention of mdast-util-to-hast). */
const dressed = (
  hName: string,
  hProperties: Record<string, string | number | string[]>,
  children: readonly Node[],
  hChildren?: readonly Element[],
): RootContent =>
  ({
    type: 'dressed',
    data: { hName, hProperties, ...(hChildren ? { hChildren } : {}) },
    children,
  }) as unknown as RootContent;

const replace = (parent: Parent, index: number, nodes: readonly Node[]): void => {
  (parent.children as Node[]).splice(index, 1, ...nodes);
};

const isExternal = (url: string): boolean => /^(?:https?:)?\/\//i.test(url);

const dressLinks = (tree: Root, addressOf: StoryOptions['addressOf']): void => {
  visit(tree, 'link', (node: Link, index, parent) => {
    const { target, dropped } = node.data ?? {};
    const address = target && !dropped ? addressOf(target) : undefined;
    if (address !== undefined) node.url = address;
    else if ((target || dropped) && parent && index !== undefined) {
      replace(parent, index, node.children);
      return [SKIP, index];
    }
    if (isExternal(node.url)) node.data = { ...node.data, hProperties: { rel: ['noopener'] } };
    return undefined;
  });
  const outward = new Set<string>();
  visit(tree, 'definition', ({ url, identifier }: Definition) => {
    if (isExternal(url)) outward.add(identifier);
  });
  if (outward.size === 0) return;
  visit(tree, 'linkReference', (link) => {
    if (outward.has(link.identifier)) link.data = { ...link.data, hProperties: { rel: ['noopener'] } };
  });
};

/** HTML has six levels. */
const LOWEST_HEADING = 6;

/** Levels by nesting, not by the number of signs: the highest becomes `top` and none is skipped. */
const dressHeadings = (tree: Root, top: number): void => {
  const above: number[] = [];
  visit(tree, 'heading', (node: Heading) => {
    while (above.length > 0 && lastOf(above) >= node.depth) above.pop();
    const level = Math.min(top + above.length, LOWEST_HEADING);
    above.push(node.depth);
    node.depth = level as Heading['depth'];
  });
};

const element = (tagName: string, properties: Element['properties']): Element => ({
  type: 'element',
  tagName,
  properties,
  children: [],
});

const awayElement = ({ img: { src, width, height, alt } }: PictureParts): RootContent =>
  dressed('img', { src, width, height, alt }, []);

const pictureElements = ({ sources, img }: PictureParts): readonly Element[] => [
  ...sources.map(({ type, srcset, sizes }) => element('source', { type, srcSet: srcset, sizes })),
  element('img', {
    src: img.src,
    srcSet: img.srcset,
    sizes: img.sizes,
    width: img.width,
    height: img.height,
    alt: img.alt,
    loading: 'lazy',
    decoding: 'async',
    dataTint: img.tint,
  }),
];

const pictureOf = (node: Image): Picture | undefined => node.data?.picture;

/** The only thing in a paragraph, white space aside. */
const onlyChild = (paragraph: Paragraph): Node | undefined => {
  const children = paragraph.children.filter((child) => child.type !== 'text' || child.value.trim() !== '');
  return children.length === 1 ? children[0] : undefined;
};

const dressPictures = (tree: Root, options: StoryOptions): readonly PictureOutput<PictureJob>[] => {
  const outputs: PictureOutput<PictureJob>[] = [];
  const picture = (node: Image, shown: Picture): RootContent => {
    const alt = node.alt || shown.alt;
    const { layout, page, away } = options;
    const parts = pictureParts(shown, layout, page, { alt, ...(away ? { away } : {}) });
    outputs.push(...parts.outputs);
    if (away) return awayElement(parts);
    return dressed('picture', {}, [], pictureElements(parts));
  };
  visit(tree, 'paragraph', (paragraph: Paragraph, index, parent) => {
    const only = onlyChild(paragraph);
    if (only?.type !== 'image' || !parent || index === undefined) return undefined;
    const image = only as Image;
    const shown = pictureOf(image);
    if (!shown) return undefined;
    const caption = image.title || shown.caption;
    const words = caption === undefined ? [] : [{ type: 'text', value: typeset(caption, options.lang) }];
    const captions = words.length > 0 ? [dressed('figcaption', {}, words)] : [];
    replace(parent, index, [dressed('figure', {}, [picture(image, shown), ...captions])]);
    return [SKIP, index + 1];
  });
  visit(tree, 'image', (node: Image, index, parent) => {
    const shown = pictureOf(node);
    if (!shown || !parent || index === undefined) return undefined;
    replace(parent, index, [picture(node, shown)]);
    return [SKIP, index + 1];
  });
  return outputs;
};

/** A wide table scrolls by itself, also from the keyboard (WCAG 2.2, 2.1.1). It is no landmark, because an article may have several. */
const dressTables = (tree: Root, label: string): void => {
  visit(tree, 'table', (node, index, parent) => {
    if (!parent || index === undefined) return undefined;
    const properties = { className: ['table'], tabIndex: 0, role: 'group', ariaLabel: label };
    replace(parent, index, [dressed('div', properties, [node])]);
    return [SKIP, index + 1];
  });
};

/**
 * Notes for a story that is read away from the site, where a jump within the text leads nowhere: a number in the
 * text, and the notes listed at its end.
 */
const dressNotesAway = (tree: Root): void => {
  const definitions = new Map<string, FootnoteDefinition>();
  visit(tree, 'footnoteDefinition', (node, index, parent) => {
    if (!definitions.has(node.identifier)) definitions.set(node.identifier, node);
    if (!parent || index === undefined) return undefined;
    parent.children.splice(index, 1);
    return [SKIP, index];
  });
  const called: FootnoteDefinition[] = [];
  const call = (node: FootnoteReference, index: number | undefined, parent: Parent | undefined): void => {
    const definition = definitions.get(node.identifier);
    if (!definition || !parent || index === undefined) return;
    if (!called.includes(definition)) called.push(definition);
    const number = { type: 'text', value: String(called.indexOf(definition) + 1) };
    replace(parent, index, [dressed('sup', {}, [number])]);
  };
  visit(tree, 'footnoteReference', call);
  // A note may call another; the list grows while it is walked.
  for (const definition of called) visit(definition, 'footnoteReference', call);
  if (called.length === 0) return;
  const children = called.map((note): ListItem => ({ type: 'listItem', children: note.children }));
  tree.children.push({ type: 'thematicBreak' }, { type: 'list', ordered: true, children });
};

/** What holds running text: a quotation opens and closes within one of these. */
const flows = new Set(['paragraph', 'heading', 'tableCell']);

const dressText = (tree: Root, lang: string): void => {
  visit(tree, (block) => {
    if (!flows.has(block.type)) return;
    const runs: { text: string; asIs: boolean; put: (text: string) => void }[] = [];
    visit(block, (node) => {
      if (node.type === 'text')
        runs.push({ text: node.value, asIs: false, put: (text) => (node.value = text) });
      else if (node.type === 'inlineCode') runs.push({ text: node.value, asIs: true, put: () => {} });
      else if (node.type === 'break') runs.push({ text: '\n', asIs: true, put: () => {} });
    });
    typesetRuns(runs, lang).forEach((text, i) => {
      runs[i]?.put(text);
    });
  });
};

const isComment = (source: string): boolean => /^\s*(?:<!--[\s\S]*?-->\s*)*$/.test(source);

const rawHtmlFindings = (tree: Root, file: string): readonly Diagnostic[] => {
  const findings: Diagnostic[] = [];
  visit(tree, 'html', (node: RawHtml) => {
    if (isComment(node.value)) return;
    const { line = 1, column = 1 } = node.position?.start ?? {};
    const shown = node.value.split('\n')[0] ?? '';
    findings.push({
      weight: 'note',
      rule: 'raw-html',
      location: { file, line, column },
      message: `Unexpected HTML \`${shown}\`, expected Markdown; it is left out of the page`,
      fix: 'Write it in Markdown, or take it out',
    });
  });
  return findings;
};

/**
 * remark-html hands no footnote options through to mdast-util-to-hast, but a handler is given the state that
 * holds them: the root's handler runs first, the foot of the story is made last.
 */
const footnoteHandlers = (idPrefix: string, noteHeading: number, label: string): Handlers => ({
  root: (state, node) => {
    Object.assign(state.options, {
      clobberPrefix: idPrefix,
      footnoteLabel: label,
      footnoteLabelTagName: `h${noteHeading}`,
      footnoteLabelProperties: { className: ['visually-hidden'] },
    });
    return state.wrap(state.all(node), false);
  },
});

/**
 * A story as Html, the pictures it needs and what was found in it. Raw HTML is left out and reported as a note.
 * The tree that is given stays as it was.
 */
export const renderStory = (given: Root, options: StoryOptions): RenderedStory => {
  const tree = structuredClone(given);
  const diagnostics = rawHtmlFindings(tree, options.file ?? options.page);
  dressLinks(tree, options.addressOf);
  if (!options.plain) {
    dressHeadings(tree, options.topHeading);
    dressText(tree, options.lang);
  }
  const outputs = dressPictures(tree, options);
  if (options.away) dressNotesAway(tree);
  else dressTables(tree, options.words.table);
  const handlers = footnoteHandlers(options.idPrefix, options.topHeading, options.words.notes);
  const source = unified()
    .use(remarkHtml, { handlers, sanitize: storySchema(options.idPrefix) })
    .stringify(tree);
  return { html: trusted(source), outputs, diagnostics };
};
