/** Remembers what the dictionary said, for opening it takes as long as all the rest of a proof. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { writeWhole } from './write-whole.ts';

export interface NameMemory {
  /** To be filled with what is looked up. */
  readonly names: Map<string, readonly string[]>;
  /** Writes it down where something was added. */
  readonly keep: () => Promise<void>;
}

/** Raise when the same question is answered otherwise. */
const VERSION = 1;

/** The memory in the folder `cache`; empty when there is none. */
export const readNameMemory = async (cache: string): Promise<NameMemory> => {
  const file = join(cache, 'names.json');
  let before: readonly (readonly [string, readonly string[]])[] = [];
  try {
    const remembered = JSON.parse(await readFile(file, 'utf8'));
    if (remembered.version === VERSION) before = remembered.names;
  } catch {
    // Nothing that can be used: the dictionary is asked.
  }
  const names = new Map(before);
  return {
    names,
    keep: async () => {
      if (names.size === before.length) return;
      await writeWhole(file, JSON.stringify({ version: VERSION, names: [...names] }));
    },
  };
};
