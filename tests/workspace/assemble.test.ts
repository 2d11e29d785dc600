import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { PhotoSource } from '../../src/content/sources.ts';
import type { KnownFile } from '../../src/io/know-files.ts';
import { sha256 } from '../../src/text/hash.ts';
import { assembler } from '../../src/workspace/assemble.ts';
import { wordnet } from '../support/dictionary.ts';
import { shortMemory } from '../support/short-memory.ts';
import { sourcesOf, wholeBox } from '../support/whole-box.ts';

const CONTENT = join(import.meta.dirname, '../../content');
const paths = readdirSync(CONTENT, { recursive: true, encoding: 'utf8' }).sort();
const demo = Object.fromEntries(
  paths
    .filter((path) => /(\.md|^searches\.csv)$/.test(path))
    .map((path) => [path, readFileSync(join(CONTENT, path), 'utf8')]),
);
const photos = paths
  .filter((path) => path.endsWith('.jpg'))
  .map(
    (path): PhotoSource => ({
      path,
      hash: sha256(path),
      width: 1280,
      height: 1600,
      tint: '#888888',
      dominant: '#777777',
    }),
  );

const [oldest, newest] = ['cycles/2025-04/cycle.md', 'cycles/2026-03/cycle.md'] as const;

const changed = (path: string, from: RegExp, to: string): Readonly<Record<string, string>> => {
  const text = demo[path] ?? '';
  expect(text).toMatch(from);
  return { ...demo, [path]: text.replace(from, to) };
};

const filesFrom = (texts: Readonly<Record<string, string>>): ReadonlyMap<string, KnownFile> => {
  const files: readonly KnownFile[] = [
    ...Object.entries(texts).map(([path, text]) => ({ path, stamp: '', hash: sha256(text), text })),
    ...photos.map((photo) => ({ path: photo.path, stamp: '', hash: photo.hash, photo })),
  ];
  return new Map([...files].sort((a, b) => (a.path < b.path ? -1 : 1)).map((file) => [file.path, file]));
};

/** What is read late in one is read now in the other. */
const plain = (value: unknown): unknown => value && JSON.parse(JSON.stringify(value));

const sorted = (findings: readonly object[]): readonly string[] =>
  findings.map((finding) => JSON.stringify(finding)).sort();

test.each([
  ['the demo', () => demo],
  ['a cycle at fault', () => changed(newest, /^theme: .*$/m, 'theme: ""')],
  ['a link that leads nowhere', () => changed(newest, /$/, '\n[A tray](../2020-01/cycle.md)\n')],
  [
    'two cycles of one address',
    () => changed(oldest, /^theme: .*$/m, 'theme: A\naddress: 2026-03-first-sowings'),
  ],
  ['box.md at fault', () => changed('box.md', /^lang: .*$/m, 'lang: 7')],
])('%s, a cycle at a time and remembered, is what it is read and linked at once', async (_, texts) => {
  const files = texts();
  const whole = wholeBox(sourcesOf(files, photos));
  const memory = shortMemory();
  const readText = async (path: string): Promise<string> => files[path] ?? '';
  for (const again of [false, true]) {
    const found = await assembler(memory, readText, wordnet).assemble(filesFrom(files));
    expect(sorted(found.diagnostics), `again: ${again}`).toEqual(sorted(whole.diagnostics));
    expect(plain(found.box), `again: ${again}`).toEqual(plain(whole.value));
  }
});
