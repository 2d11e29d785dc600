import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { readLists } from '../../src/workspace/parcel-lists.ts';
import { openWorkspace } from '../../src/workspace/workspace.ts';
import { shortMemory } from '../support/short-memory.ts';
import { smallBox } from '../support/small-box.ts';

const dir = mkdtempSync(join(tmpdir(), 'lidlore-links-'));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

const LINKS = [
  'addresses.csv',
  'cycles/2026-03/items/02-tin.md',
  'cycles/2026-03/parcels.csv',
  'cycles/2026-03/photos/tin.jpg',
  'searches.csv',
];

test('links that lead to nothing are named, each once, and what is whole is read', async () => {
  writeFileSync(join(dir, 'box.md'), smallBox(''));
  for (const path of LINKS) {
    mkdirSync(dirname(join(dir, path)), { recursive: true });
    symlinkSync(join(dir, 'nowhere'), join(dir, path));
  }
  const workspace = await openWorkspace({ path: dir, memory: shortMemory(), program: 'this one' });
  const { box, diagnostics } = workspace.snapshot();
  expect(await readLists(workspace, 0)).toEqual(new Map());
  expect(box?.settings.name).toBe('Crumb & Co');
  const unread = diagnostics.filter(({ rule }) => rule === 'file-unread');
  expect(unread.map(({ location }) => location.file).sort()).toEqual(LINKS);
});
