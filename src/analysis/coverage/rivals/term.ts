/** Words as numbers. */
import { FNV_BASIS, FNV_PRIME } from '../../../text/fnv.ts';

/**
 * Two hashes of 32 bits of a word's key, over UTF-16 units: FNV-1a, and a like one with another factor. Two of fifty
 * thousand words have both in common with a chance of less than one in ten thousand million, so that words are told
 * apart by them alone.
 */
interface TermHash {
  readonly a: number;
  readonly b: number;
}

const B_START = 0x9747b28c;
const B_FACTOR = 0x5bd1e995;

const nextA = (hash: number, unit: number): number => Math.imul(hash ^ unit, FNV_PRIME);
/** What is shifted down lets high bits change low ones, which a product alone never does. */
const nextB = (hash: number, unit: number): number => {
  const product = Math.imul(hash ^ unit, B_FACTOR);
  return product ^ (product >>> 15);
};

/** The hashes of a part of a text, each as an integer of 32 bits. */
export const hashOf = (text: string, from = 0, to = text.length): TermHash => {
  let [a, b] = [FNV_BASIS, B_START];
  for (let at = from; at < to; at += 1) {
    const unit = text.charCodeAt(at);
    a = nextA(a, unit);
    b = nextB(b, unit);
  }
  return { a: a | 0, b: b | 0 };
};

/** Words by their numbers. */
export interface Words {
  /** The word's number, or -1. */
  readonly find: (hash: TermHash) => number;
}

/** One number a distinct word, counted from 0. */
export interface Vocabulary extends Words {
  readonly size: () => number;
  /** Numbers of words whose hashes stand one after the other; a word that is new gets the next. */
  readonly addAll: (hashes: Int32Array) => Int32Array;
}

/** Numbers that a slot takes: both hashes, and the word's number plus one; 0 is an empty slot. */
const SLOT = 3;

/** Where a word stands in some slots or would stand: the index of its first number. A power of two of slots, never all full. */
const slotOf = (slots: Int32Array, mask: number, a: number, b: number): number => {
  let slot = (a ^ (a >>> 15)) & mask;
  for (;;) {
    const at = SLOT * slot;
    if (slots[at + 2] === 0 || (slots[at] === a && slots[at + 1] === b)) return at;
    slot = (slot + 1) & mask;
  }
};

const grown = (slots: Int32Array): Int32Array<ArrayBuffer> => {
  const larger = new Int32Array(2 * slots.length);
  const mask = larger.length / SLOT - 1;
  for (let at = 0; at < slots.length; at += SLOT) {
    if (slots[at + 2] === 0) continue;
    larger.set(
      slots.subarray(at, at + SLOT),
      slotOf(larger, mask, slots[at] as number, slots[at + 1] as number),
    );
  }
  return larger;
};

/** A vocabulary without a word. Open addressing in a flat array: an archive of a thousand articles asks a million times. */
export const newVocabulary = (): Vocabulary => {
  let slots = new Int32Array(SLOT << 13);
  let size = 0;
  return {
    size: () => size,
    find: ({ a, b }) => (slots[slotOf(slots, slots.length / SLOT - 1, a, b) + 2] as number) - 1,
    addAll: (hashes) => {
      const count = hashes.length >> 1;
      while ((size + count) * 2 * SLOT > slots.length) slots = grown(slots);
      const [own, mask] = [slots, slots.length / SLOT - 1];
      const numbers = new Int32Array(count);
      for (let i = 0; i < count; i += 1) {
        const [a, b] = [hashes[2 * i] as number, hashes[2 * i + 1] as number];
        const at = slotOf(own, mask, a, b);
        if (own[at + 2] === 0) {
          own[at] = a;
          own[at + 1] = b;
          size += 1;
          own[at + 2] = size;
        }
        numbers[i] = (own[at + 2] as number) - 1;
      }
      return numbers;
    },
  };
};
