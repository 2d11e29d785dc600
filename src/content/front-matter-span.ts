/** Where the fields of a record's file stand in its text. */

/** The first line of a file; what it captures is the language it claims. */
export const OPENING = /^---[ \t]*([^\r\n]*)\r?\n/;

/** The first line that begins with `---` closes, and must be nothing but that. Lines end with a line feed alone here. */
export const CLOSING = /(?<![^\n])---[^\r\n]*/;

/** Offsets of the fields between the two lines `---`; undefined where a file has none. A byte order mark is passed over. */
export const frontMatterSpan = (text: string): { readonly from: number; readonly to: number } | undefined => {
  const mark = text.startsWith('\ufeff') ? 1 : 0;
  const opening = OPENING.exec(text.slice(mark));
  if (!opening) return undefined;
  const from = mark + opening[0].length;
  const closing = CLOSING.exec(text.slice(from));
  return closing ? { from, to: from + closing.index } : undefined;
};
