import type { Memory } from '../../src/text/memory.ts';

/** A memory that lasts as long as the process. */
export const shortMemory = (): Memory => {
  const values = new Map<string, Uint8Array>();
  return {
    recall: (key) => values.get(key),
    has: (key) => values.has(key),
    keep: (key, value) => void values.set(key, value),
  };
};
