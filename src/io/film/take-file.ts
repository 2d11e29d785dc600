/** Where a take's file lies. */
import { statSync } from 'node:fs';
import { join } from 'node:path';
import type { FilmTake } from '../../render/film.ts';

const found = (content: string, { cycle, name }: FilmTake) => {
  const path = join(content, 'cycles', cycle, 'takes', name);
  const stat = statSync(path, { throwIfNoEntry: false });
  return stat?.isFile() ? { path, stat } : undefined;
};

/** Absolute; undefined where there is no such file. */
export const takePath = (content: string, take: FilmTake): string | undefined => found(content, take)?.path;

/** What tells a take's file from another: its size in bytes, and its time; empty where it is missing. */
export const takeStamp = (content: string, take: FilmTake): string => {
  const file = found(content, take);
  return file ? `${file.stat.size} ${file.stat.mtimeMs}` : '';
};
