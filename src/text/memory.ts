/** What is remembered between runs. */
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
