/** What stands where a file of ours is or should be, found without following any link. */
import { dirname, join } from 'node:path';
import type { FileSystem, Found } from './file-system.ts';

/** `barred`: the folder for it cannot be, because something else stands at `at`. */
export type Standing = { readonly kind: 'absent' } | { readonly kind: 'barred'; readonly at: string } | Found;

export interface Ground {
  readonly at: (path: string) => Standing;
  /** A folder's own state: the published folder itself is `''`. */
  readonly folder: (path: string) => 'there' | 'absent' | { readonly barredAt: string };
}

const FREE = { kind: 'absent' } as const;

/** Looks at each folder once; ask for a new one when folders were made or taken away. */
export const groundOf = (dir: string, fs: FileSystem): Ground => {
  const seen = new Map<string, ReturnType<Ground['folder']>>([['', 'there']]);
  const parentOf = (path: string): string => (path.includes('/') ? dirname(path) : '');
  const look = (path: string): ReturnType<Ground['folder']> => {
    const above = folder(parentOf(path));
    if (above !== 'there') return above;
    const found = fs.lstat(join(dir, path));
    if (!found) return 'absent';
    return found.kind === 'folder' ? 'there' : { barredAt: path };
  };
  const folder = (path: string): ReturnType<Ground['folder']> => {
    const known = seen.get(path);
    if (known !== undefined) return known;
    const state = look(path);
    seen.set(path, state);
    return state;
  };
  const at = (path: string): Standing => {
    const above = folder(parentOf(path));
    if (above === 'absent') return FREE;
    if (above !== 'there') return { kind: 'barred', at: above.barredAt };
    return fs.lstat(join(dir, path)) ?? FREE;
  };
  return { at, folder };
};
