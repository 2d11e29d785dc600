/** Another program that writes a file at the very moment at which ours takes its place. */
import { closeSync, openSync, readdirSync, readFileSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, expect, test, vi } from 'vitest';
import { replaceSeen } from '../../src/io/owned-files.ts';
import { sha256 } from '../../src/text/hash.ts';
import { temporary } from './temporary.ts';

/** What happens right before the next rename. */
const meanwhile = vi.hoisted((): { happens: (() => void) | undefined } => ({ happens: undefined }));
vi.mock('node:fs', async (load) => {
  const fs = await load<typeof import('node:fs')>();
  return {
    ...fs,
    renameSync: (from: string, to: string): void => {
      meanwhile.happens?.();
      meanwhile.happens = undefined;
      fs.renameSync(from, to);
    },
  };
});

let dir = '';
const file = (): string => join(dir, 'box.md');
const save = () => replaceSeen(dir, 'box.md', sha256(Buffer.from('before')), Buffer.from('ours'));
const stands = (): readonly string[] => [readFileSync(file(), 'utf8'), ...readdirSync(dir)];
beforeEach(async () => {
  dir = await temporary({ 'box.md': 'before' });
});

test('a file that nobody else writes is replaced, and nothing is left beside it', () => {
  expect(save().kind).toBe('written');
  expect(stands()).toEqual(['ours', 'box.md']);
});

test('what another program writes into it meanwhile is not lost', () => {
  meanwhile.happens = () => writeFileSync(file(), 'theirs');
  expect(save().kind).toBe('changed underneath');
  expect(stands()).toEqual(['theirs', 'box.md']);
});

test('nor is what it has only begun to write', () => {
  let open = 0;
  meanwhile.happens = () => {
    open = openSync(file(), 'w');
  };
  expect(save().kind).toBe('changed underneath');
  writeSync(open, 'theirs, at length');
  closeSync(open);
  expect(stands()).toEqual(['theirs, at length', 'box.md']);
});
