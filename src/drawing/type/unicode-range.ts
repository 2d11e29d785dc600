/** Ranges of letters as CSS writes them (`unicode-range`, CSS Fonts Level 4). */

/** First and last code points, both included, in order. */
export type Ranges = readonly (readonly [first: number, last: number])[];

/** "U+5D0-5EA,U+20AA" without wildcards. */
export const rangesOf = (written: string): Ranges =>
  written
    .split(',')
    .map((range): readonly [number, number] => {
      const [first = '', last = first] = range.trim().replace(/^U\+/i, '').split('-');
      return [Number.parseInt(first, 16), Number.parseInt(last, 16)];
    })
    .sort(([a], [b]) => a - b);

export const inRanges = (ranges: Ranges, codePoint: number): boolean => {
  let [low, high] = [0, ranges.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const [first, last] = ranges[middle] ?? [0, 0];
    if (codePoint < first) high = middle;
    else if (codePoint > last) low = middle + 1;
    else return true;
  }
  return false;
};
