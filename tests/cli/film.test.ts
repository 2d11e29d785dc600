import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { appendFile, chmod, cp, readFile, utimes } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { listFiles } from '../../src/io/list-files.ts';
import { contents, temporary, temporaryBox, writeFiles } from '../io/temporary.ts';
import { shareOf } from '../support/share-of.ts';
import { tinyBox } from './tiny-box.ts';

const program = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const HOOK = join(import.meta.dirname, '../support/kill-at-call.cjs');
const AS_OF = ['--as-of', '2026-03-27'];

/** Stands in for ffmpeg, so that nobody waits for real frames: writes a word into the file that it is asked for. */
const QUICK = '#!/bin/sh\nfor last; do :; done\nprintf film > "$last"\n';
/** Hangs, as a long film does. */
const SLOW = '#!/bin/sh\nexec sleep 60\n';

const filmBox = async (): Promise<string> => {
  const files = await tinyBox();
  const box = String(files['content/box.md']);
  const dir = await temporaryBox({
    ...files,
    'content/box.md': box.replace('call: join\n', 'call: join\npieces: [article, clip]\nclip: 15\n'),
    'bin/ffmpeg': QUICK,
  });
  await chmod(join(dir, 'bin/ffmpeg'), 0o755);
  // A file of this moment is never taken for unchanged.
  for (const { path } of listFiles(join(dir, 'content'))) await utimes(join(dir, 'content', path), 1, 1);
  return dir;
};

interface Ended {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

const lidlore = (cwd: string, words: readonly string[], until?: RegExp): Promise<Ended> =>
  new Promise((resolve) => {
    const path = `${join(cwd, 'bin')}:${process.env.PATH}`;
    const child = spawn(process.execPath, [program, ...words], { cwd, env: { PATH: path } });
    let stdout = '';
    let stderr = '';
    let waiting: NodeJS.Timeout | undefined;
    child.stdout.on('data', (chunk: Buffer) => {
      stdout += chunk;
    });
    child.stderr.on('data', (chunk: Buffer) => {
      stderr += chunk;
    });
    if (until)
      waiting = setInterval(() => {
        if (existsSync(join(cwd, 'backroom/2026-03/clip-sheet.html')))
          setTimeout(() => child.kill('SIGKILL'), 1500);
      }, 50);
    child.on('close', (status) => {
      clearInterval(waiting);
      resolve({ status, stdout, stderr });
    });
  });

/** A copy of a folder in which `film` was run, killed before the call to the disk of that number where there is one. */
const filmed = async (ground: string, at = 0): Promise<string> => {
  const dir = await temporary();
  await cp(ground, dir, { recursive: true });
  const { signal } = spawnSync(process.execPath, ['--require', HOOK, program, 'film', '2026-03', ...AS_OF], {
    cwd: dir,
    env: {
      PATH: `${join(dir, 'bin')}:${process.env.PATH}`,
      LIDLORE_KILL_AT: String(at),
      LIDLORE_COUNT_CALLS: join(dir, 'calls'),
    },
  });
  expect([at, signal]).toEqual([at, at === 0 ? null : 'SIGKILL']);
  return dir;
};

const film = (dir: string, cycle: string): string => join(dir, `backroom/${cycle}/clip.mp4`);

describe('a film', () => {
  test('is made after all else, named by the back room, and not made again before something of it changes', async () => {
    const dir = await filmBox();
    const first = await lidlore(dir, ['build', ...AS_OF]);
    expect(first).toMatchObject({ status: 0 });
    expect(first.stdout).toContain('Made the film of 2026-03');
    expect(await readFile(film(dir, '2026-03'), 'utf8')).toBe('film');
    expect(await readFile(film(dir, '2026-04'), 'utf8')).toBe('film');
    expect(await readFile(join(dir, 'backroom/index.html'), 'utf8')).toContain('2026-03/clip.mp4');

    expect((await lidlore(dir, ['build', ...AS_OF])).stdout).toContain('Nothing has changed');
    // A word that the film does not show.
    await appendFile(join(dir, 'content/cycles/2026-03/items/01-basket.md'), '\nRinse it at the end.\n');
    expect((await lidlore(dir, ['build', ...AS_OF])).stdout).not.toContain('Made the film');

    const item = join(dir, 'content/cycles/2026-03/items/01-basket.md');
    await writeFiles(dir, {
      'content/cycles/2026-03/items/01-basket.md': (await readFile(item, 'utf8')).replace(
        'Cane proving basket',
        'Willow proving basket',
      ),
    });
    // Of a film that is another by now the old one does not stand.
    const without = await lidlore(dir, ['build', '--without', 'film', ...AS_OF]);
    expect(without.stdout).toContain('Not made yet: the film of 2026-03. Make it with lidlore film.');
    expect(existsSync(film(dir, '2026-03'))).toBe(false);
    expect(existsSync(film(dir, '2026-04'))).toBe(true);
    expect(await readFile(join(dir, 'backroom/index.html'), 'utf8')).not.toContain('2026-03/clip.mp4');

    const made = await lidlore(dir, ['film', '2026-03', ...AS_OF]);
    expect(made).toMatchObject({ status: 0 });
    expect(made.stdout).toContain('Made the film of 2026-03');
    expect(existsSync(film(dir, '2026-03'))).toBe(true);
  });

  test('that is stopped leaves site and back room whole, and the next build makes it', async () => {
    const dir = await filmBox();
    await writeFiles(dir, { 'bin/ffmpeg': SLOW });
    const killed = await lidlore(dir, ['build', ...AS_OF], /film/);
    expect(killed.status).toBeNull();
    expect(existsSync(join(dir, 'site/index.html'))).toBe(true);
    expect(existsSync(join(dir, 'backroom/index.html'))).toBe(true);
    expect(existsSync(film(dir, '2026-03'))).toBe(false);
    await writeFiles(dir, { 'bin/ffmpeg': QUICK });
    const next = await lidlore(dir, ['build', ...AS_OF]);
    expect(next.status).toBe(0);
    expect(await readFile(film(dir, '2026-03'), 'utf8')).toBe('film');
  });

  test('that is killed before any call to the disk is there whole or not at all, and the next run makes it', async () => {
    const ground = await filmBox();
    expect((await lidlore(ground, ['build', '--without', 'film', ...AS_OF])).status).toBe(0);
    const counted = await filmed(ground);
    const calls = Number(await readFile(join(counted, 'calls'), 'utf8'));
    const moments = Array.from({ length: shareOf(40) }, (_, i) => 1 + Math.floor((i * calls) / shareOf(40)));
    for (const at of moments) {
      const dir = await filmed(ground, at);
      const made = existsSync(film(dir, '2026-03')) ? await readFile(film(dir, '2026-03'), 'utf8') : 'none';
      expect([at, ['none', 'film'].includes(made)]).toEqual([at, true]);
      expect(existsSync(join(dir, 'site/index.html'))).toBe(true);
      expect((await lidlore(dir, ['film', '2026-03', ...AS_OF])).status).toBe(0);
      expect(await contents(join(dir, 'backroom'))).toEqual(await contents(join(counted, 'backroom')));
    }
    console.info(`The making of a film was killed before ${moments.length} of ${calls} calls.`);
  }, 120_000);

  test('of a month that there is none of is a mistake in the words', async () => {
    const dir = await filmBox();
    const answer = await lidlore(dir, ['film', '2026-05', ...AS_OF]);
    expect(answer.status).toBe(2);
    expect(answer.stderr).toContain('There is no cycle 2026-05 in content. Did you mean 2026-0');
    expect(existsSync(join(dir, 'site'))).toBe(false);
  });
});
