import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { publish, refusal } from '../../src/io/publish.ts';
import { contents, temporary, writeFiles } from './temporary.ts';

const file = (path: string, content = path) => ({ path, content });

describe('publishing', () => {
  it('replaces what it published before and leaves nothing else behind', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('index.html', 'one'), file('boxes/a.html')] }]);
    await publish([{ dir: site, files: [file('index.html', 'two')] }]);
    expect(await contents(site)).toEqual({ 'index.html': 'two' });
    expect(await readdir(dir)).toEqual(['site']);
  });

  it('keeps dot files and files it did not make, and says so', async () => {
    const dir = await temporary({ 'site/.nojekyll': '', 'site/.git/config': 'x' });
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('index.html')] }]);
    await writeFiles(site, { CNAME: 'a.example', 'downloads/list.pdf': 'pdf' });
    const [published] = await publish([
      { dir: site, files: [file('index.html', 'new'), file('boxes/a.html')] },
    ]);
    expect(published?.kept).toEqual(['CNAME', 'downloads/list.pdf']);
    expect(await contents(site)).toEqual({
      CNAME: 'a.example',
      'boxes/a.html': 'boxes/a.html',
      'downloads/list.pdf': 'pdf',
      'index.html': 'new',
    });
    expect((await readdir(site)).sort()).toContain('.nojekyll');
    expect(await readFile(join(site, '.git/config'), 'utf8')).toBe('x');
  });

  it('leaves every folder as it was when one file cannot be written', async () => {
    const dir = await temporary();
    const [site, backroom] = [join(dir, 'site'), join(dir, 'backroom')];
    await publish([
      { dir: site, files: [file('index.html', 'old')] },
      { dir: backroom, files: [file('proof.html', 'old')] },
    ]);
    const broken = { path: 'a.jpg', content: { copyOf: join(dir, 'nowhere') } };
    await expect(
      publish([
        { dir: site, files: [file('index.html', 'new')] },
        { dir: backroom, files: [broken] },
      ]),
    ).rejects.toThrow();
    expect(await contents(site)).toEqual({ 'index.html': 'old' });
    expect(await contents(backroom)).toEqual({ 'proof.html': 'old' });
    expect((await readdir(dir)).sort()).toEqual(['backroom', 'site']);
  });

  it('puts the first folder back when the second cannot be swapped in', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('index.html', 'old')] }]);
    await writeFiles(site, { CNAME: 'a.example', '.git/config': 'x' });
    const before = await contents(site);
    // Staged inside the first folder, so that its place is gone once that is swapped.
    const second = { dir: join(site, 'sub'), files: [file('a')] };
    await expect(publish([{ dir: site, files: [file('index.html', 'new')] }, second])).rejects.toThrow();
    expect(await contents(site)).toEqual(before);
    expect((await readdir(site)).sort()).toEqual(['.git', '.lidlore', 'CNAME', 'index.html']);
    expect(await readdir(dir)).toEqual(['site']);
  });

  it.each(['../a', '/etc/a', 'a/../../b', 'a\\b', '', 'a//b', '.lidlore'])(
    'throws for the path %j',
    async (path) => {
      const dir = await temporary();
      await expect(publish([{ dir: join(dir, 'site'), files: [file(path, 'x')] }])).rejects.toThrow(
        'must stay in its folder',
      );
      expect(await readdir(dir)).toEqual([]);
    },
  );

  it('takes up where a stopped run left off', async () => {
    const dir = await temporary();
    const site = join(dir, 'site');
    await publish([{ dir: site, files: [file('index.html', 'old')] }]);
    const { rename } = await import('node:fs/promises');
    await writeFiles(site, { '.git/config': 'x' });
    await rename(site, join(dir, '.site.lidlore-old'));
    await mkdir(join(dir, '.site.lidlore-new'));
    await publish([{ dir: site, files: [file('index.html', 'new')] }]);
    expect(await contents(site)).toEqual({ 'index.html': 'new' });
    expect(await readFile(join(site, '.git/config'), 'utf8')).toBe('x');
    expect(await readdir(dir)).toEqual(['site']);
  });
});

describe('a folder is refused', () => {
  const asked = async (out: string, backroom = 'backroom', files: Record<string, string> = {}) => {
    const dir = await temporary({ 'box/content/box.md': '', ...files });
    return refusal({
      content: join(dir, 'box/content'),
      out: join(dir, out),
      backroom: join(dir, backroom),
    });
  };

  it('when it holds files that were not made here', async () => {
    expect(await asked('site', 'backroom', { 'site/thesis.doc': '' })).toContain('thesis.doc');
    expect(await asked('site', 'backroom', { 'backroom/thesis.doc': '' })).toContain('--backroom');
    expect(await asked('site', 'backroom', { 'site/.git/config': '' })).toBeUndefined();
  });

  it('when it is, holds or is inside the content folder, or is public and private at once', async () => {
    expect(await asked('box/content')).toContain('content folder itself');
    expect(await asked('box/content/site')).toContain('inside the content folder');
    expect(await asked('box')).toContain('holds the content folder');
    expect(await asked('site', 'site/papers')).toContain('would be public');
    expect(await asked('site', 'site')).toContain('would be public');
    expect(await asked('papers/site', 'papers')).toContain('inside --backroom');
    expect(await asked('content')).toBeUndefined();
  });

  it('when it is a file', async () => {
    const dir = await temporary({ 'content/box.md': '' });
    await writeFile(join(dir, 'site'), 'x');
    const words = await refusal({
      content: join(dir, 'content'),
      out: join(dir, 'site'),
      backroom: join(dir, 'b'),
    });
    expect(words).toContain('is a file');
  });
});
