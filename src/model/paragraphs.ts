/** The paragraphs of a story as they are said. */
import type { Node, Root } from 'mdast';
import { toString as wordsOf } from 'mdast-util-to-string';

/** A sentence or paragraph as it is said, with the line of `file` that it begins on. */
interface Spoken {
  readonly text: string;
  readonly file: string;
  readonly line: number;
}

/** What is not read out: notes, pictures, directives. */
const SILENT = new Set(['footnoteReference', 'footnoteDefinition', 'image', 'leafDirective', 'definition']);

const withoutSilent = (node: Node): Node =>
  'children' in node
    ? ({
        ...node,
        children: (node.children as Node[]).filter(({ type }) => !SILENT.has(type)).map(withoutSilent),
      } as Node)
    : node;

/** Words of a node as one line. */
const lineOf = (node: Node): string => wordsOf(withoutSilent(node)).replace(/\s+/g, ' ').trim();

/** A paragraph with the heading that it stands under. */
export interface Paragraph extends Spoken {
  readonly heading: string;
}

/** The running paragraphs of a story in order; lists, tables and quotations are for the eye, not the ear. */
export const paragraphsOf = (tree: Root, file: string): readonly Paragraph[] => {
  let heading = '';
  return tree.children.flatMap((node) => {
    if (node.type === 'heading') heading = lineOf(node);
    if (node.type !== 'paragraph') return [];
    const text = lineOf(node);
    return text === '' ? [] : [{ text, file, line: node.position?.start.line ?? 1, heading }];
  });
};
