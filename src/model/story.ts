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

/** The cycle that a node's link leads to, or in whose folder its photo lies. */
export const cycleNamedBy = (node: Nodes): string | undefined => {
  if (node.type === 'link') return node.data?.target?.cycle;
  return node.type === 'image' ? /^cycles\/([^/]+)\//.exec(node.data?.picture?.file ?? '')?.[1] : undefined;
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
