import { readFile, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../src/io/read-content.ts';
import { photo } from './photos.ts';
import { temporary } from './temporary.ts';

describe('reading the content folder', () => {
  it('gives texts, photos and all paths, sorted, and passes over what is hidden', async () => {
    const dir = await temporary({
      'content/box.md': '\ufeffname: x\r\nurl: y\r\n',
      'content/searches.csv': Uint8Array.from([0x63, 0x61, 0x66, 0xe9]),
      'content/cycles/2026-03/photos/B.JPG': await photo(),
      'content/cycles/2026-03/notes.txt': 'x',
      'content/.DS_Store': 'x',
      'content/.git/config': 'x',
    });
    const sources = await readContent(join(dir, 'content'), join(dir, '.lidlore'), undefined, 'content');
    expect(sources.root).toBe('content');
    expect(sources.texts).toEqual([
      { path: 'box.md', text: 'name: x\nurl: y\n' },
      { path: 'searches.csv', text: 'café' },
    ]);
    expect(sources.photos.map(({ path, width }) => [path, width])).toEqual([
      ['cycles/2026-03/photos/B.JPG', 600],
    ]);
    expect(sources.paths).toEqual([
      'box.md',
      'cycles/2026-03/notes.txt',
      'cycles/2026-03/photos/B.JPG',
      'searches.csv',
    ]);
  });

  it('looks at a photo again only when its file has changed', async () => {
    const dir = await temporary({ 'content/a.jpg': await photo(), 'content/b.jpg': await photo(300, 300) });
    const read = async (): Promise<{ seen: number; widths: number[] }> => {
      let seen = 0;
      const { photos } = await readContent(join(dir, 'content'), join(dir, '.lidlore'), () => seen++);
      return { seen, widths: photos.map(({ width }) => width) };
    };
    expect(await read()).toEqual({ seen: 2, widths: [600, 300] });
    expect(await read()).toEqual({ seen: 0, widths: [600, 300] });
    await writeFile(join(dir, 'content/b.jpg'), await photo(500, 200));
    await utimes(join(dir, 'content/b.jpg'), 1, 1);
    expect(await read()).toEqual({ seen: 1, widths: [600, 500] });
    await writeFile(join(dir, '.lidlore/probes.json'), '{ half');
    expect(await read()).toEqual({ seen: 2, widths: [600, 500] });
    expect(await readFile(join(dir, '.lidlore/probes.json'), 'utf8')).toContain('b.jpg');
  });
});
