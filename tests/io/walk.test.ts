import { symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { walk } from '../../src/io/walk.ts';
import { temporary } from './temporary.ts';

test('a link that leads back to a folder above is not followed, and one that leads elsewhere is', async () => {
  const elsewhere = await temporary({ 'photo.jpg': '' });
  const dir = await temporary({ 'box.md': '', 'cycles/2026-03/cycle.md': '' });
  await symlink(dir, join(dir, 'cycles/2026-03/back'));
  await symlink(elsewhere, join(dir, 'photos'));
  expect(await walk(dir)).toEqual(['box.md', 'cycles/2026-03/cycle.md', 'photos/photo.jpg']);
});
