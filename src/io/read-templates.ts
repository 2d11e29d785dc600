/** Templates and what belongs to them, ours and the author's. */
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Asset, TemplateFile } from '../render/templates.ts';
import { walk } from './walk.ts';

const TEXTS = /\.(css|svg|txt|js|json)$/i;

/** The scripts that compiling made for visitors' browsers; none where the program runs uncompiled. */
export const readScripts = async (dir: string): Promise<readonly Asset[]> => {
  const found = (await stat(dir).catch(() => undefined)) ? await walk(dir) : [];
  const paths = found.filter((path) => path.endsWith('.js')).sort();
  return Promise.all(paths.map(async (path) => ({ path, bytes: await readFile(join(dir, path)) })));
};

/**
 * Every file of `ownDir`; a file of the same path in `overrideDir` takes its place, and files that are only
 * there are added.
 */
export const readTemplates = async (
  ownDir: string,
  overrideDir?: string,
): Promise<{ files: readonly TemplateFile[]; assets: readonly Asset[] }> => {
  const from = new Map((await walk(ownDir)).map((path) => [path, ownDir]));
  const overrides = overrideDir && (await stat(overrideDir).catch(() => undefined))?.isDirectory();
  if (overrideDir && overrides) for (const path of await walk(overrideDir)) from.set(path, overrideDir);

  const files: TemplateFile[] = [];
  const assets: Asset[] = [];
  for (const [path, dir] of [...from].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const bytes = await readFile(join(dir, path));
    if (path.endsWith('.eta')) {
      files.push({
        name: path.slice(0, -'.eta'.length),
        file: `templates/${path}`,
        text: bytes.toString('utf8'),
      });
    } else if (TEXTS.test(path)) assets.push({ path, bytes, text: bytes.toString('utf8') });
    else assets.push({ path, bytes });
  }
  return { files, assets };
};
