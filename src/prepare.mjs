/** Sees to it that what package-lock.json names is installed. Plain Node: runs before anything is. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

const lockOf = (file) => {
  try {
    return JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8')).packages;
  } catch {
    return undefined;
  }
};

const wanted = lockOf('../package-lock.json') ?? {};
// npm writes what it installed here.
const installed = lockOf('../node_modules/.package-lock.json');

const isThere = ([path, { version, optional }]) =>
  path === '' || (installed[path] ? installed[path].version === version : optional === true);

if (!installed || !Object.entries(wanted).every(isThere)) {
  console.error('Installing what package-lock.json names.');
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: new URL('..', import.meta.url),
    stdio: ['ignore', process.stderr.fd, process.stderr.fd],
    shell: process.platform === 'win32',
  });
  process.exitCode = status ?? 1;
}
