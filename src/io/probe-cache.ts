/** Remembers what probes found, so that a photo is decoded again only when its file changes. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PhotoSource } from '../content/sources.ts';
import { writeWhole } from './write-whole.ts';

interface Remembered {
  readonly version: number;
  readonly photos: Readonly<Record<string, { readonly stamp: string; readonly photo: PhotoSource }>>;
}

/** What is known of photos by path; it holds while a file’s stamp is the same. */
export type ProbeCache = Map<string, { readonly stamp: string; readonly photo: PhotoSource }>;

const fileIn = (cache: string): string => join(cache, 'probes.json');

/** What earlier runs remembered; empty when there is nothing, or nothing that can be used. */
export const readProbeCache = async (cache: string, version: number): Promise<ProbeCache> => {
  try {
    const remembered = JSON.parse(await readFile(fileIn(cache), 'utf8')) as Remembered;
    return new Map(remembered.version === version ? Object.entries(remembered.photos) : []);
  } catch {
    return new Map();
  }
};

/** Remembers for the next run. */
export const writeProbeCache = async (cache: string, version: number, probes: ProbeCache): Promise<void> => {
  const remembered: Remembered = { version, photos: Object.fromEntries(probes) };
  await writeWhole(fileIn(cache), JSON.stringify(remembered));
};
