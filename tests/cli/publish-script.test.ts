/** The script that src/HOSTING.md gives to a clock, run as it stands there. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { chmod } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { isoInstant } from '../../src/model/calendar.ts';
import { temporary, temporaryBox, writeFiles } from '../io/temporary.ts';
import { compiledCommand } from '../support/compiled.ts';
import { tinyBox } from './tiny-box.ts';

const PAGE = readFileSync(join(import.meta.dirname, '../../src/HOSTING.md'), 'utf8');
const SCRIPT = /```sh\n([\s\S]*?)```/.exec(PAGE)?.[1] ?? '';
const CYCLE = 'content/cycles/2026-04/cycle.md';

const shows = (dir: string): boolean => existsSync(join(dir, 'site/boxes/2026-04-proving.html'));

/** The script in a folder with a box, run from elsewhere, as a clock does; `lidlore` is the compiled program. */
const scripted = async (files: Record<string, string | Uint8Array>) => {
  const dir = await temporaryBox({ ...files, publish: SCRIPT });
  const bin = await temporary({ lidlore: `#!/bin/sh\nexec ${compiledCommand().join(' ')} "$@"\n` });
  await Promise.all([chmod(join(dir, 'publish'), 0o755), chmod(join(bin, 'lidlore'), 0o755)]);
  const run = () => {
    const { status, stdout, stderr } = spawnSync(join(dir, 'publish'), {
      cwd: '/',
      env: { PATH: `${bin}:/usr/bin:/bin` },
      encoding: 'utf8',
    });
    return { status, said: stdout + stderr };
  };
  return { dir, run };
};

test('the clock’s script opens a reveal once its moment has come, and says nothing', async () => {
  const files = await tinyBox();
  const record = String(files[CYCLE]);
  const opens = Math.ceil(Date.now() / 1000) * 1000 + 8000;
  const { dir, run } = await scripted({
    ...files,
    [CYCLE]: record.replace(/^reveal: .*$/m, `reveal: ${isoInstant(opens)}`),
  });
  expect(run()).toEqual({ status: 0, said: '' });
  expect(Date.now()).toBeLessThan(opens);
  expect(shows(dir)).toBe(false);
  await new Promise((done) => setTimeout(done, opens + 1000 - Date.now()));
  expect(run()).toEqual({ status: 0, said: '' });
  expect(shows(dir)).toBe(true);

  // Nothing is touched where nothing has changed.
  const { mtimeMs } = statSync(join(dir, 'site/index.html'));
  expect(run()).toEqual({ status: 0, said: '' });
  expect(statSync(join(dir, 'site/index.html')).mtimeMs).toBe(mtimeMs);
});

test('the clock’s script says what must be fixed, ends with 1 and leaves the site as it was', async () => {
  const files = await tinyBox();
  const { dir, run } = await scripted(files);
  expect(run()).toEqual({ status: 0, said: '' });
  const before = readFileSync(join(dir, 'site/index.html'), 'utf8');
  await writeFiles(dir, { [CYCLE]: String(files[CYCLE]).replace('theme:', 'thema:') });
  const { status, said } = run();
  expect(status).toBe(1);
  expect(said).toContain('content/cycles/2026-04/cycle.md:2:1  must fix');
  expect(readFileSync(join(dir, 'site/index.html'), 'utf8')).toBe(before);
});
