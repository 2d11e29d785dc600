import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { CONTENT, listFile } from '../../src/io/list-files.ts';
import { watchFolders } from '../../src/io/watch-folders.ts';
import { temporary, writeFiles } from './temporary.ts';

/** Longer than it takes until a folder is looked at without being told. */
const MORE_THAN_A_LOOK = 1_800;
/** Watches a shop's folder until the test is over; gives how often anything was told. */
const toldOf = (folder: string, stampOf: Parameters<typeof watchFolders>[3]): (() => number) => {
  let told = 0;
  const heard = (): void => {
    told += 1;
  };
  const watched = watchFolders(join(folder, 'content'), [join(folder, 'templates')], heard, stampOf);
  onTestFinished(watched.close);
  return () => told;
};
const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

test('what another program writes or makes among the records or in the templates is told; what is known already is not', async () => {
  const folder = await temporary({ 'content/box.md': 'one', 'templates/site.css': 'a' });
  const content = join(folder, 'content');
  const known = new Map<string, string>();
  const told = toldOf(folder, (path) => known.get(path));
  await writeFiles(content, { 'box.md': 'ours' });
  known.set('box.md', listFile(content, 'box.md', CONTENT)?.stamp ?? '');
  await wait(MORE_THAN_A_LOOK);
  expect(told()).toBe(0);
  await writeFiles(content, { 'box.md': 'theirs', 'cycles/2026-03/cycle.md': 'theirs too' });
  await expect.poll(told, { timeout: 10_000 }).toBeGreaterThan(0);
  await wait(MORE_THAN_A_LOOK);
  const before = told();
  await writeFiles(folder, { 'templates/site.css': 'b' });
  await expect.poll(told, { timeout: 10_000 }).toBeGreaterThan(before);
}, 30_000);

test('an editor that saves by putting another file in the place is heard each time, in folders that came later too', async () => {
  const folder = await temporary({ 'content/cycles/2026-03/cycle.md': '0', 'templates/site.css': 'a' });
  const content = join(folder, 'content');
  // Nobody looks by themselves here, so that what is told was heard.
  const looking = vi.spyOn(globalThis, 'setInterval').mockReturnValue(setTimeout(() => {}, 0));
  onTestFinished(() => looking.mockRestore());
  const told = toldOf(folder, () => 'what nobody has written');
  const heard = async (change: () => void): Promise<void> => {
    const before = told();
    change();
    await expect.poll(told, { timeout: 5_000 }).toBeGreaterThan(before);
  };
  const save = (path: string, text: string) => (): void => {
    writeFileSync(join(folder, `${path}~`), text);
    renameSync(join(folder, `${path}~`), join(folder, path));
  };
  for (const text of ['one', 'two', 'three'])
    for (const path of ['content/cycles/2026-03/cycle.md', 'templates/site.css'])
      await heard(save(path, text));
  const cycle = join(content, 'cycles/2026-04');
  await heard(() => {
    mkdirSync(join(cycle, 'items'), { recursive: true });
    writeFileSync(join(cycle, 'cycle.md'), '');
  });
  for (const text of ['one', 'two']) await heard(save('content/cycles/2026-04/items/01-tray.md', text));
  // Another folder under the name of one that went.
  await heard(() => rmSync(cycle, { recursive: true }));
  await heard(() => {
    mkdirSync(cycle);
    writeFileSync(join(cycle, 'cycle.md'), 'again');
  });
  for (const text of ['one', 'two']) await heard(save('content/cycles/2026-04/cycle.md', text));
});
