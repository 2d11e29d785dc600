/** The content folder → Sources. */
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { PhotoSource, Sources } from '../content/sources.ts';
import { decodeText } from './decode-text.ts';
import { mapConcurrently } from './map-concurrently.ts';
import { type ProbeCache, readProbeCache, writeProbeCache } from './probe-cache.ts';
import { walk } from './walk.ts';

/** Lists of shipments are streamed by themselves: they may be large, and names may stand in them. */
const isParcels = (path: string): boolean => /(^|\/)parcels\.csv$/i.test(path);
const isText = (path: string): boolean => /\.(md|csv)$/i.test(path) && !isParcels(path);
const isPhoto = (path: string): boolean => /\.(jpe?g|png|webp|avif|hei[cf]|tiff?|gif)$/i.test(path);

/** Raise when what probe.ts answers changes, so that remembered answers are not used. */
const PROBE_VERSION = 1;

/** Photos decoded at once: one for each of two processors, each within the memory of a small machine. */
const PROBES_AT_ONCE = 2;

/** Called as photos are looked at: how many of the new ones are done, how many there are. */
export type Progress = (done: number, total: number) => void;

/** Every text below `dir`, and no photo looked at: what is enough for a report that shows none. */
export const readTexts = async (dir: string, root: string = dir): Promise<Sources> => {
  const paths = await walk(dir);
  const texts = await mapConcurrently(16, paths.filter(isText), async (path) => ({
    path,
    text: decodeText(await readFile(join(dir, path))),
  }));
  return { root, texts, photos: [], paths };
};

/**
 * Reads every text and looks at every photo below `dir`. Answers about photos are remembered in the folder
 * `cache`. `root` is the folder's name as the author wrote it.
 */
export const readContent = async (
  dir: string,
  cache: string,
  onProgress: Progress = () => {},
  root: string = dir,
): Promise<Sources> => {
  const { paths, texts } = await readTexts(dir, root);
  const before = await readProbeCache(cache, PROBE_VERSION);
  const after: ProbeCache = new Map();
  const stamped = await mapConcurrently(16, paths.filter(isPhoto), async (path) => {
    const { size, mtimeMs } = await stat(join(dir, path));
    return { path, stamp: `${size} ${mtimeMs}` };
  });
  const fresh = stamped.filter(({ path, stamp }) => before.get(path)?.stamp !== stamp);
  for (const { path, stamp } of stamped) {
    const known = before.get(path);
    if (known?.stamp === stamp) after.set(path, known);
  }
  if (fresh.length > 0) {
    const { probe } = await import('./probe.ts');
    let done = 0;
    await mapConcurrently(PROBES_AT_ONCE, fresh, async ({ path, stamp }) => {
      after.set(path, { stamp, photo: await probe(path, await readFile(join(dir, path))) });
      onProgress(++done, fresh.length);
    });
  }
  if (fresh.length > 0 || before.size !== after.size) await writeProbeCache(cache, PROBE_VERSION, after);

  const photos = stamped.map(({ path }) => after.get(path)?.photo as PhotoSource);
  return { root, texts, photos, paths };
};
