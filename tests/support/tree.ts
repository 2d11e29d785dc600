/** Everything in a folder, hidden or not, links not followed. */
import { lstatSync, readdirSync, readFileSync, readlinkSync } from 'node:fs';
import { join } from 'node:path';

/** `bytes` of a file, `target` of a link; `identity` is what changes when somebody replaces or changes an entry. */
export interface TreeEntry {
  readonly kind: 'file' | 'folder' | 'link';
  readonly bytes?: string;
  readonly target?: string;
  readonly identity: string;
}

/** Entries by path, sorted; a folder that is not there has none. */
export const treeOf = (dir: string): ReadonlyMap<string, TreeEntry> => {
  const entries = new Map<string, TreeEntry>();
  const below = (prefix: string): void => {
    for (const name of readdirSync(join(dir, prefix)).sort()) {
      const path = prefix + name;
      const found = lstatSync(join(dir, path));
      const { mode, ino, mtimeMs } = found;
      if (found.isDirectory()) {
        // What is put into a folder changes its time, not the folder.
        entries.set(path, { kind: 'folder', identity: `${mode} ${ino}` });
        below(`${path}/`);
      } else if (found.isSymbolicLink())
        entries.set(path, {
          kind: 'link',
          target: readlinkSync(join(dir, path)),
          identity: `${ino} ${mtimeMs}`,
        });
      else
        entries.set(path, {
          kind: 'file',
          bytes: readFileSync(join(dir, path), 'latin1'),
          identity: `${mode} ${ino} ${mtimeMs}`,
        });
    }
  };
  if (lstatSync(dir, { throwIfNoEntry: false })) below('');
  return entries;
};

/** Texts of the files by path, those apart whose path has a part that begins with a dot. */
export const textsOf = (tree: ReadonlyMap<string, TreeEntry>): Record<string, string> =>
  Object.fromEntries(
    [...tree].flatMap(([path, { bytes }]) =>
      bytes === undefined || /(^|\/)\./.test(path) ? [] : [[path, bytes]],
    ),
  );
