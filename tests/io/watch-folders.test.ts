import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { CONTENT, listFile } from '../../src/io/list-files.ts';
import { watchFolders } from '../../src/io/watch-folders.ts';
import { temporary, writeFiles } from './temporary.ts';

/** Longer than it takes until a folder is looked at without being told. */
const MORE_THAN_A_LOOK = 1_800;
const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

test('what another program writes or makes among the records or in the templates is told; what is known already is not', async () => {
  const folder = await temporary({ 'content/box.md': 'one', 'templates/site.css': 'a' });
  const content = join(folder, 'content');
  const known = new Map<string, string>();
  let told = 0;
  const watched = watchFolders(
    content,
    [join(folder, 'templates')],
    () => {
      told += 1;
    },
    (path) => known.get(path),
  );
  onTestFinished(watched.close);
  await writeFiles(content, { 'box.md': 'ours' });
  known.set('box.md', listFile(content, 'box.md', CONTENT)?.stamp ?? '');
  await wait(MORE_THAN_A_LOOK);
  expect(told).toBe(0);
  await writeFiles(content, { 'box.md': 'theirs', 'cycles/2026-03/cycle.md': 'theirs too' });
  await expect.poll(() => told, { timeout: 10_000 }).toBeGreaterThan(0);
  await wait(MORE_THAN_A_LOOK);
  const before = told;
  await writeFiles(folder, { 'templates/site.css': 'b' });
  await expect.poll(() => told, { timeout: 10_000 }).toBeGreaterThan(before);
}, 30_000);
