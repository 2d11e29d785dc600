import { symlink } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { expect, test } from 'vitest';
import { CONTENT, leadsOut, listedIfThere, listFile, listFiles } from '../../src/io/list-files.ts';
import { temporary } from './temporary.ts';

const pathsIn = (dir: string): readonly string[] => listFiles(dir).map(({ path }) => path);

test('a link that leads back to a folder above is not followed, and one that leads elsewhere is', async () => {
  const elsewhere = await temporary({ 'photo.jpg': '' });
  const dir = await temporary({ 'box.md': '', 'cycles/2026-03/cycle.md': '' });
  await symlink(dir, join(dir, 'cycles/2026-03/back'));
  await symlink(elsewhere, join(dir, 'photos'));
  expect(pathsIn(dir)).toEqual(['box.md', 'cycles/2026-03/cycle.md', 'photos/photo.jpg']);
});

test('a content folder is left by no link: the link is listed, whether a file or a folder is behind it, and nothing else', async () => {
  const elsewhere = await temporary({ 'photo.jpg': 'x', 'cycle.md': 'x' });
  const dir = await temporary({ 'box.md': '', 'photos/a.jpg': 'x', 'cycles/2026-03/cycle.md': '' });
  await symlink(elsewhere, join(dir, 'cycles/2026-04'));
  await symlink(relative(join(dir, 'photos'), join(elsewhere, 'photo.jpg')), join(dir, 'photos/b.jpg'));
  await symlink('a.jpg', join(dir, 'photos/c.jpg'));
  // By another way round, out and in again is in.
  await symlink(join(dir, 'photos'), join(dir, 'cycles/2026-03/photos'));
  const folder = join(await temporary(), 'linked');
  await symlink(dir, folder);
  for (const content of [dir, folder]) {
    const files = listFiles(content, CONTENT);
    expect(files.filter(leadsOut).map(({ path }) => path)).toEqual([
      'cycles/2026-03/photos/b.jpg',
      'cycles/2026-04',
      'photos/b.jpg',
    ]);
    expect(files.map(({ path }) => path)).toEqual([
      'box.md',
      'cycles/2026-03/cycle.md',
      'cycles/2026-03/photos/a.jpg',
      'cycles/2026-03/photos/b.jpg',
      'cycles/2026-03/photos/c.jpg',
      'cycles/2026-04',
      'photos/a.jpg',
      'photos/b.jpg',
      'photos/c.jpg',
    ]);
    expect(listFile(content, 'photos/b.jpg', CONTENT)).toMatchObject({ size: 0, stamp: 'outside' });
    expect(listFile(content, 'photos/c.jpg', CONTENT)).toMatchObject({ size: 1 });
    expect(listFile(content, 'cycles/2026-04/cycle.md', CONTENT)).toBeUndefined();
  }
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
