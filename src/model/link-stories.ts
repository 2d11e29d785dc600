/** Relative links and pictures in Markdown, resolved: the tree then says which record or photo each means. */
import type { Definition, Image, Link, Nodes, Root } from 'mdast';
import { SKIP, visit } from 'unist-util-visit';
import type { FrontMatter } from '../content/record-file.ts';
import type { Location, ReportFinding } from '../diagnostics/diagnostic.ts';
import { sha256 } from '../text/hash.ts';
import type { Picture, RecordSource, Story } from './box.ts';
import { type Photos, pictureAt } from './pictures.ts';
import { cyclesNamedIn, type Target } from './story.ts';

/** What links and pictures of any record may lead to. */
export interface LinkTargets {
  /** Every record's file → what a link to it means. */
  readonly targets: ReadonlyMap<string, Target>;
  readonly photos: Photos;
}

/** Where a record's words stand, with the digest of its file. */
export const sourceOf = ({ file, fields, text }: FrontMatter): RecordSource => ({
  file,
  fields,
  text,
  digest: sha256(text),
});

const isRelative = (url: string): boolean => url !== '' && !/^(?:[a-z][a-z\d+.-]*:|\/|#|\?)/i.test(url);

/** As much of an address as tells its author which one is meant: one of `data:` is the picture itself. */
const shownAddress = (url: string): string => (url.length > 60 ? `${url.slice(0, 57)}…` : url);

/** A relative address from a file, as a path of the content folder; RFC 3986 §5.2.4. */
const resolved = (file: string, url: string): string | undefined => {
  try {
    const base = new URL(`http://content.invalid/${file.split('/').map(encodeURIComponent).join('/')}`);
    return decodeURIComponent(new URL(url.split('#')[0] ?? '', base).pathname).slice(1);
  } catch {
    return undefined;
  }
};

/** `[words][name]` becomes `[words](address)`, so that one rule serves both. */
const inlineReferences = (tree: Root): void => {
  const definitions = new Map<string, Definition>();
  visit(tree, 'definition', (node) => {
    if (!definitions.has(node.identifier)) definitions.set(node.identifier, node);
  });
  visit(tree, (node, index, parent) => {
    if ((node.type !== 'linkReference' && node.type !== 'imageReference') || !parent || index === undefined)
      return;
    const definition = definitions.get(node.identifier);
    if (!definition) return;
    const { url, title } = definition;
    const at = node.position ? { position: node.position } : {};
    const direct: Link | Image =
      node.type === 'linkReference'
        ? { type: 'link', url, title: title ?? null, children: node.children, ...at }
        : { type: 'image', url, title: title ?? null, alt: node.alt ?? null, ...at };
    const siblings: Nodes[] = parent.children;
    siblings[index] = direct;
  });
};

/**
 * A story whose tree is a resolved copy. `slugs` are the items that a placement may name, undefined outside cycles.
 * Reports links and pictures that lead nowhere, pictures without words, and placements that are out of place.
 */
export const linkStory = (
  record: FrontMatter,
  { targets, photos }: LinkTargets,
  slugs: readonly string[] | undefined,
  report: ReportFinding,
): Story => {
  const { file } = record;
  const tree = structuredClone(record.body);
  /** In the order of the text, so that the text and these together make the tree. */
  const resolutions: (Target | Picture | undefined)[] = [];
  inlineReferences(tree);
  const locationOf = (node: Nodes): Location => ({
    file,
    line: node.position?.start.line ?? 1,
    column: node.position?.start.column ?? 1,
  });
  visit(tree, (node, _, parent) => {
    if (node.type === 'link' && isRelative(node.url)) {
      const path = resolved(file, node.url);
      const target = path === undefined ? undefined : targets.get(path);
      resolutions.push(target);
      if (target) node.data = { ...node.data, target };
      else {
        report({
          weight: 'must fix',
          rule: 'link-missing',
          location: locationOf(node),
          message: `Unexpected link to \`${node.url}\`, expected the file of a cycle or an item`,
          fix: 'Write the way from this file, as ../2025-09/cycle.md, or the whole address with https://',
        });
      }
    }
    if (node.type === 'image') {
      if (!node.alt?.trim()) {
        report({
          weight: 'must fix',
          rule: 'picture-text',
          location: locationOf(node),
          message: 'Unexpected picture without text, expected words for people who cannot see it',
          fix: 'Write them between the brackets: ![what the picture shows](…)',
        });
      } else if (isRelative(node.url)) {
        const picture = pictureAt(
          photos,
          resolved(file, node.url) ?? node.url,
          { alt: node.alt },
          locationOf(node),
          report,
        );
        resolutions.push(picture);
        if (picture) node.data = { ...node.data, picture };
      } else {
        report({
          weight: 'must fix',
          rule: 'picture-elsewhere',
          location: locationOf(node),
          message: `Unexpected picture at \`${shownAddress(node.url)}\`, expected one in photos/: a visitor’s browser is never sent to another place`,
          fix: `Save the picture in photos/ and write ![${node.alt}](${file === 'box.md' ? '' : file.includes('/items/') ? '../' : ''}photos/NAME.jpg)`,
        });
      }
    }
    if (node.type === 'leafDirective' && (slugs === undefined || parent?.type !== 'root')) {
      report({
        weight: 'must fix',
        rule: 'placement',
        location: locationOf(node),
        message: `Unexpected placement \`::${node.name}\` ${slugs ? 'inside another passage' : 'in this file'}, expected it on a line of its own in cycle.md`,
        fix: 'Move it there, or take it out',
      });
      return SKIP;
    }
    if (node.type === 'leafDirective' && node.name === 'item') {
      const label = node.children
        .map((child) => ('value' in child ? child.value : ''))
        .join('')
        .trim();
      if (!slugs?.includes(label)) {
        report({
          weight: 'must fix',
          rule: 'placement',
          location: locationOf(node),
          message: `Unexpected placement of \`${label}\`, expected one of ${[...new Set(slugs)].join(', ')}`,
          fix: 'Name the item by its file’s name without the number',
        });
      }
      return SKIP;
    }
    return undefined;
  });
  // Positions are those of the file, so the whole of its text counts, front matter included.
  const digest = sha256(JSON.stringify([file, sha256(record.text), resolutions]));
  return {
    file,
    tree,
    digest,
    leadsTo: cyclesNamedIn(tree),
    resolved: resolutions.filter((one) => one !== undefined),
  };
};
