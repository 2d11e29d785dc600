import { rename as nodeRename, readdir, rm, symlink, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { listFiles } from '../../src/io/list-files.ts';
import { disk } from '../../src/io/publish/file-system.ts';
import { locatedPhoto, photo } from '../io/photos.ts';
import { contents, temporary, temporaryBox, writeFiles } from '../io/temporary.ts';
import { treeOf } from '../support/tree.ts';
import { lidlore } from './terminal.ts';
import { tinyBox } from './tiny-box.ts';

const BUILD = ['build', '--as-of', '2026-03-27'];

/** Every file of the content as if it had been written long ago: one of this moment is never taken for unchanged. */
const agedBox = async (more: Record<string, string> = {}): Promise<string> => {
  const dir = await temporaryBox({ ...(await tinyBox()), ...more });
  for (const { path } of listFiles(join(dir, 'content'))) await utimes(join(dir, 'content', path), 1, 1);
  return dir;
};

/** What is remembered stays, but for what the last build saw and left. */
const forgetLastBuild = async (dir: string): Promise<void> => {
  for (const name of await readdir(join(dir, '.lidlore')))
    if (name.startsWith('last-build')) await rm(join(dir, '.lidlore', name));
};

describe('lidlore build', () => {
  it('makes a site, and says what it made, what is sealed and where to look', async () => {
    const dir = await temporary(await tinyBox());
    const { status, stdout, stderr } = await lidlore(dir, ...BUILD);
    expect({ status, stderr: stderr.includes('must fix') }, stderr).toEqual({ status: 0, stderr: false });
    expect(stdout).toMatch(/Made \d+ pages? and \d+ pictures \(\d+ new, 0 from the cache\)/);
    expect(stdout).toContain('Sealed until 19 April 2026: 2026-04, Proving.');
    expect(stdout).toContain(`Look at ${join('site', 'index.html')}`);
    expect(Object.keys(await contents(join(dir, 'site')))).toContain('index.html');
  });

  it('leaves no trace of what is sealed, and shows what is revealed on the day itself', async () => {
    const dir = await temporaryBox(await tinyBox());
    await lidlore(dir, ...BUILD);
    const sealed = Object.entries(await contents(join(dir, 'site'))).filter((entry) =>
      /scraper|2026-04/i.test(entry.join()),
    );
    expect(sealed.map(([path]) => path)).toEqual([]);
    await lidlore(dir, 'build', '--as-of', '2026-04-19');
    expect(Object.values(await contents(join(dir, 'site'))).join()).toContain('Zanzibar dough scraper');
    await lidlore(dir, 'build', '--as-of', '2026-04-19T18:59');
    expect(Object.values(await contents(join(dir, 'site'))).join()).not.toContain('Zanzibar');
    // 19:00 in London is 18:00 in universal time, in summer.
    await lidlore(dir, 'build', '--as-of', '2026-04-19T18:00Z');
    expect(Object.values(await contents(join(dir, 'site'))).join()).toContain('Zanzibar dough scraper');
  });

  it('gives the same bytes for the same content and moment, with a cache and without', async () => {
    const dir = await temporary(await tinyBox());
    await lidlore(dir, ...BUILD);
    const first = await contents(join(dir, 'site'));
    await forgetLastBuild(dir);
    const again = await lidlore(dir, ...BUILD);
    expect(again.stdout).toMatch(/\(0 new, \d+ from the cache\)/);
    expect(await contents(join(dir, 'site'))).toEqual(first);
    for (const folder of ['.lidlore', 'site', 'backroom'])
      await rm(join(dir, folder), { recursive: true, force: true });
    await lidlore(dir, ...BUILD);
    expect(await contents(join(dir, 'site'))).toEqual(first);
  });

  it('does nothing where nothing has changed, and says again what there is to say', async () => {
    const dir = await agedBox({ 'content/cycles/2026-03/stray.md': 'a file that is no record' });
    const first = await lidlore(dir, ...BUILD);
    const before = treeOf(dir);
    const again = await lidlore(dir, ...BUILD);
    expect(treeOf(dir)).toEqual(before);
    const [made = '', ...rest] = first.stdout.split('\n');
    const [unchanged = '', ...restAgain] = again.stdout.split('\n');
    const [, counts] = /^Made (\d+ pages?) /.exec(made) ?? [];
    expect(unchanged).toMatch(
      new RegExp(`^Nothing has changed: ${counts} and \\d+ pictures stand as they were`),
    );
    const lasting = (lines: readonly string[]) =>
      lines.filter((line) => !/^(?:Time|Proof of|Read the proofs|Wrote)/.test(line));
    expect(lasting(restAgain)).toEqual(lasting(rest));
    expect(again.status).toBe(0);
    expect(again.stderr).toContain('(file-unread)');
    // How far the first has come is said only where it takes its time.
    expect(again.stderr).toBe(first.stderr.replace(/^(?:Looking at photos|Making pictures).*\n/gm, ''));
  });

  it.each([
    ['a text', async (dir: string) => writeFile(join(dir, 'content/notes.txt'), 'new')],
    ['a template of the owner’s', (dir: string) => writeFiles(dir, { 'templates/site.css': 'body{}' })],
    ['a page that somebody took away', (dir: string) => rm(join(dir, 'site/index.html'))],
    ['a page that somebody changed', (dir: string) => writeFile(join(dir, 'site/index.html'), 'x')],
    ['a paper that somebody took away', (dir: string) => rm(join(dir, 'backroom/index.html'))],
    ['the moment', async () => '2026-03-28'],
  ])('has something to do for %s', async (_, change) => {
    const dir = await agedBox();
    const { stdout } = await lidlore(dir, ...BUILD);
    expect(stdout).toMatch(/^Made/);
    const asOf = (await change(dir)) ?? '2026-03-27';
    expect((await lidlore(dir, 'build', '--as-of', asOf)).stdout).toMatch(/^Made/);
  });

  it.each([
    ['a photo that is cut short', async () => (await photo()).subarray(0, 5000), /cut short/],
    ['a text that is called .jpg', async () => new TextEncoder().encode('not a picture'), /not a picture/],
  ])('with %s writes nothing, and leaves the old site byte for byte', async (_, make, words) => {
    const dir = await temporaryBox(await tinyBox());
    await lidlore(dir, ...BUILD);
    const before = await contents(join(dir, 'site'));
    await writeFiles(dir, { 'content/cycles/2026-03/photos/basket.jpg': await make() });
    const { status, stdout, stderr } = await lidlore(dir, ...BUILD);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toMatch(words);
    expect(stderr).toContain('basket.jpg');
    expect(stderr).toMatch(/content\/cycles\/2026-03\/\S+:\d+:\d+ {2}must fix: /);
    expect(stderr).toMatch(/1 must fix.*\. Nothing was written; site.? is as it was\./);
    expect(await contents(join(dir, 'site'))).toEqual(before);
  });

  it('publishes no place from a photo', async () => {
    const dir = await temporaryBox(await tinyBox());
    await writeFiles(dir, { 'content/cycles/2026-03/photos/basket.jpg': await locatedPhoto() });
    expect((await lidlore(dir, ...BUILD)).status).toBe(0);
    const traces = Object.entries(await contents(join(dir, 'site'))).filter(([, bytes]) =>
      /Lens & Daughters|Exif\0/.test(bytes),
    );
    expect(traces.map(([path]) => path)).toEqual([]);
  });

  it('refuses a folder that is not its own, and leaves it alone', async () => {
    const dir = await temporary({ ...(await tinyBox()), 'site/thesis.doc': 'ten years of work' });
    const { status, stderr } = await lidlore(dir, ...BUILD);
    expect(status).toBe(2);
    expect(stderr).toContain('thesis.doc');
    expect(await contents(join(dir, 'site'))).toEqual({ 'thesis.doc': 'ten years of work' });
    expect((await readdir(dir)).sort()).toEqual(['content', 'site']);
  });

  it('prints one JSON object when asked', async () => {
    const dir = await temporaryBox(await tinyBox());
    const good = await lidlore(dir, ...BUILD, '--json');
    expect(JSON.parse(good.stdout)).toMatchObject({
      ok: true,
      site: { pages: expect.any(Number) },
      stages: expect.any(Array),
    });
    await writeFiles(dir, { 'content/box.md': 'no front matter' });
    const bad = await lidlore(dir, ...BUILD, '--json');
    expect(bad.status).toBe(1);
    expect(JSON.parse(bad.stdout)).toMatchObject({ ok: false, diagnostics: expect.any(Array) });
  });

  it("takes the owner's own templates in place of ours", async () => {
    const dir = await temporaryBox({ ...(await tinyBox()), 'templates/site.css': 'body{color:#123}' });
    await lidlore(dir, ...BUILD);
    expect(Object.values(await contents(join(dir, 'site')))).toContain('body{color:#123}');
  });

  it('says so when the disk refuses', async () => {
    const dir = await temporaryBox(await tinyBox());
    // A file where a folder must be: no user, root included, can make that folder.
    await writeFile(join(dir, 'blocked'), '');
    const { status, stderr } = await lidlore(dir, ...BUILD, '--out', join('blocked', 'site'));
    expect(status).toBe(74);
    expect(stderr).toContain('The disk refused');
  });

  it('says whether anything was changed when the disk refuses in the midst, and finishes the next time', async () => {
    const dir = await temporaryBox(await tinyBox());
    const rename = disk.rename;
    const refuseOnce = (part: string) =>
      vi.spyOn(disk, 'rename').mockImplementation(async (from, to) => {
        if (to.endsWith(part)) throw Object.assign(new Error('EIO: made to fail'), { code: 'EIO' });
        await rename(from, to);
      });
    const refused = refuseOnce('.lidlore-journal');
    const nothing = await lidlore(dir, ...BUILD);
    expect(nothing.status).toBe(74);
    expect(nothing.stderr).toContain('The disk refused: EIO');
    expect(nothing.stderr).toContain('Nothing was published; the old site is as it was.');
    expect((await readdir(dir)).sort()).toEqual(['.lidlore', 'content']);
    refused.mockRestore();

    const halfWay = refuseOnce('index.html');
    const half = await lidlore(dir, ...BUILD);
    expect(half.status).toBe(74);
    expect(half.stderr).toContain('The site is published in part; the next build finishes it.');
    halfWay.mockRestore();

    expect((await lidlore(dir, ...BUILD)).status).toBe(0);
    expect(Object.keys(await contents(join(dir, 'site')))).toContain('index.html');
  });

  it('finishes what a stopped build had decided, also when something must be fixed', async () => {
    const dir = await temporaryBox(await tinyBox());
    const rename = vi
      .spyOn(disk, 'rename')
      .mockRejectedValue(Object.assign(new Error('EIO'), { code: 'EIO' }));
    rename.mockImplementationOnce(nodeRename).mockImplementationOnce(nodeRename);
    await lidlore(dir, ...BUILD);
    rename.mockRestore();
    expect(Object.keys(await contents(join(dir, 'site')))).not.toContain('index.html');
    await writeFiles(dir, { 'content/box.md': 'no front matter' });
    expect((await lidlore(dir, ...BUILD)).status).toBe(1);
    expect(Object.keys(await contents(join(dir, 'site')))).toContain('index.html');
  });

  it('names what is in the way, which stays', async () => {
    const dir = await temporaryBox(await tinyBox());
    await lidlore(dir, ...BUILD);
    await writeFiles(dir, { 'theirs/a.txt': 'theirs' });
    await rm(join(dir, 'site/index.html'));
    await symlink(join(dir, 'theirs/a.txt'), join(dir, 'site/index.html'));
    const { status, stderr } = await lidlore(dir, ...BUILD);
    expect(status).toBe(2);
    expect(stderr).toMatch(/index\.html is a link that was not made here.*\nNothing was published/);
    expect(await contents(join(dir, 'theirs'))).toEqual({ 'a.txt': 'theirs' });
  });
});
