/** Finished files → folders, all at once or not at all. */
import { copyFile, mkdir, readdir, readFile, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { walk } from './walk.ts';

/** A file to publish: its text or bytes, or the file to copy. */
export interface PublishedFile {
  readonly path: string;
  readonly content: string | Uint8Array | { readonly copyOf: string };
}

export interface Folder {
  readonly dir: string;
  readonly files: readonly PublishedFile[];
}

export interface Published {
  readonly files: number;
  readonly bytes: number;
  /** Paths of files that we did not make and that were kept where they were. */
  readonly kept: readonly string[];
}

/** Says that a folder is ours to replace, and which of its files we made. */
const MARKER = '.lidlore';

const listIn = (dir: string): Promise<string[]> => readdir(dir).catch(() => []);

const exists = async (path: string): Promise<boolean> =>
  (await stat(path).catch(() => undefined)) !== undefined;

/** The folder itself, where `dir` is a link to it. */
const actual = async (dir: string): Promise<string> => realpath(dir).catch(() => resolve(dir));

/** Paths we published there before; undefined when the folder is not ours. */
const publishedBefore = async (dir: string): Promise<readonly string[] | undefined> => {
  try {
    const { files } = JSON.parse(await readFile(join(dir, MARKER), 'utf8')) as { files: readonly string[] };
    return Array.isArray(files) ? files : undefined;
  } catch {
    return undefined;
  }
};

const holds = (outer: string, inner: string): boolean => {
  const way = relative(outer, inner);
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`) && resolve(outer, way) === inner);
};

/** Why these folders cannot be published to, in words for their owner; undefined when they can. */
export const refusal = async (folders: {
  readonly content: string;
  readonly out: string;
  readonly backroom: string;
}): Promise<string | undefined> => {
  const content = await actual(folders.content);
  const out = await actual(folders.out);
  const backroom = await actual(folders.backroom);
  for (const [name, dir] of [
    ['out', out],
    ['backroom', backroom],
  ] as const) {
    if (dir === content) return `--${name} is the content folder itself (${dir}). Name another folder.`;
    if (holds(content, dir))
      return `--${name} (${dir}) is inside the content folder. Name a folder outside it.`;
    if (holds(dir, content))
      return `--${name} (${dir}) holds the content folder and would replace it. Name another folder.`;
  }
  if (holds(out, backroom))
    return `--backroom (${backroom}) is inside --out and would be public. Name a folder outside it.`;
  if (holds(backroom, out)) return `--out (${out}) is inside --backroom. Name a folder outside it.`;
  for (const [name, dir] of [
    ['out', out],
    ['backroom', backroom],
  ] as const) {
    const found = await stat(dir).catch(() => undefined);
    if (found && !found.isDirectory()) return `--${name} (${dir}) is a file. Name a folder.`;
    const foreign = (await listIn(dir)).filter((entry) => !entry.startsWith('.'));
    if (foreign.length > 0 && !(await publishedBefore(dir)))
      return `--${name} (${dir}) holds files that were not made here, ${foreign[0]} among them, and would be replaced. Name an empty folder, or empty this one.`;
  }
  return undefined;
};

const besides = (dir: string, what: 'new' | 'old'): string =>
  join(dirname(dir), `.${basename(dir)}.lidlore-${what}`);

/** Throws for a path that would leave its folder: no channel may make one. */
const checkPath = (path: string): void => {
  const parts = path.split('/');
  const escapes = parts.some((part) => part === '' || part === '.' || part === '..' || /[\\:\0]/.test(part));
  if (escapes || path === MARKER)
    throw new Error(`A published path must stay in its folder, found ${JSON.stringify(path)}`);
};

/** Moves what is at the top of `from` and not in `to` there: dot files, and folders and files we did not make. */
const keep = async (from: string, to: string, paths: readonly string[]): Promise<string[]> => {
  const moved: string[] = [];
  for (const path of paths) {
    if (await exists(join(to, path))) continue;
    await mkdir(dirname(join(to, path)), { recursive: true });
    await rename(join(from, path), join(to, path));
    moved.push(path);
  }
  return moved;
};

interface Staged {
  readonly dir: string;
  readonly fresh: string;
  readonly old: string;
  readonly had: boolean;
  readonly bytes: number;
  readonly files: number;
  readonly dots: readonly string[];
  readonly foreign: readonly string[];
}

/** Puts right what a run that was stopped between two renames left behind. */
const recover = async (dir: string): Promise<void> => {
  const old = besides(dir, 'old');
  if (await exists(old)) {
    if (!(await exists(dir))) await rename(old, dir);
    else {
      const before = new Set(await publishedBefore(old));
      const dots = (await listIn(old)).filter((entry) => entry.startsWith('.') && entry !== MARKER);
      await keep(old, dir, [...dots, ...(await walk(old)).filter((path) => !before.has(path))]);
      await rm(old, { recursive: true, force: true });
    }
  }
  await rm(besides(dir, 'new'), { recursive: true, force: true });
};

const stage = async (folder: Folder): Promise<Staged> => {
  const dir = await actual(folder.dir);
  await recover(dir);
  const fresh = besides(dir, 'new');
  await mkdir(fresh, { recursive: true });
  const made = new Set<string>();
  let bytes = 0;
  for (const { path, content } of folder.files) {
    checkPath(path);
    const target = join(fresh, ...path.split('/'));
    const parent = dirname(target);
    if (!made.has(parent)) await mkdir(parent, { recursive: true });
    made.add(parent);
    if (typeof content === 'object' && 'copyOf' in content) await copyFile(content.copyOf, target);
    else await writeFile(target, content);
    bytes += (await stat(target)).size;
  }
  const files = folder.files.map((file) => file.path).sort();
  await writeFile(join(fresh, MARKER), `${JSON.stringify({ files }, undefined, 1)}\n`);

  const had = await exists(dir);
  const before = new Set(await publishedBefore(dir));
  const dots = (await listIn(dir)).filter((entry) => entry.startsWith('.') && entry !== MARKER);
  const foreign = had ? (await walk(dir)).filter((path) => !before.has(path)) : [];
  return { dir, fresh, old: besides(dir, 'old'), had, bytes, files: files.length, dots, foreign };
};

/** Puts the staged folder in the old one's place; gives what was kept, and the way back. */
const swap = async (staged: Staged): Promise<{ kept: readonly string[]; undo: () => Promise<void> }> => {
  const { dir, fresh, old, had } = staged;
  let moved: string[] = [];
  let inPlace = false;
  const undo = async (): Promise<void> => {
    if (!had) return rm(dir, { recursive: true, force: true });
    if (inPlace) {
      await keep(dir, old, moved);
      await rename(dir, fresh);
    }
    if (await exists(old)) await rename(old, dir);
  };
  try {
    if (had) await rename(dir, old);
    await rename(fresh, dir);
    inPlace = true;
    if (!had) return { kept: [], undo };
    moved = await keep(old, dir, staged.dots);
    const kept = await keep(old, dir, staged.foreign);
    moved.push(...kept);
    return { kept, undo };
  } catch (error) {
    await undo();
    throw error;
  }
};

/**
 * Writes all folders beside their places first, then swaps each in with a rename. When anything fails the
 * folders are as they were, and it rejects. Dot files at the top (`.git`, `.nojekyll`) and files we did not
 * make stay. Ask `refusal` first.
 */
export const publish = async (folders: readonly Folder[]): Promise<readonly Published[]> => {
  const staged: Staged[] = [];
  const swapped: { kept: readonly string[]; undo: () => Promise<void> }[] = [];
  try {
    for (const folder of folders) staged.push(await stage(folder));
    for (const one of staged) swapped.push(await swap(one));
  } catch (error) {
    for (const { undo } of swapped.reverse()) await undo();
    for (const { dir } of folders)
      await rm(besides(await actual(dir), 'new'), { recursive: true, force: true });
    throw error;
  }
  for (const { old } of staged) await rm(old, { recursive: true, force: true });
  return staged.map(({ files, bytes }, i) => ({ files, bytes, kept: swapped[i]?.kept ?? [] }));
};
