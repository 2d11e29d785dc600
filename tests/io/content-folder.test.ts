import { readdir, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { contentFolder } from '../../src/io/content-folder.ts';
import { openMemory } from '../../src/io/memory/open-memory.ts';
import { shortMemory } from '../support/short-memory.ts';
import { photo } from './photos.ts';
import { temporary } from './temporary.ts';

describe('looking at the content folder', () => {
  it('gives texts, photos and all paths, sorted, and passes over what is hidden', async () => {
    const dir = await temporary({
      'content/box.md': '\ufeffname: x\r\nurl: y\r\n',
      'content/searches.csv': Uint8Array.from([0x63, 0x61, 0x66, 0xe9]),
      'content/cycles/2026-03/photos/B.JPG': await photo(),
      'content/cycles/2026-03/notes.txt': 'x',
      'content/.DS_Store': 'x',
      'content/.git/config': 'x',
    });
    const folder = contentFolder(join(dir, 'content'), shortMemory());
    const files = [...(await folder.look()).values()];
    expect(files.flatMap(({ path, text }) => (text === undefined ? [] : [{ path, text }]))).toEqual([
      { path: 'box.md', text: 'name: x\nurl: y\n' },
      { path: 'searches.csv', text: 'café' },
    ]);
    expect(await folder.readText('box.md')).toBe('name: x\nurl: y\n');
    expect(files.flatMap(({ path, photo: seen }) => (seen ? [[path, seen.path, seen.width]] : []))).toEqual([
      ['cycles/2026-03/photos/B.JPG', 'cycles/2026-03/photos/B.JPG', 600],
    ]);
    expect(files.map(({ path }) => path)).toEqual([
      'box.md',
      'cycles/2026-03/notes.txt',
      'cycles/2026-03/photos/B.JPG',
      'searches.csv',
    ]);
  });

  it('looks at a photo again only when its file has changed', async () => {
    const dir = await temporary({ 'content/a.jpg': await photo(), 'content/b.jpg': await photo(300, 300) });
    const [a, b, remembered] = [
      join(dir, 'content/a.jpg'),
      join(dir, 'content/b.jpg'),
      join(dir, '.lidlore'),
    ];
    // A file that was changed only now is not taken for known.
    for (const path of [a, b]) await utimes(path, 1, 1);
    const read = async (): Promise<{ seen: number; widths: number[] }> => {
      let seen = 0;
      const memory = openMemory(remembered);
      const folder = contentFolder(join(dir, 'content'), memory, () => seen++);
      const widths = [...(await folder.look()).values()].map((file) => file.photo?.width ?? 0);
      folder.remember();
      memory.close();
      return { seen, widths };
    };
    expect(await read()).toEqual({ seen: 2, widths: [600, 300] });
    expect(await read()).toEqual({ seen: 0, widths: [600, 300] });
    await writeFile(b, await photo(500, 200));
    await utimes(b, 2, 2);
    expect(await read()).toEqual({ seen: 1, widths: [600, 500] });
    for (const name of await readdir(remembered)) await writeFile(join(remembered, name), '{ half');
    expect(await read()).toEqual({ seen: 2, widths: [600, 500] });
    expect(await read()).toEqual({ seen: 0, widths: [600, 500] });
  });

  it('looks again at a file that was changed a moment before it was read', async () => {
    const dir = await temporary({ 'content/box.md': 'first' });
    const memory = shortMemory();
    const read = async (): Promise<string | undefined> => {
      const folder = contentFolder(join(dir, 'content'), memory);
      const text = (await folder.look()).get('box.md')?.text;
      folder.remember();
      return text;
    };
    const soon = (Date.now() + 10_000) / 1000;
    await utimes(join(dir, 'content/box.md'), soon, soon);
    expect([await read(), await read()]).toEqual(['first', 'first']);
    await utimes(join(dir, 'content/box.md'), 1, 1);
    expect([await read(), await read()]).toEqual(['first', undefined]);
  });

  it('lists again only what is named, and everything where a folder came or went', async () => {
    const dir = await temporary({
      'content/box.md': 'first',
      'content/cycles/a.md': '',
      'content/z.md': 'first',
    });
    const content = join(dir, 'content');
    const folder = contentFolder(content, shortMemory());
    await folder.look();
    for (const name of ['box.md', 'z.md']) await writeFile(join(content, name), 'second one');
    const hashes = async (paths: readonly string[]) => {
      const files = await folder.look(paths);
      return ['box.md', 'z.md'].map((path) => files.get(path)?.text);
    };
    expect(await hashes(['z.md'])).toEqual(['first', 'second one']);
    expect(await hashes(['cycles'])).toEqual(['second one', 'second one']);
  });
});
