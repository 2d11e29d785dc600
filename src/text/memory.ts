/**
 * What is remembered between runs: one store of values, each under a key that says all it was made from. Nothing in it
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

/** A memory that lasts as long as the process. */
export const shortMemory = (): Memory => {
  const values = new Map<string, Uint8Array>();
  return {
    recall: (key) => values.get(key),
    has: (key) => values.has(key),
    keep: (key, value) => void values.set(key, value),
  };
};

const decoder = new TextDecoder();
const encoder = new TextEncoder();

/** The plain data under a key, as `keepData` wrote it; undefined where there is none that can be read. */
export const recallData = (memory: Memory, key: string): unknown => {
  const bytes = memory.recall(key);
  if (bytes === undefined) return undefined;
  try {
    return JSON.parse(decoder.decode(bytes));
  } catch {
    return undefined;
  }
};

/** Remembers plain data. */
export const keepData = (memory: Memory, key: string, data: unknown): void =>
  memory.keep(key, encoder.encode(JSON.stringify(data)));
