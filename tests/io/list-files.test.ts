import { symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { listedIfThere, listFiles } from '../../src/io/list-files.ts';
import { temporary } from './temporary.ts';

const pathsIn = (dir: string): readonly string[] => listFiles(dir).map(({ path }) => path);

test('a link that leads back to a folder above is not followed, and one that leads elsewhere is', async () => {
  const elsewhere = await temporary({ 'photo.jpg': '' });
  const dir = await temporary({ 'box.md': '', 'cycles/2026-03/cycle.md': '' });
  await symlink(dir, join(dir, 'cycles/2026-03/back'));
  await symlink(elsewhere, join(dir, 'photos'));
  expect(pathsIn(dir)).toEqual(['box.md', 'cycles/2026-03/cycle.md', 'photos/photo.jpg']);
});

test('a link that leads nowhere is passed over, and so is what is hidden', async () => {
  const dir = await temporary({ 'box.md': '', '.git/config': '', 'cycles/.DS_Store': '' });
  await symlink(join(dir, 'gone'), join(dir, 'photos'));
  expect(pathsIn(dir)).toEqual(['box.md']);
});

test('a folder that is not there is empty only where it need not be there', async () => {
  const dir = join(await temporary(), 'templates');
  expect(listedIfThere(dir)).toEqual([]);
  expect(() => listFiles(dir)).toThrow('ENOENT');
});
