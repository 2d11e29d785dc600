import { cp, mkdir, readdir, readFile, stat, symlink, unlink, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { disk, type FileSystem } from '../../../src/io/publish/file-system.ts';
import { intact, stampOf } from '../../../src/io/publish/intact.ts';
import { publish } from '../../../src/io/publish/publish.ts';
import { faultyDisk } from '../../support/faulty-disk.ts';
import { foldingDisk } from '../../support/folding-disk.ts';
import { standing } from '../../support/standing.ts';
import { treeOf } from '../../support/tree.ts';
import { contents, temporary, writeFiles } from '../temporary.ts';
import { failureOf, file, neverBrought } from './one-file.ts';

describe('publishing', () => {
  it('replaces what it published before and leaves nothing else behind', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('index.html', 'one'), file('boxes/a.html')] }]);
    const [published] = await publish([{ dir: site, files: [file('index.html', 'two')] }]);
    expect(await contents(site)).toEqual({ 'index.html': 'two' });
    expect(published).toEqual({
      id: expect.stringMatching(/^[\w-]{43}$/),
      files: 1,
      bytes: 3,
      written: ['index.html'],
      removed: ['boxes/a.html'],
      replaced: [],
      kept: [],
    });
    expect((await readdir(site)).sort()).toEqual(['.lidlore', 'index.html']);
    expect(await readdir(dir)).toEqual(['site']);
  });

  it('does nothing where another run has published since, and goes on where none has', async () => {
    const site = join(await temporary(), 'site');
    const [first] = await publish([{ dir: site, files: [file('a.html', 'one')] }]);
    const after = first?.id ?? '';
    const [second] = await publish([{ dir: site, files: [file('a.html', 'one'), file('film.mp4')], after }]);
    expect(second?.written).toEqual(['film.mp4']);
    await publish([{ dir: site, files: [file('a.html', 'newer')] }]);
    const late = { dir: site, files: [file('a.html', 'one'), file('b.mp4')], after: second?.id ?? '' };
    expect(await publish([late])).toEqual([]);
    expect(await contents(site)).toEqual({ 'a.html': 'newer' });
    expect((await readdir(site)).sort()).toEqual(['.lidlore', 'a.html']);
  });

  it('keeps what it did not make, folders, links and hidden files too, and says so', async () => {
    const dir = await temporary({ 'elsewhere/a.txt': 'theirs' });
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('boxes/a.html')] }]);
    await writeFiles(site, { CNAME: 'a.example', 'boxes/.htaccess': 'theirs', 'downloads/list.pdf': 'pdf' });
    await mkdir(join(site, 'empty'));
    await symlink('nowhere', join(site, 'dangling'));
    await symlink(join(dir, 'elsewhere'), join(site, 'link'));
    const before = treeOf(site);
    const [published] = await publish([{ dir: site, files: [file('index.html')] }]);
    expect(published?.kept).toEqual(['CNAME', 'dangling', 'downloads/list.pdf', 'link']);
    const after = treeOf(site);
    for (const path of [
      'CNAME',
      'boxes',
      'boxes/.htaccess',
      'downloads',
      'downloads/list.pdf',
      'empty',
      'dangling',
      'link',
    ])
      expect(after.get(path), path).toEqual(before.get(path));
    expect(await contents(join(dir, 'elsewhere'))).toEqual({ 'a.txt': 'theirs' });
  });

  it('touches only files that change: not their time, not their inode', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('a.html'), file('b.html', 'one'), file('c.html')] }]);
    const before = treeOf(site);
    const [published] = await publish([
      {
        dir: site,
        files: [
          neverBrought('a.html', 'a.html'),
          file('b.html', 'two'),
          file('c.html', 'c.html', 'other key'),
        ],
      },
    ]);
    const after = treeOf(site);
    expect(published?.written).toEqual(['b.html']);
    expect(after.get('a.html')).toEqual(before.get('a.html'));
    expect(after.get('c.html')).toEqual(before.get('c.html'));
    expect(after.get('b.html')?.identity).not.toBe(before.get('b.html')?.identity);
    expect((await standing(site)).get('c.html')).toBe('other key');
  });

  it('writes nothing at all when nothing is new', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('deep/a.html')] }]);
    const before = treeOf(site);
    await publish([{ dir: site, files: [neverBrought('deep/a.html', 'deep/a.html')] }]);
    expect(treeOf(site)).toEqual(before);
  });

  it('copies a file where that is what is brought', async () => {
    const dir = await temporary({ 'cache/picture': 'pixels' });
    const bring = async () => ({ copyOf: join(dir, 'cache/picture') });
    await publish([{ dir: join(dir, 'site'), files: [{ path: 'a.jpg', key: 'k', step: 'asset', bring }] }]);
    expect(await contents(join(dir, 'site'))).toEqual({ 'a.jpg': 'pixels' });
  });

  it('takes over a folder of the version before, by its bytes', async () => {
    const dir = await temporary({
      'site/.lidlore': JSON.stringify({ files: ['boxes/a.html', 'index.html', 'old/b.html'] }),
      'site/boxes/a.html': 'same',
      'site/index.html': 'old',
      'site/old/b.html': 'old',
      'site/CNAME': 'theirs',
    });
    const site = join(dir, 'site');
    const before = treeOf(site);
    expect(intact(site)).toBeUndefined();
    expect([...(await standing(site))]).toEqual([]);
    const [published] = await publish([
      { dir: site, files: [file('boxes/a.html', 'same'), file('index.html', 'new')] },
    ]);
    expect(published).toMatchObject({
      written: ['index.html'],
      removed: ['old/b.html'],
      replaced: [],
      kept: ['CNAME'],
    });
    expect(treeOf(site).get('boxes/a.html')).toEqual(before.get('boxes/a.html'));
    expect((await readdir(site)).sort()).toEqual(['.lidlore', 'CNAME', 'boxes', 'index.html']);
  });

  it('knows its files again when the folder was copied, and writes none of them', async () => {
    const dir = await temporary();
    await publish([{ dir: join(dir, 'site'), files: [file('a.html')] }]);
    await cp(join(dir, 'site'), join(dir, 'copy'), { recursive: true });
    const [published] = await publish([
      { dir: join(dir, 'copy'), files: [neverBrought('a.html', 'a.html')] },
    ]);
    expect(published).toMatchObject({ written: [], replaced: [] });
    expect(intact(join(dir, 'copy'))).toBeDefined();
  });

  it('replaces a file of its own that somebody changed by hand, and says so', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('a.html'), file('b.html'), file('c.html')] }]);
    for (const name of ['a.html', 'b.html']) await writeFile(join(site, name), 'by hand');
    await utimes(join(site, 'c.html'), 1, 1);
    const [published] = await publish([{ dir: site, files: [file('a.html'), file('c.html')] }]);
    expect(published).toMatchObject({
      written: ['a.html'],
      removed: ['b.html'],
      replaced: ['a.html', 'b.html'],
    });
    expect(await contents(site)).toEqual({ 'a.html': 'a.html', 'c.html': 'c.html' });
  });

  it('puts assets in place first, then new pages, then those that link to them, then lists; takes away what is gone last, and what is sealed before all', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('sealed.html'), file('gone.html'), file('page.html')] }]);
    const done: string[] = [];
    const { fs } = faultyDisk(-1, 'die');
    const watching: typeof fs = {
      ...fs,
      rename: async (from, to) => {
        await fs.rename(from, to);
        done.push(`+${to.slice(site.length + 1)}`);
      },
      unlink: async (path) => {
        await fs.unlink(path);
        done.push(`-${path.slice(site.length + 1)}`);
      },
    };
    const files = [
      file('feed.xml', 'f', 'f', 'list'),
      file('page.html', 'p', 'p', 'page'),
      file('a-new-page.html', 'n', 'n', 'page'),
      file('x.jpg', 'x', 'x', 'asset'),
    ];
    await publish([{ dir: site, files, first: (path) => path === 'sealed.html' }], { fs: watching });
    expect(done).toEqual([
      '+.lidlore-journal',
      '-sealed.html',
      '+x.jpg',
      '+a-new-page.html',
      '+page.html',
      '+feed.xml',
      '-gone.html',
      '+.lidlore',
      '-.lidlore-journal',
      '-.lidlore-lock',
    ]);
  });

  it('leaves every folder as it was when one file cannot be brought', async () => {
    const dir = await temporary();
    const [site, backroom, third] = [join(dir, 'site'), join(dir, 'backroom'), join(dir, 'not/there')];
    await publish([
      { dir: site, files: [file('index.html', 'old')] },
      { dir: backroom, files: [file('proof.html', 'old')] },
    ]);
    const before = treeOf(dir);
    const bring = async () => ({ copyOf: join(dir, 'nowhere') });
    const targets = [
      { dir: site, files: [file('index.html', 'new')] },
      { dir: third, files: [file('index.html', 'new')] },
      { dir: backroom, files: [{ path: 'a.jpg', key: 'k', step: 'asset', bring } as const] },
    ];
    expect(await failureOf(publish(targets))).toMatchObject({ reason: 'disk', halfWay: false });
    expect([...treeOf(dir)]).toEqual([...before]);
  });

  it('leaves every folder as it was when the last of them cannot be decided', async () => {
    const dir = await temporary();
    const [site, backroom] = [join(dir, 'site'), join(dir, 'backroom')];
    const targets = (text: string) => [
      { dir: site, files: [file('index.html', text)] },
      { dir: backroom, files: [file('proof.html', text)] },
    ];
    await publish(targets('old'));
    const before = treeOf(dir);
    for (const call of ['rename', 'sync'] as const) {
      const fs: FileSystem = {
        ...disk,
        [call]: async (...[from, to = from]: readonly string[]) => {
          if (to === (call === 'rename' ? join(backroom, '.lidlore-journal') : backroom))
            throw Object.assign(new Error('made to fail'), { code: 'ENOSPC' });
          if (call === 'rename') await disk.rename(from ?? '', to ?? '');
        },
      };
      expect(await failureOf(publish(targets('new'), { fs })), call).toMatchObject({ halfWay: false });
      expect([...treeOf(dir)], call).toEqual([...before]);
    }
  });

  it('lets a bug of ours through as it is, and leaves the folder as it was', async () => {
    const dir = await temporary();
    const bug = publish([{ dir: join(dir, 'site'), files: [file('a.html'), neverBrought('b.html', 'b')] }]);
    await expect(bug).rejects.toThrow('b.html was asked for');
    expect(await readdir(dir)).toEqual([]);
  });

  it.each([
    '../a',
    '/etc/a',
    'a/../../b',
    'a\\b',
    '',
    'a//b',
    '.lidlore',
    '.lidlore-lock',
    '.lidlore-new-1/a',
  ])('throws for the path %j', async (path) => {
    const dir = await temporary();
    await expect(publish([{ dir: join(dir, 'site'), files: [file(path, 'x')] }])).rejects.toThrow(
      'must stay in its folder',
    );
    expect(await readdir(dir)).toEqual([]);
  });

  it('throws for a path that is given twice, or as a file and a folder', async () => {
    const dir = await temporary();
    await expect(publish([{ dir, files: [file('a'), file('a')] }])).rejects.toThrow('twice');
    await expect(publish([{ dir, files: [file('a'), file('a/b')] }])).rejects.toThrow('as both');
    await expect(
      publish([
        { dir, files: [] },
        { dir, files: [] },
      ]),
    ).rejects.toThrow('published to once');
  });
});

describe('whether a folder is as we left it', () => {
  it('is told by size, time and inode of every file, and by nothing that a stopped run left', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    expect(intact(site)).toBeUndefined();
    const files = [file('boxes/a.html'), file('index.html')];
    await publish([{ dir: site, files }]);
    const stamp = intact(site);
    expect(stamp).toMatch(/^[\w-]{43} \d+$/);
    await publish([{ dir: site, files }]);
    expect(intact(site)).toBe(stamp);
    expect(stampOf(site)).toBe(stamp);

    const { atime, mtime } = await stat(join(site, 'index.html'));
    await writeFile(join(site, 'index.html'), 'INDEX.HTML');
    expect(intact(site)).toBeUndefined();
    expect(stampOf(site)).not.toBe(stamp);
    expect([...(await standing(site)).keys()]).toEqual(['boxes/a.html']);
    await utimes(join(site, 'index.html'), atime, mtime);
    await publish([{ dir: site, files }]);
    expect(intact(site)).toBeDefined();

    for (const left of ['.lidlore-journal', '.lidlore-lock', '.lidlore-lock.a-token', '.lidlore-new-1']) {
      await writeFile(join(site, left), '');
      expect(intact(site), left).toBeUndefined();
      await unlink(join(site, left));
      expect(intact(site), left).toBeDefined();
    }
    await unlink(join(site, 'boxes/a.html'));
    expect(intact(site)).toBeUndefined();
  });

  it('is not believed of a damaged manifest', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('index.html')] }]);
    const text = await readFile(join(site, '.lidlore'), 'utf8');
    for (const damaged of [
      text.slice(0, -5),
      '',
      'null',
      '[]',
      text.replace('"version":2', '"version":3'),
      text.replace('"index.html",', ''),
    ]) {
      await writeFile(join(site, '.lidlore'), damaged);
      expect(intact(site), damaged).toBeUndefined();
      expect([...(await standing(site))], damaged).toEqual([]);
    }
  });
});

describe('a disk that tells no capitals from small letters', () => {
  it('gives a file another case where both names are one', async () => {
    const site = join(await temporary(), 'site');
    const files = (name: string) => [file('index.html', name), file(name, name)];
    for (const name of ['boxes/First.html', 'boxes/first.html', 'boxes/FIRST.html', 'boxes/First.html']) {
      await publish([{ dir: site, files: files(name) }], { fs: foldingDisk });
      expect(await contents(site)).toEqual({ 'index.html': name, [name]: name });
    }
    // A file of somebody else's is refused under every name.
    await writeFiles(site, { 'boxes/Second.html': 'theirs' });
    const { message } = await failureOf(
      publish([{ dir: site, files: [file('boxes/second.html')] }], { fs: foldingDisk }),
    );
    expect(message).toContain('that was not made here');
    expect(await contents(site)).toMatchObject({ 'boxes/Second.html': 'theirs' });
  });
});
