/** Markdown as the author wrote it → its tree. CommonMark, GFM tables, footnotes and strikethrough, and directives. */
import type { Nodes, Parents, Root, RootContent } from 'mdast';
import { gfmFootnoteFromMarkdown } from 'mdast-util-gfm-footnote';
import { gfmStrikethroughFromMarkdown } from 'mdast-util-gfm-strikethrough';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmFootnote } from 'micromark-extension-gfm-footnote';
import { gfmStrikethrough } from 'micromark-extension-gfm-strikethrough';
import { gfmTable } from 'micromark-extension-gfm-table';
import remarkDirective from 'remark-directive';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';
import { withoutUnseen } from './unreadable-signs.ts';

/** GFM's parts without its autolinks for bare addresses, which alone double the time of parsing, and without its tables. */
function notesAndStrikes(this: Processor): void {
  const data = this.data();
  data.micromarkExtensions = [
    ...(data.micromarkExtensions ?? []),
    gfmFootnote(),
    gfmStrikethrough({ singleTilde: false }),
  ];
  data.fromMarkdownExtensions = [
    ...(data.fromMarkdownExtensions ?? []),
    gfmFootnoteFromMarkdown(),
    gfmStrikethroughFromMarkdown(),
  ];
}

function tables(this: Processor): void {
  const data = this.data();
  data.micromarkExtensions = [gfmTable(), ...(data.micromarkExtensions ?? [])];
  data.fromMarkdownExtensions = [gfmTableFromMarkdown(), ...(data.fromMarkdownExtensions ?? [])];
}

const parser = unified().use(remarkParse).use(notesAndStrikes).use(remarkDirective);
const tableParser = parser().use(tables).freeze();
parser.freeze();

/**
 * What the line below a table's head has, between two columns or beside a single one. Without it no text has a table,
 * and the first line of each paragraph need not be read as if it were a head: an eighth of the time.
 */
const MAY_HAVE_TABLE = /\||:-|-:/;

/** The leaf directives that mean something; all others are an author's colons. */
const DIRECTIVES: readonly string[] = ['item', 'box', 'voices', 'peek', 'call'];

const sourceOf = (node: Nodes, text: string): string =>
  text.slice(node.position?.start.offset ?? 0, node.position?.end.offset ?? 0);

/** The words of a directive that is none of ours, as they were typed: "at 10:30" keeps its minutes. */
const restored = (node: Nodes, text: string): RootContent | readonly RootContent[] | undefined => {
  const at = node.position ? { position: node.position } : {};
  if (node.type === 'textDirective') return { type: 'text', value: sourceOf(node, text), ...at };
  if (node.type === 'leafDirective' && !DIRECTIVES.includes(node.name)) {
    return { type: 'paragraph', children: [{ type: 'text', value: sourceOf(node, text), ...at }], ...at };
  }
  if (node.type === 'containerDirective') return node.children;
  return undefined;
};

/** Text beside restored text is one run again, or words would be cut in two. */
const joined = (children: readonly Nodes[]): Nodes[] => {
  const result: Nodes[] = [];
  for (const child of children) {
    const last = result.at(-1);
    if (child.type !== 'text' || last?.type !== 'text') {
      result.push(child);
      continue;
    }
    last.value += child.value;
    if (last.position && child.position)
      last.position = { start: last.position.start, end: child.position.end };
  }
  return result;
};

const restoreIn = (parent: Parents, text: string): void => {
  const children: Nodes[] = parent.children;
  const whole = joined(children.flatMap((child) => restored(child, text) ?? child));
  children.length = 0;
  for (const child of whole) children.push(child);
  for (const child of whole) if ('children' in child) restoreIn(child, text);
};

/** The tree of a Markdown text. Positions are lines and columns of `given`. Thousands of passages within passages throw a RangeError. */
export const parseMarkdown = (given: string): Root => {
  const text = withoutUnseen(given);
  const tree = (MAY_HAVE_TABLE.test(text) ? tableParser : parser).parse(text);
  restoreIn(tree, text);
  return tree;
};
