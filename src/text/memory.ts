/** What is remembered between runs. */
import { sha256 } from './hash.ts';
import { utf8Bytes, utf8Text } from './utf8.ts';

/**
 * One store of values, each under a key that says all it was made from. Nothing in it
 * is ever needed: what is not there, or is there and damaged, is made again.
 */
export interface Memory {
  /** The value under a key; undefined where there is none, or none that is as it was written. */
  readonly recall: (key: string) => Uint8Array | undefined;
  /** Whether a value is there, without reading it. Counts as a use of it. */
  readonly has: (key: string) => boolean;
  /** Remembers a value. What was under the key before is forgotten. */
  readonly keep: (key: string, value: Uint8Array) => void;
}

/** The plain data under a key, as `keepData` wrote it; undefined where there is none that can be read. */
export const recallData = (memory: Memory, key: string): unknown => {
  const bytes = memory.recall(key);
  if (bytes === undefined) return undefined;
  try {
    return JSON.parse(utf8Text(bytes));
  } catch {
    return undefined;
  }
};

/** Remembers plain data. */
export const keepData = (memory: Memory, key: string, data: unknown): void =>
  memory.keep(key, utf8Bytes(JSON.stringify(data)));

/** The plain data under a key that says all it depends on; made and remembered where there is none. */
export const recalled = async <T>(memory: Memory, key: string, make: () => T | Promise<T>): Promise<T> => {
  const known = recallData(memory, key) as T | undefined;
  if (known !== undefined) return known;
  const made = await make();
  keepData(memory, key, made);
  return made;
};

/** Names that are at hand: a box of a thousand cycles asks for fifty thousand at each build. */
const MOST_NAMES = 100_000;

/**
 * The part of a memory that one program knows: another one, which may read the same text otherwise, finds nothing in it.
 * `program` is its digest.
 */
export const memoryFor = (program: string, memory: Memory): Memory => {
  const names = new Map<string, string>();
  const own = (key: string): string => {
    const known = names.get(key);
    if (known !== undefined) return known;
    const name = sha256(`${program} ${key}`).slice(0, 32);
    // Who works all day asks for ever new ones.
    if (names.size >= MOST_NAMES) names.clear();
    names.set(key, name);
    return name;
  };
  return {
    recall: (key) => memory.recall(own(key)),
    has: (key) => memory.has(own(key)),
    keep: (key, value) => memory.keep(own(key), value),
  };
};
