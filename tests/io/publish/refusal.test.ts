import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { publish } from '../../../src/io/publish/publish.ts';
import { refusal } from '../../../src/io/publish/refusal.ts';
import { faultyDisk } from '../../support/faulty-disk.ts';
import { temporary } from '../temporary.ts';

describe('a folder is refused', () => {
  const foldersIn = (dir: string, out: string, backroom = 'backroom') => ({
    content: join(dir, 'box/content'),
    out: join(dir, out),
    backroom: join(dir, backroom),
  });
  const asked = async (out: string, backroom = 'backroom', files: Record<string, string> = {}) =>
    refusal(foldersIn(await temporary({ 'box/content/box.md': '', ...files }), out, backroom));

  it('when it is not empty and was not made here, hidden files counted, with its first entries', async () => {
    expect(await asked('site', 'backroom', { 'site/thesis.doc': '' })).toContain('it holds thesis.doc.');
    expect(await asked('site', 'backroom', { 'backroom/thesis.doc': '' })).toContain('--backroom');
    expect(await asked('site', 'backroom', { 'site/.git/config': '', 'site/.profile': '' })).toContain(
      'it holds .git, .profile.',
    );
    const many = Object.fromEntries(['a', 'b', 'c', 'd', 'e'].map((name) => [`site/${name}`, '']));
    expect(await asked('site', 'backroom', many)).toContain('it holds a, b, c and 2 more.');
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

  it('when a link leads it there, be the last part of its path made or not', async () => {
    const dir = await temporary({ 'box/content/box.md': '', 'other/.keep': '' });
    await symlink(join(dir, 'box/content'), join(dir, 'link'));
    await symlink(join(dir, 'box'), join(dir, 'above'));
    await symlink('nowhere', join(dir, 'dangling'));
    await symlink('dangling', join(dir, 'twice'));
    await mkdir(join(dir, 'free'));
    await symlink(join(dir, 'free'), join(dir, 'good'));
    const to = (out: string) => refusal(foldersIn(dir, out));
    expect(await to('link')).toContain('content folder itself');
    expect(await to('link/site')).toContain('inside the content folder');
    expect(await to('link/not/yet')).toContain('inside the content folder');
    expect(await to('above')).toContain('holds the content folder');
    expect(await to('dangling')).toContain('leads by a link to');
    expect(await to('dangling/site')).toContain('leads by a link to');
    expect(await to('twice')).toContain('leads by a link to');
    expect(await to('good')).toBeUndefined();
    expect(await to('good/site')).toBeUndefined();
  });

  it('when it is a file', async () => {
    const dir = await temporary({ 'box/content/box.md': '' });
    await writeFile(join(dir, 'site'), 'x');
    expect(await refusal(foldersIn(dir, 'site'))).toContain('is a file');
  });

  it('but not when a run that was stopped anywhere left it', async () => {
    const dir = await temporary({ 'box/content/box.md': '' });
    const files = [{ path: 'a.html', key: 'a', step: 'page', bring: async () => 'a' }] as const;
    for (let at = 0; ; at++) {
      const site = join(dir, `site-${at}`);
      const faulty = faultyDisk(at, 'die');
      await publish([{ dir: site, files }], { fs: faulty.fs }).catch(() => undefined);
      if (!faulty.met()) break;
      expect(await refusal(foldersIn(dir, `site-${at}`)), `call ${at}`).toBeUndefined();
    }
  });
});
