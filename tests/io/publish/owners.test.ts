import { lstatSync, readFileSync } from 'node:fs';
import { chmod, mkdir, readdir, rename, rm, stat, symlink, unlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { disk, type FileSystem } from '../../../src/io/publish/file-system.ts';
import { intact } from '../../../src/io/publish/intact.ts';
import { lock } from '../../../src/io/publish/lock.ts';
import { publish } from '../../../src/io/publish/publish.ts';
import { settle } from '../../../src/io/publish/settle.ts';
import { faultyDisk } from '../../support/faulty-disk.ts';
import { standing } from '../../support/standing.ts';
import { treeOf } from '../../support/tree.ts';
import { contents, temporary } from '../temporary.ts';
import { failureOf, file } from './one-file.ts';

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
