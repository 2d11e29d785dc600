/** A photo that took too long says nothing of itself for good: a quieter machine may read it. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { knowFiles, rememberedFiles, rememberFiles } from '../../src/io/know-files.ts';
import { CONTENT, listFiles } from '../../src/io/list-files.ts';
import { TOO_SLOW } from '../../src/io/photo-problem.ts';
import { shortMemory } from '../support/short-memory.ts';
import { temporary } from './temporary.ts';

const looks = vi.hoisted(() => ({ count: 0 }));

vi.mock('../../src/io/probe.ts', async (original) => {
  const { unusable } = await original<typeof import('../../src/io/probe.ts')>();
  return {
    unusable,
    probe: async (path: string) => {
      looks.count += 1;
      return unusable(path, 'h', path.startsWith('slow') ? TOO_SLOW : { problem: 'is cut short' });
    },
  };
});

it('is looked at again by the next run, where another is not', async () => {
  // Two looks at once would load it twice, and the second get the true one.
  await import('../../src/io/probe.ts');
  const folder = await temporary();
  await writeFile(join(folder, 'slow.jpg'), 'one');
  await writeFile(join(folder, 'short.jpg'), 'other');
  const memory = shortMemory();
  const look = async () => {
    const listed = listFiles(folder, CONTENT);
    const files = await knowFiles(folder, listed, rememberedFiles(folder, memory), memory);
    rememberFiles(folder, files, listed, Date.now() + 1000, memory);
    return files;
  };
  const first = await look();
  expect(first.get('slow.jpg')?.photo?.problem).toBe('takes too long to read');
  expect(first.get('slow.jpg')?.photo?.fix).toMatch(/again/);
  expect(looks.count).toBe(2);
  await look();
  expect(looks.count).toBe(3);
});
