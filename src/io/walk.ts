/** Lists a folder. */
import { readdir, realpath, stat } from 'node:fs/promises';
import { join } from 'node:path';

const walkInto = async (dir: string, prefix: string, above: readonly string[]): Promise<string[]> => {
  const here = await realpath(dir);
  // A link that leads back to a folder we are in would never end.
  if (above.includes(here)) return [];
  const paths: string[] = [];
  for (const entry of await readdir(dir, { withFileTypes: true })) {
    if (entry.name.startsWith('.')) continue;
    const full = join(dir, entry.name);
    const found = entry.isSymbolicLink() ? await stat(full).catch(() => undefined) : entry;
    if (found?.isDirectory())
      paths.push(...(await walkInto(full, `${prefix}${entry.name}/`, [...above, here])));
    else if (found?.isFile()) paths.push(prefix + entry.name);
  }
  return paths;
};

/** Paths of all files below `dir`, relative to it, with forward slashes, sorted; nothing whose name begins with a dot. */
export const walk = async (dir: string): Promise<readonly string[]> => (await walkInto(dir, '', [])).sort();
