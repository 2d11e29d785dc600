/** A small site in three states, and what its owner keeps beside it. */
import { createHash } from 'node:crypto';
import { chmod, mkdir, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import type { PublishedFile, Step } from '../../../src/io/publish/publish.ts';
import { type TreeEntry, treeOf } from '../../support/tree.ts';
import { writeFiles } from '../temporary.ts';

/** Path → content. In a page, `[path]` is a reference. */
export type Site = Readonly<Record<string, string>>;

/** Begins what is in a file of a cycle that may be sealed. */
export const SEALED = 'SURPRISE';

export const before: Site = {
  'site.css': 'one',
  'pictures/a.1.jpg': 'picture a, first',
  'pictures/b.jpg': 'picture b',
  'pictures/old.jpg': 'an old picture',
  'pictures/s.jpg': `${SEALED} 04 picture`,
  'boxes/03.html': '[site.css] [pictures/a.1.jpg] [pictures/b.jpg]',
  'boxes/04.html': `${SEALED} 04 [site.css] [pictures/s.jpg]`,
  'boxes/gone.html': '[pictures/old.jpg]',
  'index.html': '[boxes/03.html] [boxes/gone.html] [pictures/a.1.jpg]',
  'feed.xml': '[boxes/03.html] [boxes/gone.html]',
  'deep/er/page.html': 'deep',
  turned: 'a file where a folder will be',
  'folder/page.html': 'a page where a file will be',
};

/** 04 is sealed again, 05 is revealed. */
export const after: Site = {
  'site.css': 'one',
  'pictures/a.2.jpg': 'picture a, second',
  'pictures/b.jpg': 'picture b',
  'pictures/n.jpg': `${SEALED} 05 picture`,
  'boxes/03.html': '[site.css] [pictures/a.2.jpg] [pictures/b.jpg]',
  'boxes/05.html': `${SEALED} 05 [site.css] [pictures/n.jpg]`,
  'index.html': '[boxes/03.html] [boxes/05.html] [pictures/a.2.jpg]',
  'feed.xml': '[boxes/03.html] [boxes/05.html]',
  'turned/page.html': 'a page where a file was',
  folder: 'a file where a folder was',
  'new/er/page.html': 'new',
};

/** 05 is sealed again before it was ever shown. */
export const resealed: Site = {
  ...Object.fromEntries(Object.entries(after).filter(([, text]) => !text.includes(SEALED))),
  'index.html': '[boxes/03.html] [pictures/a.2.jpg]',
  'feed.xml': '[boxes/03.html]',
};

const stepOf = (path: string): Step =>
  path.endsWith('.html') ? 'page' : path.endsWith('.xml') ? 'list' : 'asset';

/** A site's files as publishing wants them; the key is the content's hash, and `salt` makes it another. */
export const filesOf = (site: Site, salt = ''): PublishedFile[] =>
  Object.entries(site).map(([path, text]) => ({
    path,
    key: createHash('sha256')
      .update(text + salt)
      .digest('hex'),
    step: stepOf(path),
    bring: async () => text,
  }));

/** Paths whose files show what is sealed in `after` or in `resealed`. */
export const SURPRISES = ['boxes/04.html', 'boxes/05.html', 'pictures/s.jpg', 'pictures/n.jpg'] as const;

/** Whether a path is of a cycle that is sealed in `after`, or in `resealed`. */
export const isSealed = (path: string): boolean => SURPRISES.some((one) => one === path);

/** What the owner has in the folder, hidden and odd things among them; `elsewhere` is outside it. */
export const addOwnersThings = async (dir: string, elsewhere: string): Promise<void> => {
  await writeFiles(elsewhere, { 'boxes/03.html': 'theirs', 'family.jpg': 'theirs' });
  await writeFiles(dir, {
    '.well-known/proof': 'theirs',
    CNAME: 'a.example',
    'boxes/.htaccess': 'theirs, hidden in a folder of ours',
    'boxes/mine.pdf': 'theirs',
    'odd/read-only.txt': 'theirs',
    'deep/er/theirs.txt': 'theirs, in a folder that we leave',
  });
  await mkdir(join(dir, 'empty'));
  await mkdir(join(dir, 'boxes/empty'));
  await symlink('nowhere', join(dir, 'boxes/dangling'));
  await symlink(elsewhere, join(dir, 'link'));
  await chmod(join(dir, 'boxes/mine.pdf'), 0o604);
  await chmod(join(dir, 'odd/read-only.txt'), 0o444);
  await chmod(join(dir, 'odd'), 0o750);
};

const OURS = /^\.lidlore/;

/** What is wrong with a folder that should hold this site and these things of the owner's, and nothing else; empty when it is right. */
export const wrongs = (
  dir: string,
  site: Site,
  owners: ReadonlyMap<string, TreeEntry>,
): readonly string[] => {
  const tree = treeOf(dir);
  const found: string[] = [];
  const folders = new Set(
    [...Object.keys(site), ...owners.keys()].flatMap((path) => {
      const parts = path.split('/');
      return parts.map((_, i) => parts.slice(0, i).join('/'));
    }),
  );
  for (const [path, text] of Object.entries(site))
    if (tree.get(path)?.bytes !== text) found.push(`${path} is ${tree.get(path)?.bytes ?? 'not there'}`);
  for (const [path, entry] of owners)
    if (JSON.stringify(tree.get(path)) !== JSON.stringify(entry))
      found.push(`the owner's ${path} is not as it was`);
  for (const [path, { kind }] of tree)
    if (
      !(path in site) &&
      !owners.has(path) &&
      path !== '.lidlore' &&
      !(kind === 'folder' && folders.has(path))
    )
      found.push(`${path} is left over`);
  for (const [path, { bytes }] of tree)
    if (bytes?.includes(SEALED) && !(path in site)) found.push(`${path} shows what is sealed`);
  return found;
};

/** The owner's part of a tree: all that is not of this site. */
export const ownersPart = (
  tree: ReadonlyMap<string, TreeEntry>,
  site: Site,
): ReadonlyMap<string, TreeEntry> => {
  const ours = new Set(Object.keys(site));
  const folders = new Set(['pictures', 'boxes', 'deep', 'deep/er', 'folder']);
  return new Map([...tree].filter(([path]) => !ours.has(path) && !folders.has(path) && !OURS.test(path)));
};

/** References in pages in place to what is not there; a reference to something sealed may lead nowhere for a moment. */
export const lostReferences = (dir: string): readonly string[] => {
  const tree = treeOf(dir);
  return [...tree].flatMap(([path, { bytes = '' }]) =>
    OURS.test(path)
      ? []
      : [...bytes.matchAll(/\[([^\]]+)\]/g)].flatMap(([, to = '']) =>
          tree.has(to) || isSealed(to) ? [] : [`${path} → ${to}`],
        ),
  );
};
