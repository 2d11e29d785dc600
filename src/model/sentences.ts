/** Running text taken apart: paragraphs of a story, sentences, words, graphemes. */
import type { Nodes, Root } from 'mdast';
import { toString as wordsOf } from 'mdast-util-to-string';

/** A sentence or paragraph as it is said, with the line of `file` that it begins on. */
export interface Spoken {
  readonly text: string;
  readonly file: string;
  readonly line: number;
}

/** After these a full stop does not end a sentence, though UAX #29 thinks so before a capital. */
const ABBREVIATED = /(?:^|[\s(“"‘'])(?:Dr|Mr|Mrs|Ms|Prof|St|Mt|vs|approx|c|ca|no|No|Nr|[A-Z])\.\s*$/u;

/** What is not read out: notes, pictures, directives. */
const SILENT = new Set(['footnoteReference', 'footnoteDefinition', 'image', 'leafDirective', 'definition']);

/** Words of a node and of all below it. */
const saidIn = (node: Nodes): string => {
  if (!('children' in node)) return wordsOf(node);
  const children: readonly Nodes[] = node.children;
  return children
    .filter(({ type }) => !SILENT.has(type))
    .map(saidIn)
    .join('');
};

/** Words of a node as one line. */
const lineOf = (node: Nodes): string => saidIn(node).replace(/\s+/g, ' ').trim();

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

const segmenters = new Map<string, Intl.Segmenter>();

const segmenter = (lang: string, granularity: 'sentence' | 'word' | 'grapheme'): Intl.Segmenter => {
  const key = `${lang} ${granularity}`;
  const made = segmenters.get(key) ?? new Intl.Segmenter(lang, { granularity });
  segmenters.set(key, made);
  return made;
};

/** Sentences of a text in its language, UAX #29, titles and initials kept with the name that follows. */
export const sentencesOf = (text: string, lang: string): readonly string[] => {
  const sentences: string[] = [];
  let begun = '';
  for (const { segment } of segmenter(lang, 'sentence').segment(text)) {
    begun += segment;
    if (ABBREVIATED.test(begun)) continue;
    if (begun.trim() !== '') sentences.push(begun.trim());
    begun = '';
  }
  return begun.trim() === '' ? sentences : [...sentences, begun.trim()];
};

/** Words as somebody says them, UAX #29. */
export const wordCount = (text: string, lang: string): number => {
  let count = 0;
  for (const { isWordLike } of segmenter(lang, 'word').segment(text)) if (isWordLike) count += 1;
  return count;
};

/** The language's words with the signs between them, which put together are the text. */
export const wordPieces = (
  text: string,
  lang: string,
): readonly { readonly text: string; readonly isWord: boolean }[] =>
  [...segmenter(lang, 'word').segment(text)].map(({ segment, isWordLike }) => ({
    text: segment,
    isWord: isWordLike ?? false,
  }));

/** What a reader takes for single signs, UAX #29 extended grapheme clusters. */
export const graphemesOf = (text: string, lang: string): readonly string[] =>
  [...segmenter(lang, 'grapheme').segment(text)].map(({ segment }) => segment);

/** Printable ASCII never joins into one sign, and asking the segmenter costs. */
const PLAIN = /^[\x20-\x7e]*$/;

export const graphemeCount = (text: string, lang: string): number =>
  PLAIN.test(text) ? text.length : graphemesOf(text, lang).length;
