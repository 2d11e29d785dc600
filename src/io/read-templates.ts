/** Templates and what belongs to them, ours and the author's. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Asset, TemplateFile } from '../render/templates.ts';
import { digestOf } from '../text/digest.ts';
import { sha256 } from '../text/hash.ts';
import { listedIfThere, listFiles } from './list-files.ts';

/** What a page may load, by its ending; beside it the licence of a font goes with the font. */
const PUBLISHED = /\.(?:css|js|json|svg|png|jpe?g|webp|avif|gif|ico|woff2?|ttf|otf)$|-OFL\.txt$/i;

const TEXTS = /\.(css|svg|txt|js|json)$/i;

/** The scripts that compiling made for visitors' browsers; none where the program runs uncompiled. */
const readScripts = (dir: string): readonly Asset[] =>
  listedIfThere(dir)
    .filter(({ path }) => path.endsWith('.js'))
    .map(({ path }) => ({ path, bytes: readFileSync(join(dir, path)) }));

export interface TemplateFolders {
  /** Ours. */
  readonly own: string;
  /** The author's: a file of the same path takes ours' place, and others are added. */
  readonly theirs?: string;
  /** Scripts for browsers. */
  readonly scripts?: string;
}

export interface ReadTemplates {
  readonly files: readonly TemplateFile[];
  readonly assets: readonly Asset[];
  readonly scripts: readonly Asset[];
  /** The author's files that are neither templates nor anything a page loads: they are published nowhere. Paths in that folder. */
  readonly strays: readonly string[];
  /** Of all of them: equal digests mean equal templates. */
  readonly digest: string;
}

/** Every template, asset and script. */
export const readTemplates = ({ own, theirs, scripts }: TemplateFolders): ReadTemplates => {
  const from = new Map(listFiles(own).map(({ path }) => [path, own]));
  if (theirs !== undefined) for (const { path } of listedIfThere(theirs)) from.set(path, theirs);
  const files: TemplateFile[] = [];
  const assets: Asset[] = [];
  const digests: string[] = [];
  const strays: string[] = [];
  for (const [path, dir] of [...from].sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (!path.endsWith('.eta') && !PUBLISHED.test(path)) {
      strays.push(path);
      continue;
    }
    const bytes = readFileSync(join(dir, path));
    digests.push(path, sha256(bytes));
    if (path.endsWith('.eta'))
      files.push({
        name: path.slice(0, -'.eta'.length),
        file: `templates/${path}`,
        text: bytes.toString('utf8'),
        isOwn: dir === own,
      });
    else if (TEXTS.test(path)) assets.push({ path, bytes, text: bytes.toString('utf8') });
    else assets.push({ path, bytes });
  }
  const made = scripts === undefined ? [] : readScripts(scripts);
  for (const { path, bytes } of made) digests.push(path, sha256(bytes));
  return { files, assets, scripts: made, strays, digest: digestOf(digests) };
};
