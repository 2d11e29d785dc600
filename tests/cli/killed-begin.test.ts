/** `begin` killed right before each call to the disk that changes anything: no half of a record, a cycle or a photo is left. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { cp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { photo } from '../io/photos.ts';
import { contents, temporary, writeFiles } from '../io/temporary.ts';
import { compiledCommand } from '../support/compiled.ts';
import { halfOf } from '../support/share-of.ts';

const HOOK = join(import.meta.dirname, '../support/kill-at-call.cjs');
const BOX = [
  ...['--name', 'Tin & Tansy', '--about', 'A box for people who dry what they grow.'],
  ...['--currency', 'GBP', '--zone', 'Europe/London', '--language', 'en-GB'],
];
const CYCLE = ['2026-05', '--yes', '--theme', 'First Sowings', '--things', 'Wooden seed tray; Brass mister'];
const PHOTOS = ['--photos', 'phone', '--pairs', '1=1 2=2 3=box'];

/** Runs `begin` in a folder, killed before the call of that number where there is one. */
const begin = (
  cwd: string,
  words: readonly string[],
  at = 0,
): { readonly killed: boolean; readonly calls: number } => {
  const [program = '', ...rest] = compiledCommand('begin', ...words);
  const count = join(cwd, '..', 'calls');
  const { signal } = spawnSync(program, ['--require', HOOK, ...rest], {
    cwd,
    env: { ...process.env, LIDLORE_KILL_AT: String(at), LIDLORE_COUNT_CALLS: count },
  });
  const killed = signal === 'SIGKILL';
  return { killed, calls: killed ? 0 : Number(readFileSync(count, 'utf8')) };
};

/** Files of a folder by their paths, those left out that no listing of content sees. */
const seenIn = async (cwd: string): Promise<ReadonlyMap<string, string>> =>
  new Map(
    Object.entries(await contents(cwd))
      .filter(([path]) => !path.split('/').some((name) => name.startsWith('.')))
      .map(([path, bytes]) => [path, Buffer.from(bytes).toString('base64')]),
  );

const phone = async (): Promise<Readonly<Record<string, Uint8Array>>> =>
  Object.fromEntries(
    await Promise.all(
      [1, 2, 3].map(async (n) => [`phone/IMG_000${n}.jpg`, await photo(40 + n, 30)] as const),
    ),
  );

describe.each([
  { what: 'a box and its first cycle', before: [], words: [...CYCLE, ...BOX] },
  { what: 'a cycle of a box that stands, with its photos', before: [BOX], words: [...CYCLE, ...PHOTOS] },
  {
    what: 'photos for a cycle that stands',
    before: [[...CYCLE, ...BOX]],
    words: ['2026-05', '--yes', ...PHOTOS],
  },
])('$what', ({ before, words }) => {
  const laid = async (): Promise<string> => {
    const dir = join(await temporary(), 'shop');
    await writeFiles(dir, await phone());
    for (const earlier of before) begin(dir, earlier);
    return dir;
  };
  const copied = async (from: string): Promise<string> => {
    const dir = join(await temporary(), 'shop');
    await cp(from, dir, { recursive: true });
    return dir;
  };

  test('is there as it was, or as it is to be, wherever it was stopped, and the next run ends it', async () => {
    const ground = await laid();
    const whole = await copied(ground);
    const old = await seenIn(whole);
    const { calls } = begin(whole, words);
    const wanted = await seenIn(whole);
    expect(wanted.size).toBeGreaterThan(old.size);
    const moments = halfOf(Array.from({ length: calls }, (_, i) => i + 1));
    for (const at of moments) {
      const dir = await copied(ground);
      expect([at, begin(dir, words, at).killed]).toEqual([at, true]);
      for (const [path, bytes] of await seenIn(dir))
        expect([at, path, [old.get(path), wanted.get(path)].includes(bytes)]).toEqual([at, path, true]);
      // Photos are numbered as they are left over, so the same words would say something else of them.
      if (words.includes('--theme')) {
        begin(dir, words);
        expect([at, await seenIn(dir)]).toEqual([at, wanted]);
      }
      await rm(join(dir, '..'), { recursive: true });
    }
    expect(moments.length).toBeGreaterThan(4);
    console.info(`begin was killed before ${moments.length} of ${calls} calls.`);
  }, 120_000);
});
