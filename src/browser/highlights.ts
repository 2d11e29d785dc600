/** Words that answer, marked where they stand. */
import type { Language, Word } from '../analysis/language/language.ts';
import type { AskedWord } from '../analysis/search/find.ts';

/** Whether a word of the text answers a word that was asked for. */
const answers = (word: Word, { folded, stems }: AskedWord): boolean =>
  stems.whole.has(word.stem) ||
  stems.beginning.has(word.stem) ||
  stems.slip.has(word.stem) ||
  (stems.beginning.size > 0 && word.folded.startsWith(folded));

/** Marks the words that answer a query, and knows which of them it has met. */
export interface Highlighter {
  readonly asked: readonly AskedWord[];
  /** The text as nodes, answering words in `<mark>`. */
  readonly mark: (text: string) => readonly Node[];
  /** Whether the text has a word that answers one of those that nothing was marked for yet. */
  readonly touches: (text: string) => boolean;
  /** Marks every text below an element. */
  readonly markWithin: (element: Element) => void;
  /** Words asked for that nothing was marked for yet. */
  readonly missing: () => readonly AskedWord[];
}

/** Texts of entries and their words: the same few are marked at every key. */
export type WordsOf = (text: string) => readonly Word[];

/** Cuts texts into words, each once. */
export const wordsRemembered = (language: Language): WordsOf => {
  const known = new Map<string, readonly Word[]>();
  return (text) => {
    const words = known.get(text) ?? language.words(text);
    known.set(text, words);
    return words;
  };
};

/** A highlighter for the words that were asked for; nothing is marked yet. */
export const highlighterFor = (asked: readonly AskedWord[], wordsOf: WordsOf): Highlighter => {
  const seen = new Set<AskedWord>();
  const hits = (text: string): readonly Word[] =>
    wordsOf(text).filter((word) => {
      const met = asked.filter((one) => answers(word, one));
      for (const one of met) seen.add(one);
      return met.length > 0;
    });
  const mark = (text: string): readonly Node[] => {
    const nodes: Node[] = [];
    let at = 0;
    for (const { start, end } of hits(text)) {
      if (start > at) nodes.push(document.createTextNode(text.slice(at, start)));
      const marked = document.createElement('mark');
      marked.textContent = text.slice(start, end);
      nodes.push(marked);
      at = end;
    }
    if (at < text.length) nodes.push(document.createTextNode(text.slice(at)));
    return nodes;
  };
  const markWithin = (element: Element): void => {
    const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
    const texts: Text[] = [];
    while (walker.nextNode()) texts.push(walker.currentNode as Text);
    for (const text of texts) {
      if (text.data.trim() === '') continue;
      const nodes = mark(text.data);
      if (nodes.length > 1 || nodes[0] instanceof HTMLElement) text.replaceWith(...nodes);
    }
  };
  return {
    asked,
    mark,
    touches: (text) =>
      wordsOf(text).some((word) => asked.some((one) => !seen.has(one) && answers(word, one))),
    markWithin,
    missing: () => asked.filter((one) => !seen.has(one)),
  };
};
