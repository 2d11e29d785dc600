/** Where the content is and as of when: what all commands are asked in the same words. */
import { statSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import type { AsOf } from '../pipeline/as-of.ts';
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
  readonly memory: string;
  /** The folder of this name beside the content. */
  readonly beside: (name: string) => string;
  /** The folder that an option names, or the one of this name beside the content. */
  readonly folder: (option: string, name: string) => string;
  /** A finding's file as a path to open. */
  readonly showFile: (file: string) => string;
}

const textOf = (value: string | true | undefined): string | undefined =>
  typeof value === 'string' ? value : undefined;

/** What the values say, or why it cannot be done. Loads nothing, because a build of unchanged content ends here. */
export const findContentFolder = (
  values: Values,
  cwd: string,
): ContentFolder | { readonly mistake: string } => {
  const named = textOf(values.content) ?? 'content';
  const content = resolve(cwd, named);
  if (!statSync(content, { throwIfNoEntry: false })?.isDirectory())
    return { mistake: mistakes.noFolder(named, !values.content) };
  const root = named.split(sep).join('/').replace(/\/+$/, '') || named;
  const beside = (name: string): string => join(dirname(content), name);
  return {
    content,
    root,
    memory: beside('.lidlore'),
    beside,
    folder: (option, name) => {
      const other = textOf(values[option]);
      return other === undefined ? beside(name) : resolve(cwd, other);
    },
    showFile: (file) =>
      file.startsWith(`${root}/`) || file.startsWith('templates/') ? file : `${root}/${file}`,
  };
};

/** The moment that `--as-of` names, now where it is left out, or why it is none. */
export const readMoment = async (
  values: Values,
): Promise<{ readonly asOf: AsOf } | { readonly mistake: string }> => {
  const instant = textOf(values['as-of']);
  if (instant === undefined) return { asOf: Date.now() };
  const { readAsOf } = await import('../pipeline/as-of.ts');
  const asOf = readAsOf(instant);
  return asOf === undefined ? { mistake: mistakes.asOf(instant) } : { asOf };
};
