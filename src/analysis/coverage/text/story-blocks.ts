/** A story's tree → its runs of text, in the order they are read. */
import type { Nodes, Root, RootContent } from 'mdast';
import type {} from '../../../model/story.ts';
import type { Span } from '../../../text/sentences.ts';
import type { PassageForm } from './passage.ts';
import type { LineColumn } from './source-text.ts';

/** A run of a story as it is read. */
export interface Block {
  readonly form: Extract<PassageForm, 'heading' | 'paragraph' | 'picture' | 'fact'>;
  /** Line breaks are spaces: they mean nothing to a reader. */
  readonly text: string;
  /** Spans of `text` that are links. */
  readonly links: readonly Span[];
  readonly at: LineColumn;
  /** A note at the foot: read last, if at all. */
  readonly note: boolean;
}

/** Between the cells of a table: no phrase runs across it. */
const CELL_BREAK = ' · ';

const startOf = (node: Nodes): LineColumn => ({
  line: node.position?.start.line ?? 1,
  column: node.position?.start.column ?? 1,
});

interface Gathering {
  text: string;
  readonly links: Span[];
  readonly pictures: Block[];
  readonly notes: string[];
}

const gather = (node: Nodes, into: Gathering): void => {
  switch (node.type) {
    case 'text':
    case 'inlineCode':
    case 'code':
      into.text += node.value.replace(/[\r\n\t]/g, ' ');
      return;
    case 'break':
      into.text += ' ';
      return;
    case 'image':
      if (node.alt?.trim())
        into.pictures.push({ form: 'picture', text: node.alt, links: [], at: startOf(node), note: false });
      return;
    case 'footnoteReference':
      into.notes.push(node.identifier);
      return;
    case 'link': {
      const start = into.text.length;
      for (const child of node.children) gather(child, into);
      if (!node.data?.dropped && into.text.length > start) into.links.push({ start, end: into.text.length });
      return;
    }
    case 'tableRow':
      node.children.forEach((cell, i) => {
        if (i > 0) into.text += CELL_BREAK;
        gather(cell, into);
      });
      return;
    default:
      if ('children' in node) for (const child of node.children) gather(child, into);
  }
};

const FORMS: Readonly<Partial<Record<Nodes['type'], Block['form']>>> = {
  heading: 'heading',
  paragraph: 'paragraph',
  tableRow: 'fact',
  code: 'fact',
};

/**
 * Headings, paragraphs, rows of tables and pictures of a tree, in reading order; notes last, those alone that are
 * referred to. Raw HTML is not shown on the page and is not here.
 */
export const storyBlocks = (tree: Root): readonly Block[] => {
  const blocks: Block[] = [];
  const notes: string[] = [];
  const walk = (node: Nodes, note: boolean): void => {
    const form = FORMS[node.type];
    if (form === undefined) {
      if (node.type === 'footnoteDefinition' && !note) return;
      if ('children' in node) for (const child of node.children) walk(child, note);
      return;
    }
    const found: Gathering = { text: '', links: [], pictures: [], notes };
    gather(node, found);
    if (found.text.trim() !== '')
      blocks.push({ form, text: found.text, links: found.links, at: startOf(node), note });
    blocks.push(...found.pictures);
  };
  walk(tree, false);
  const definitions = new Map(
    tree.children.flatMap((node: RootContent) =>
      node.type === 'footnoteDefinition' ? [[node.identifier, node] as const] : [],
    ),
  );
  // A note may refer to another: the list grows as it is read, and each is read once.
  const read = new Set<string>();
  for (const name of notes) {
    const definition = definitions.get(name);
    if (!definition || read.has(name)) continue;
    read.add(name);
    for (const child of definition.children) walk(child, true);
  }
  return blocks;
};
