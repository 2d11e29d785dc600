import { lstatSync, readFileSync } from 'node:fs';
import {
  chmod,
  cp,
  mkdir,
  readdir,
  readFile,
  rename,
  rm,
  stat,
  symlink,
  unlink,
  utimes,
  writeFile,
} from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isPublishFailure } from '../../../src/io/publish/failure.ts';
import { disk, type FileSystem } from '../../../src/io/publish/file-system.ts';
import { intact } from '../../../src/io/publish/intact.ts';
import { lock } from '../../../src/io/publish/lock.ts';
import { type PublishedFile, publish, type Step } from '../../../src/io/publish/publish.ts';
import { settle } from '../../../src/io/publish/settle.ts';
import { standing } from '../../../src/io/publish/state.ts';
import { faultyDisk } from '../../support/faulty-disk.ts';
import { treeOf } from '../../support/tree.ts';
import { contents, temporary, writeFiles } from '../temporary.ts';

const file = (path: string, text = path, key = text, step: Step = 'page'): PublishedFile => ({
  path,
  key,
  step,
  bring: async () => text,
});

const neverBrought = (path: string, key: string): PublishedFile => ({
  path,
  key,
  step: 'page',
  bring: async () => {
    throw new Error(`${path} was asked for`);
  },
});

const failureOf = async (
  published: Promise<unknown>,
): Promise<{ message: string; reason: string; halfWay: boolean }> => {
  const error = await published.catch((error: unknown) => error);
  if (!isPublishFailure(error)) throw new Error(`Expected a failure of publishing, found ${error}`);
  return { message: error.message, reason: error.reason, halfWay: error.halfWay };
};

describe('publishing', () => {
  it('replaces what it published before and leaves nothing else behind', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('index.html', 'one'), file('boxes/a.html')] }]);
    const [published] = await publish([{ dir: site, files: [file('index.html', 'two')] }]);
    expect(await contents(site)).toEqual({ 'index.html': 'two' });
    expect(published).toEqual({
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

describe('what is not ours', () => {
  /** Publishes two files, lets the owner do something, publishes again: nothing may have changed. */
  const refusedAfter = async (change: (site: string, dir: string) => Promise<unknown>) => {
    const dir = await temporary({ 'elsewhere/a.html': 'theirs', 'file.txt': 'theirs' });
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('boxes/a.html'), file('index.html')] }]);
    await change(site, dir);
    const before = treeOf(dir);
    const files = [file('boxes/a.html', 'new'), file('index.html', 'new'), file('new.html')];
    const failure = await failureOf(publish([{ dir: site, files }]));
    expect(failure).toMatchObject({ reason: 'in the way', halfWay: false });
    expect([...treeOf(dir)]).toEqual([...before]);
    return failure.message.replace(dir, '');
  };

  it('is refused by name where a file of ours belongs: a link, a folder, a file, a link on the way', async () => {
    const put = (path: string, to: string) => async (site: string, dir: string) => {
      await rm(join(site, path), { recursive: true });
      await symlink(join(dir, to), join(site, path));
    };
    expect(await refusedAfter(put('index.html', 'file.txt'))).toMatch(
      /^\/site\/index.html is a link that was not made here/,
    );
    expect(await refusedAfter(put('index.html', 'nowhere'))).toContain('index.html is a link');
    expect(await refusedAfter(put('boxes', 'elsewhere'))).toMatch(/^\/site\/boxes is a link/);
    expect(await refusedAfter((site) => writeFile(join(site, 'new.html'), 'theirs'))).toContain(
      'new.html is a file',
    );
    expect(await refusedAfter((site) => mkdir(join(site, 'new.html')))).toContain('new.html is a folder');
    expect(
      await refusedAfter(async (site) => {
        await unlink(join(site, 'index.html'));
        await mkdir(join(site, 'index.html'));
      }),
    ).toContain('index.html is a folder');
  });

  it('is not taken away through a link to a folder that stands where a folder of ours was', async () => {
    const dir = await temporary({ 'elsewhere/a.html': 'theirs' });
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('boxes/a.html'), file('index.html')] }]);
    await rename(join(site, 'boxes'), join(dir, 'aside'));
    await symlink(join(dir, 'elsewhere'), join(site, 'boxes'));
    await publish([{ dir: site, files: [file('index.html', 'new')] }]);
    expect(await contents(join(dir, 'elsewhere'))).toEqual({ 'a.html': 'theirs' });
    expect(lstatSync(join(site, 'boxes')).isSymbolicLink()).toBe(true);
  });

  it('is refused when a folder is neither empty nor ours, hidden files counted, and its mode stays', async () => {
    const dir = await temporary({ 'home/.profile': 'x', 'home/.ssh/key': 'x' });
    const home = join(dir, 'home');
    await chmod(home, 0o700);
    const before = treeOf(dir);
    const { message, reason } = await failureOf(publish([{ dir: home, files: [file('a.html')] }]));
    expect(reason).toBe('in the way');
    expect(message).toContain('it holds .profile, .ssh.');
    expect([...treeOf(dir)]).toEqual([...before]);
    expect((await stat(home)).mode & 0o777).toBe(0o700);
  });

  it('stands untouched when it takes a place that a stopped run had emptied, or had still to fill', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    const next = [file('a.html', 'new'), file('b.html')];
    for (let at = 0; ; at += 2) {
      await rm(site, { recursive: true, force: true });
      await publish([{ dir: site, files: [file('a.html'), file('gone.html')] }]);
      const faulty = faultyDisk(at, 'die');
      await publish([{ dir: site, files: next }], { fs: faulty.fs }).catch(() => undefined);
      if (!faulty.met()) break;
      const free = ['b.html', 'gone.html'].filter((path) => !treeOf(site).has(path));
      for (const path of free) await writeFile(join(site, path), 'theirs');
      await settle(site).catch(() => undefined);
      await publish([{ dir: site, files: next }]).catch(() => undefined);
      for (const path of free) expect(readFileSync(join(site, path), 'utf8'), `call ${at}`).toBe('theirs');
    }
  });
});

describe('a stopped run, for a command that publishes nothing', () => {
  /** A folder in which a run died after it had put one of two files in place. */
  const stopped = async (): Promise<string> => {
    const site = join(await temporary(), 'site');
    await publish([{ dir: site, files: [file('a.html', 'old'), file('b.html', 'old')] }]);
    let renames = 0;
    const fs: FileSystem = {
      ...disk,
      rename: async (from, to) => {
        if (++renames > 2) throw new Error('dies');
        await disk.rename(from, to);
      },
    };
    const files = [file('a.html', 'new'), file('b.html', 'new')];
    expect(await failureOf(publish([{ dir: site, files }], { fs }))).toMatchObject({
      reason: 'bug',
      halfWay: true,
    });
    expect(await contents(site)).toEqual({ 'a.html': 'new', 'b.html': 'old' });
    return site;
  };

  it('is finished as a whole', async () => {
    const site = await stopped();
    expect(intact(site)).toBeUndefined();
    expect([...(await standing(site))].sort()).toEqual([
      ['a.html', 'new'],
      ['b.html', 'old'],
    ]);
    expect(await settle(site)).toBe('finished');
    expect(await contents(site)).toEqual({ 'a.html': 'new', 'b.html': 'new' });
    expect(intact(site)).toBeDefined();
    expect(await settle(site)).toBe('nothing to do');
  });

  it('is left as it is where one of its files must not be shown', async () => {
    const site = await stopped();
    expect(await settle(site, (path) => path === 'b.html')).toBe('left');
    expect(await contents(site)).toEqual({ 'a.html': 'new', 'b.html': 'old' });
    await publish([{ dir: site, files: [file('a.html', 'newer')], first: (path) => path === 'b.html' }]);
    expect(await contents(site)).toEqual({ 'a.html': 'newer' });
  });

  it('is not touched while another run is at work', async () => {
    const site = await stopped();
    const held = await lock(disk, site, { wait: true });
    expect(await settle(site)).toBe('another run is at work');
    await held?.release();
    expect(await settle(site)).toBe('finished');
  });
});

describe('where a folder may be', () => {
  it('behind a link, which stays one', async () => {
    const dir = await temporary({ 'disk/keep': '' });
    await mkdir(join(dir, 'disk/site'));
    await symlink(join(dir, 'disk/site'), join(dir, 'site'));
    await publish([{ dir: join(dir, 'site'), files: [file('a.html')] }]);
    expect(lstatSync(join(dir, 'site')).isSymbolicLink()).toBe(true);
    expect(await contents(join(dir, 'disk'))).toEqual({ keep: '', 'site/a.html': 'a.html' });
  });

  it('not behind a link that leads nowhere, which stays too', async () => {
    const dir = await temporary();
    await symlink('nowhere', join(dir, 'site'));
    const { message } = await failureOf(publish([{ dir: join(dir, 'site'), files: [file('a.html')] }]));
    expect(message).toContain('leads by a link to');
    expect(await readdir(dir)).toEqual(['site']);
  });

  it('on another disk, mounted, or under a folder that may not be written: all that is done is done inside it', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await mkdir(site);
    const told: string[] = [];
    const note =
      (call: (...paths: string[]) => Promise<unknown>) =>
      async (...paths: string[]): Promise<never> => {
        told.push(...paths.slice(0, call === disk.rename ? 2 : 1));
        return (await call(...paths)) as never;
      };
    const fs: FileSystem = {
      ...disk,
      rename: note(disk.rename),
      unlink: note(disk.unlink),
      rmdir: note(disk.rmdir),
      sync: note(disk.sync),
      write: (path, bytes) => note(() => disk.write(path, bytes))(path),
      claim: (path, text) => note(() => disk.claim(path, text))(path),
    };
    await publish([{ dir: site, files: [file('a.html'), file('b/c.html')] }], { fs });
    await publish([{ dir: site, files: [file('a.html', 'new')] }], { fs });
    expect(told.length).toBeGreaterThan(20);
    expect(told.filter((path) => path !== site && !path.startsWith(`${site}/`))).toEqual([]);
    expect(told).not.toContain(undefined);
  });
});

describe('whether a folder is as we left it', () => {
  it('is told by size, time and inode of every file, and by no journal', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    expect(intact(site)).toBeUndefined();
    const files = [file('boxes/a.html'), file('index.html')];
    await publish([{ dir: site, files }]);
    const hash = intact(site);
    expect(hash).toMatch(/^[\w-]{43}$/);
    await publish([{ dir: site, files }]);
    expect(intact(site)).toBe(hash);

    const { atime, mtime } = await stat(join(site, 'index.html'));
    await writeFile(join(site, 'index.html'), 'INDEX.HTML');
    expect(intact(site)).toBeUndefined();
    expect([...(await standing(site)).keys()]).toEqual(['boxes/a.html']);
    await utimes(join(site, 'index.html'), atime, mtime);
    await publish([{ dir: site, files }]);
    expect(intact(site)).toBeDefined();

    await writeFile(join(site, '.lidlore-journal'), '');
    expect(intact(site)).toBeUndefined();
    await unlink(join(site, '.lidlore-journal'));
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
