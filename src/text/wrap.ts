/** Text broken into lines. */

/** How room is counted: what a text takes, and how a word is cut that fits on no line. */
interface Ruler {
  /** What a text takes, in the unit of `width`. */
  readonly widthOf: (text: string) => number;
  /** Pieces of a word, each at most `width`; without it, a word that is too long has a line to itself. */
  readonly cut?: (word: string, width: number) => readonly string[];
}

/** Room counted in characters, as Unicode's code points are. */
const characters: Ruler = { widthOf: (text) => [...text].length };

/**
 * `text` in lines of at most `width`, broken at spaces, tabs and line ends; no-break spaces hold. At least one line,
 * which may be empty.
 */
export const wrapLines = (text: string, width: number, { widthOf, cut }: Ruler = characters): string[] => {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \t\r\n]+/).filter(Boolean)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOf(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const parts = cut ? [...cut(word, width)] : [word];
    line = parts.pop() ?? '';
    lines.push(...parts);
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line];
};
