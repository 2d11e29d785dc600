/** How much room text takes on a terminal, and text laid out in it. */
import { graphemesOf } from '../text/segments.ts';
import { wrapLines } from '../text/wrap.ts';

/** UAX #11, East Asian Width: the blocks whose characters are Wide or Fullwidth, as most terminals draw them. */
const WIDE =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{1f300}-\u{1f64f}\u{1f680}-\u{1f6ff}\u{1f900}-\u{1faff}\u{20000}-\u{3fffd}]/u;

/** Signs that command a terminal instead of being seen (ECMA-48's control characters); line ends and tabs are none. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const COMMANDS = /[\0-\x08\x0b-\x1f\x7f-\x9f]/g;

/** Takes a terminal back to the beginning of its line, and empties that. */
export const CLEAR_LINE = '\r\x1b[K';

/** Text as a terminal may be given it, whoever wrote it: of commands only our own first `CLEAR_LINE` is left. */
export const harmless = (text: string): string =>
  text.startsWith(CLEAR_LINE)
    ? CLEAR_LINE + text.slice(CLEAR_LINE.length).replace(COMMANDS, '\ufffd')
    : text.replace(COMMANDS, '\ufffd');

const signsOf = (text: string): readonly string[] => graphemesOf(text, 'en');

const cellsOfSign = (sign: string): number => (WIDE.test(sign) ? 2 : 1);

/** Cells that `text` takes: a Chinese, Japanese or Korean character takes two. */
export const cellsOf = (text: string): number =>
  signsOf(text).reduce((sum, sign) => sum + cellsOfSign(sign), 0);

/** Pieces of a word, each at most `width` cells: what is too long for a line has to break somewhere. */
const pieces = (word: string, width: number): string[] => {
  const lines = [''];
  let room = width;
  for (const sign of signsOf(word)) {
    const cells = cellsOfSign(sign);
    if (cells > room) {
      lines.push('');
      room = width;
    }
    lines[lines.length - 1] += sign;
    room -= cells;
  }
  return lines;
};

/** Lines of at most `width` cells, broken at spaces, and inside a word only where it fits on no line. */
export const wrappedInCells = (text: string, width: number): string[] =>
  wrapLines(text, width, { widthOf: cellsOf, cut: pieces });

/** `text` behind `lead`, its further lines under its first. */
export const hanging = (lead: string, text: string, width: number): string[] => {
  const indent = cellsOf(lead);
  return wrappedInCells(text, Math.max(1, width - indent)).map(
    (line, i) => (i === 0 ? lead : ' '.repeat(indent)) + line,
  );
};

/** `text` with spaces after it, up to so many cells. */
export const padEnd = (text: string, cells: number): string =>
  text + ' '.repeat(Math.max(0, cells - cellsOf(text)));

/** `text` with spaces before it, up to so many cells. */
export const padStart = (text: string, cells: number): string =>
  ' '.repeat(Math.max(0, cells - cellsOf(text))) + text;

/** One column of a table. Cells of a column that wraps are broken into lines; the others must fit. */
export interface Column {
  readonly head: string;
  readonly cells: readonly string[];
  readonly align?: 'end';
  readonly wraps?: true;
}

const GAP = 2;

/** A table of at most `width` cells. The columns that wrap share what the others leave. */
export const tableLines = (columns: readonly Column[], width: number): string[] => {
  const natural = columns.map(({ head, cells }) => Math.max(...[head, ...cells].map(cellsOf)));
  const fixed = columns.reduce((sum, { wraps }, i) => sum + (wraps ? 0 : (natural[i] as number)), 0);
  let room = width - fixed - GAP * (columns.length - 1);
  let sharing = columns.filter(({ wraps }) => wraps).length;
  const widths = columns.map(({ wraps }, i) => {
    if (!wraps) return natural[i] as number;
    const share = Math.max(1, Math.min(natural[i] as number, sharing > 1 ? Math.floor(room * 0.6) : room));
    room -= share;
    sharing -= 1;
    return share;
  });
  const rows = [columns.map(({ head }) => head)];
  for (let i = 0; i < (columns[0]?.cells.length ?? 0); i += 1)
    rows.push(columns.map(({ cells }) => cells[i] ?? ''));
  return rows.flatMap((row) => {
    const split = row.map((cell, i) => wrappedInCells(cell, widths[i] as number));
    const height = Math.max(...split.map((lines) => lines.length));
    return Array.from({ length: height }, (_, line) =>
      split
        .map((lines, i) => (columns[i]?.align ? padStart : padEnd)(lines[line] ?? '', widths[i] as number))
        .join(' '.repeat(GAP))
        .trimEnd(),
    );
  });
};
