/** What the model hangs on Markdown nodes once links and pictures are resolved. */
import type { Nodes, Root } from 'mdast';
import { visit } from 'unist-util-visit';
import type { Picture } from './box.ts';

/** The record that a relative Markdown link led to. */
export interface Target {
  readonly cycle: string;
  /** The item's slug; without it the link is to the article as a whole. */
  readonly item?: string;
}

declare module 'mdast' {
  interface LinkData {
    target?: Target;
    /** The link led to something that may not be shown yet: keep its words, drop its address. */
    dropped?: boolean;
  }
  interface ImageData {
    picture?: Picture;
  }
}

/** The cycle in whose folder a photo lies; undefined for one of the box itself. */
const cycleOfPhoto = (file: string): string | undefined => /^cycles\/([^/]+)\//.exec(file)?.[1];

/** The cycle that a link was found to lead to, or in whose folder a photo was found. */
export const cycleOfResolved = (resolved: Target | Picture): string | undefined =>
  'cycle' in resolved ? resolved.cycle : cycleOfPhoto(resolved.file);

/** The cycle that a node's link leads to, or in whose folder its photo lies. */
export const cycleNamedBy = (node: Nodes): string | undefined => {
  if (node.type === 'link') return node.data?.target?.cycle;
  return node.type === 'image' ? cycleOfPhoto(node.data?.picture?.file ?? '') : undefined;
};

/** The cycles that a resolved tree's links lead to or whose photos it shows, each once, in the order of the text. */
export const cyclesNamedIn = (tree: Root): readonly string[] => {
  const named = new Set<string>();
  visit(tree, (node) => {
    const cycle = cycleNamedBy(node);
    if (cycle !== undefined) named.add(cycle);
  });
  return [...named];
};
