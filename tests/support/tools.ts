/** Outside programs that some checks need: absent, they are skipped by name; under CI that is a failure. */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, test } from 'vitest';

const succeeds = (check: string): boolean => spawnSync('sh', ['-c', check]).status === 0;

/** `describe` that needs what a shell command finds on the machine (its Debian package in brackets). */
export const describeWhen = (
  check: string,
  what: string,
  debian: string,
  name: string,
  body: () => void,
): void => {
  if (succeeds(check)) describe(name, body);
  else if (process.env.CI) {
    test(`${name} needs ${what} (Debian package ${debian})`, () => {
      throw new Error(`${what} is not on this machine`);
    });
  } else test.skip(`${name}: skipped, ${what} is not on this machine (Debian package ${debian})`, () => {});
};

/** `describe` that needs a program on the machine (its Debian package in brackets). */
export const describeWith = (command: string, debian: string, name: string, body: () => void): void =>
  describeWhen(`command -v ${command}`, command, debian, name, body);

/** Paths of the files below a folder, sorted, dot files left out. */
export const filesBelow = (dir: string): string[] =>
  readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.'))
    .map((entry) => relative(dir, join(entry.parentPath, entry.name)))
    .sort();

export const pagesBelow = (dir: string): { path: string; text: string }[] =>
  filesBelow(dir)
    .filter((path) => path.endsWith('.html'))
    .map((path) => ({ path, text: readFileSync(join(dir, path), 'utf8') }));
