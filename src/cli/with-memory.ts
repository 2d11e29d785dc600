/** Work that remembers, and that begins again without a memory where what is remembered turns out to be wrong. */
import { type LastingMemory, openMemory } from '../io/memory/open-memory.ts';
import { isPublishFailure } from '../io/publish/failure.ts';
import type { Memory } from '../text/memory.ts';
import { diskRefusal } from './disk-refusal.ts';

/** Whether an error has its reason outside the program and its memory: then the work would end alike without one. */
export const isFromOutside = (error: unknown): boolean =>
  isPublishFailure(error) ? error.reason !== 'bug' : diskRefusal(error) !== undefined;

interface Done<T> {
  readonly value: T;
  /** Whether all that is of use was asked for, so that the rest may be forgotten. */
  readonly isWhole: boolean;
}

/**
 * Gives the value of some work over the memory in a folder. Values of the memory may be sound as bytes and wrong inside,
 * and show it anywhere, so that every fault is taken for the memory's at first: it is ours if it comes without one too.
 */
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
    if (isFromOutside(error)) throw error;
    return attempt(openMemory(folder, false));
  }
};
