/** From words back to where the author wrote them. */
import { itemAt } from '../../../text/item-at.ts';

/** Line and column in a file, from 1; columns in UTF-16 units. */
export interface LineColumn {
  readonly line: number;
  readonly column: number;
}

/** A file's text as somewhere to find words in. */
export interface SourceText {
  /** A reader that finds words one after the other, from a line and column on. */
  readonly from: (start: LineColumn) => (word: string) => LineColumn;
}

const lineStarts = (text: string): readonly number[] => {
  const starts = [0];
  for (const { index } of text.matchAll(/\r?\n/g)) starts.push(index + (text[index] === '\r' ? 2 : 1));
  return starts;
};

/** Index of the last of `starts` that is not past `offset`. */
const lineAt = (starts: readonly number[], offset: number): number => {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (itemAt(starts, middle) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
};

/** How far on a word may stand after the one before it: past an address and a mark or two, not in another passage. */
const REACH = 400;

/**
 * A file's text as somewhere to find words in. Between what a reader sees and what the author typed stand marks,
 * escapes, quotes and line breaks, so that words are looked for in order rather than counted out; one that was
 * typed another way (`&eacute;`) is given the place where the search stood.
 */
export const sourceText = (text: string): SourceText => {
  const starts = lineStarts(text);
  return {
    from: (start) => {
      let cursor = (starts[start.line - 1] ?? 0) + start.column - 1;
      return (word) => {
        const found = text.indexOf(word, cursor);
        const near = found >= 0 && found <= cursor + REACH;
        const at = near ? found : cursor;
        if (near) cursor = at + word.length;
        const line = lineAt(starts, at);
        return { line: line + 1, column: at - itemAt(starts, line) + 1 };
      };
    },
  };
};
