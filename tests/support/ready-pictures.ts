/** Where the small boxes of all tests keep their pictures, empty when a run of the tests begins and gone when it ends. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    readyPictures: string;
  }
}

export const setup = async (project: TestProject): Promise<() => Promise<void>> => {
  const dir = await mkdtemp(join(tmpdir(), 'lidlore-pictures-'));
  project.provide('readyPictures', dir);
  return () => rm(dir, { recursive: true, force: true });
};
