/** Work that remembers, and that begins again without a memory where what is remembered turns out to be damaged. */
import { type LastingMemory, openMemory } from '../io/memory/open-memory.ts';
import { codeOf } from '../text/error-code.ts';
import type { Memory } from '../text/memory.ts';
import { DAMAGED_MEMORY } from '../workspace/linked-cycle.ts';

/** Also where a publish says it, which had a stopped run's files to see to. */
const isDamage = (error: unknown): boolean =>
  codeOf(error) === DAMAGED_MEMORY || (error instanceof Error && isDamage(error.cause));

interface Done<T> {
  readonly value: T;
  /** Whether all that is of use was asked for, so that the rest may be forgotten. */
  readonly isWhole: boolean;
}

/** Gives the value of some work over the memory in a folder. */
export const withMemory = async <T>(
  folder: string,
  work: (memory: Memory) => Promise<Done<T>>,
): Promise<T> => {
  const attempt = async (memory: LastingMemory): Promise<T> => {
    let isWhole = false;
    try {
      const done = await work(memory);
      isWhole = done.isWhole;
      return done.value;
    } finally {
      memory.close(isWhole);
    }
  };
  try {
    return await attempt(openMemory(folder));
  } catch (error) {
    if (!isDamage(error)) throw error;
    return attempt(openMemory(folder, false));
  }
};
