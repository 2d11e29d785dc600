/** Which parcels a file has named already, by the number that the carrier or the shop gave them. */

import { hash64 } from '../text/fnv.ts';
import { itemAt } from '../text/item-at.ts';

/** A number that was met before. */
interface SeenParcel {
  /** Line where it stood first. */
  readonly line: number;
  /** What was noted of it. */
  readonly note: number;
}

/**
 * A memory of numbers, some 32 bytes each and none of the text: two of a million share their 64 bits with a
 * chance of 1 in 36 million.
 */
export const seenParcels = (): {
  /** What was noted of it before, or undefined the first time; then `line` and `note` are kept. */
  readonly meet: (text: string, line: number, note: number) => SeenParcel | undefined;
  /** Notes something else of one that was met. */
  readonly renote: (text: string, note: number) => void;
} => {
  let size = 1024;
  let used = 0;
  let [high, low, lines, notes] = [
    new Uint32Array(size),
    new Uint32Array(size),
    new Uint32Array(size),
    new Uint32Array(size),
  ];

  /** Where it is, or the free place where it belongs. A line of 0 is a free place. */
  const placeOf = (a: number, b: number): number => {
    let at = a % size;
    while (lines[at] !== 0 && (high[at] !== a || low[at] !== b)) at = (at + 1) % size;
    return at;
  };
  const put = (at: number, a: number, b: number, line: number, note: number): void => {
    high[at] = a;
    low[at] = b;
    lines[at] = line;
    notes[at] = note;
  };
  const grow = (): void => {
    const before = { high, low, lines, notes };
    size *= 2;
    [high, low, lines, notes] = [
      new Uint32Array(size),
      new Uint32Array(size),
      new Uint32Array(size),
      new Uint32Array(size),
    ];
    before.lines.forEach((line, i) => {
      const [a, b] = [itemAt(before.high, i), itemAt(before.low, i)];
      if (line !== 0) put(placeOf(a, b), a, b, line, itemAt(before.notes, i));
    });
  };
  return {
    meet: (text, line, note) => {
      const [a, b] = hash64(text);
      const at = placeOf(a, b);
      if (lines[at] !== 0) return { line: itemAt(lines, at), note: itemAt(notes, at) };
      put(at, a, b, line, note);
      used += 1;
      if (used > size / 2) grow();
      return undefined;
    },
    renote: (text, note) => {
      const at = placeOf(...hash64(text));
      notes[at] = note;
    },
  };
};
