/** Which parcels a file has named already, by the number that the carrier or the shop gave them. */
import { itemAt } from '../text/item-at.ts';

/** 64 bits of a text in two halves. Fowler, Noll & Vo's FNV-1a, 32 bits, from two starting points. */
const hashOf = (text: string): readonly [number, number] => {
  let [a, b] = [0x811c9dc5, 0x9747b28c];
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i);
    a = Math.imul(a ^ unit, 0x01000193);
    b = Math.imul(b ^ unit, 0x01000193) ^ (a >>> 15);
  }
  return [a >>> 0, b >>> 0];
};

export interface SeenParcel {
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
      const [a, b] = hashOf(text);
      const at = placeOf(a, b);
      if (lines[at] !== 0) return { line: itemAt(lines, at), note: itemAt(notes, at) };
      put(at, a, b, line, note);
      used += 1;
      if (used > size / 2) grow();
      return undefined;
    },
    renote: (text, note) => {
      const at = placeOf(...hashOf(text));
      notes[at] = note;
    },
  };
};
