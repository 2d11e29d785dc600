/** Where the content is and as of when: what `build` and `proof` are asked in the same words. */
import { stat } from 'node:fs/promises';
import { dirname, join, resolve, sep } from 'node:path';
import { type AsOf, readAsOf } from '../pipeline/as-of.ts';
import { commandLine } from '../wording/en/command-line.ts';
import type { Values } from './environment.ts';

const { mistakes } = commandLine;

/** The content folder that a command is asked about. */
export interface ContentFolder {
  /** Absolute path. */
  readonly content: string;
  /** The folder as the author wrote it. */
  readonly root: string;
  /** What is remembered between runs, beside the content. */
  readonly cache: string;
  readonly asOf: AsOf;
  /** The folder that an option names, or the one of this name beside the content. */
  readonly folder: (option: string, beside: string) => string;
  /** A finding's file as a path to open. */
  readonly showFile: (file: string) => string;
}

/** What the values say, or why it cannot be done. */
export const readContentFolder = async (
  values: Values,
  cwd: string,
): Promise<ContentFolder | { readonly mistake: string }> => {
  const text = (name: string): string | undefined =>
    typeof values[name] === 'string' ? values[name] : undefined;
  const instant = text('as-of');
  const asOf = instant === undefined ? Date.now() : readAsOf(instant);
  if (asOf === undefined) return { mistake: mistakes.asOf(instant ?? '') };
  const named = text('content') ?? 'content';
  const content = resolve(cwd, named);
  if (!(await stat(content).catch(() => undefined))?.isDirectory())
    return { mistake: mistakes.noFolder(named, !values.content) };
  const root = named.split(sep).join('/').replace(/\/+$/, '') || named;
  return {
    content,
    root,
    cache: join(dirname(content), '.lidlore'),
    asOf,
    folder: (option, beside) => {
      const other = text(option);
      return other === undefined ? join(dirname(content), beside) : resolve(cwd, other);
    },
    showFile: (file) =>
      file.startsWith(`${root}/`) || file.startsWith('templates/') ? file : `${root}/${file}`,
  };
};
