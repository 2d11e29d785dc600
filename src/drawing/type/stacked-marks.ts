/** Letters with marks that no one face has together: the marks are put on by what their ink covers. */
import type { Face } from './faces.ts';
import type { Ink } from './outline.ts';

/** A letter or a mark of it, in a face that has it. */
export interface Part {
  readonly face: Face;
  readonly text: string;
}

/** The sign that looks like a mark and stands alone (Unicode's note at each), where no face has the mark itself. */
const ALONE: Readonly<Record<string, string>> = {
  '\u0300': '\u0060',
  '\u0301': '\u00b4',
  '\u0302': '\u02c6',
  '\u0303': '\u02dc',
  '\u0304': '\u00af',
  '\u0306': '\u02d8',
  '\u0307': '\u02d9',
  '\u0308': '\u00a8',
  '\u030a': '\u02da',
  '\u030b': '\u02dd',
  '\u030c': '\u02c7',
  '\u0327': '\u00b8',
  '\u0328': '\u02db',
};

/** Combining classes 220 and 202 of the block of combining marks (UnicodeData.txt): these stand below. */
const BELOW =
  /[\u0316-\u0319\u031c-\u0320\u0323-\u0329\u032a-\u0333\u0339-\u033c\u0347-\u0349\u034d\u034e\u0353-\u0356\u0359\u035a\u0321\u0322]/u;
/** Class 1: drawn through the letter. */
const THROUGH = /[\u0334-\u0338]/u;
/** All marks of alphabets that are drawn over, under or through a letter. */
const KNOWN =
  /^[\u0300-\u0314\u0316-\u033f\u0342-\u0344\u0346-\u0349\u034a-\u034e\u0350-\u0357\u0359-\u035b\u0363-\u036f]$/u;

/**
 * A letter as the longest beginning that one face draws, with each mark after it; undefined where a part is lacking or
 * is no mark that stands over, under or through a letter.
 */
export const partsOf = (
  letter: string,
  faceOf: (part: string) => Face | undefined,
): readonly Part[] | undefined => {
  const [base = '', ...marks] = [...letter.normalize('NFD')];
  if (marks.length === 0 || !marks.every((mark) => KNOWN.test(mark))) return undefined;
  for (let held = marks.length - 1; held >= 0; held -= 1) {
    const text = (base + marks.slice(0, held).join('')).normalize('NFC');
    const face = faceOf(text);
    if (!face) continue;
    const others = marks.slice(held).map((mark): Part | undefined => {
      const own = faceOf(mark);
      if (own) return { face: own, text: mark };
      const alone = ALONE[mark];
      const other = alone === undefined ? undefined : faceOf(alone);
      return other && alone !== undefined ? { face: other, text: alone } : undefined;
    });
    return others.every((one) => one !== undefined) ? [{ face, text }, ...others] : undefined;
  }
  return undefined;
};

/** Ems between a letter and its mark, or two marks. */
const GAP = 0.05;

const isBelow = (mark: string): boolean =>
  BELOW.test(mark) || mark === ALONE['\u0327'] || mark === ALONE['\u0328'];

/** How far to move a mark, in ems, so that it stands on a letter with the marks that it has already. */
export const markShift = (
  mark: string,
  ink: Ink,
  letter: Ink,
  whole: Ink,
): { readonly x: number; readonly y: number } => {
  const x = (letter.left + letter.right - ink.left - ink.right) / 2;
  if (THROUGH.test(mark)) return { x, y: (letter.top + letter.bottom - ink.top - ink.bottom) / 2 };
  return { x, y: isBelow(mark) ? whole.bottom - GAP - ink.top : whole.top + GAP - ink.bottom };
};
