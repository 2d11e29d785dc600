/** Which folders cannot be published to. */
import { relative, resolve, sep } from 'node:path';
import { disk } from './file-system.ts';
import { danglingLink, realFolder } from './real-folder.ts';
import { isOurs, othersIn, readState } from './state.ts';

/** As many of the owner's entries as a refusal names. */
const NAMED = 3;

const holds = (outer: string, inner: string): boolean => {
  const way = relative(outer, inner);
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`) && resolve(outer, way) === inner);
};

const firstOf = (names: readonly string[]): string => {
  const named = names.slice(0, NAMED).join(', ');
  return names.length > NAMED ? `${named} and ${names.length - NAMED} more` : named;
};

/** Why a folder is not ours to publish to, as the rest of a sentence; undefined where it is empty or ours. Hidden files count, because a home folder may hold nothing else. */
export const foreignIn = async (dir: string, fs = disk): Promise<string | undefined> => {
  const others = othersIn(dir, fs);
  if (others.length === 0 || isOurs(await readState(dir, fs))) return undefined;
  return `is not empty and was not made here: it holds ${firstOf(others)}. Name an empty folder, or empty this one.`;
};

/**
 * Why these folders cannot be published to, in words for their owner; undefined when they can. All links are
 * followed first. Rejects when the disk refuses to be read.
 */
export const refusal = async (folders: {
  readonly content: string;
  readonly out: string;
  readonly backroom: string;
}): Promise<string | undefined> => {
  for (const name of ['out', 'backroom'] as const) {
    const nowhere = await danglingLink(folders[name]);
    if (nowhere !== undefined)
      return `--${name} (${folders[name]}) leads by a link to ${nowhere}, which is not there. Make that folder, or name another.`;
  }
  const content = await realFolder(folders.content);
  const out = await realFolder(folders.out);
  const backroom = await realFolder(folders.backroom);
  const targets = [
    ['out', out],
    ['backroom', backroom],
  ] as const;
  for (const [name, dir] of targets) {
    if (dir === content) return `--${name} is the content folder itself (${dir}). Name another folder.`;
    if (holds(content, dir))
      return `--${name} (${dir}) is inside the content folder. Name a folder outside it.`;
    if (holds(dir, content)) return `--${name} (${dir}) holds the content folder. Name another folder.`;
  }
  if (holds(out, backroom))
    return `--backroom (${backroom}) is inside --out and would be public. Name a folder outside it.`;
  if (holds(backroom, out)) return `--out (${out}) is inside --backroom. Name a folder outside it.`;
  for (const [name, dir] of targets) {
    const found = disk.lstat(dir);
    if (found && found.kind !== 'folder') return `--${name} (${dir}) is a file. Name a folder.`;
    const foreign = await foreignIn(dir);
    if (foreign !== undefined) return `--${name} (${dir}) ${foreign}`;
  }
  return undefined;
};
