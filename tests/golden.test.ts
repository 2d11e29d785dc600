/** Whole folders in, the whole site out: a case is a folder, its expectation lies beside it and reads in a diff. */
import { cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { lidlore } from './cli/terminal.ts';

const cases = join(import.meta.dirname, 'golden');
const made = await mkdtemp(join(tmpdir(), 'lidlore-golden-'));
afterAll(() => rm(made, { recursive: true, force: true }));

/** Files whose text is the site's own words; the rest (fonts, the style sheet) are listed by name alone. */
const isRead = (path: string): boolean =>
  /\.(html|xml|svg|txt|json)$/.test(path) && !path.startsWith('assets/');

const filesBelow = async (dir: string): Promise<string[]> =>
  (await readdir(dir, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.'))
    .map((entry) => relative(dir, join(entry.parentPath, entry.name)))
    .sort();

const build = async (name: string, asOf: string) => {
  const site = join(made, name, 'site');
  const content = join(made, name, 'content');
  // A copy, since a build keeps its cache beside the content folder.
  await cp(join(cases, name, 'content'), content, { recursive: true });
  const result = await lidlore(join(made, name), 'build', '--as-of', asOf);
  return { ...result, site };
};

/** A hashed asset's name changes with every touch of the style sheet; the golden pages should not. */
const withoutAssetHashes = (text: string): string =>
  text.replace(/(assets\/[\w/-]+)\.[0-9a-f]{10}\./g, '$1.HASH.');

describe('a box without pictures, in several scripts', async () => {
  const { status, site, stderr } = await build('no-pictures', '2026-03-27');
  const files = status === 0 ? await filesBelow(site) : [];

  test('builds', () => {
    expect({ status, err: status === 0 ? '' : stderr }).toEqual({ status: 0, err: '' });
  });

  test('gives just these files', async () => {
    await expect(`${files.map(withoutAssetHashes).join('\n')}\n`).toMatchFileSnapshot(
      join(cases, 'no-pictures/expected/files.txt'),
    );
  });

  test.each(files.filter(isRead))('gives %s', async (path) => {
    const text = withoutAssetHashes(await readFile(join(site, path), 'utf8'));
    await expect(text).toMatchFileSnapshot(join(cases, 'no-pictures/expected/site', path));
  });
});

describe('a folder full of mistakes', async () => {
  const { status, site, stderr } = await build('mistakes', '2026-03-27');

  test('is refused with every finding at once, and nothing is written', async () => {
    expect(status).toBe(1);
    await expect(readdir(site)).rejects.toThrow();
    await expect(stderr).toMatchFileSnapshot(join(cases, 'mistakes/expected/findings.txt'));
  });
});
