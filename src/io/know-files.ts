/** The files of a content folder with what is in them: read where they changed, remembered where they did not. */
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PhotoSource } from '../content/sources.ts';
import { digestOf } from '../text/digest.ts';
import { sha256 } from '../text/hash.ts';
import { keepData, type Memory, recallData } from '../text/memory.ts';
import { decodeText } from './decode-text.ts';
import { hasContent, isTooFresh, type ListedFile, sizeIn } from './list-files.ts';
import { mapConcurrently } from './map-concurrently.ts';
import { mayPass } from './photo-problem.ts';

/** A file of the content folder, and what is known of it. */
export interface KnownFile {
  readonly path: string;
  readonly stamp: string;
  /** SHA-256 of a text as it is read, of any other file's bytes; empty for a file that nobody reads. */
  readonly hash: string;
  /** What a look at a photo found. */
  readonly photo?: PhotoSource;
  /** The text, where it was read now. */
  readonly text?: string;
}

/** How many of the new photos were looked at, and how many there are. */
export type Progress = (done: number, total: number) => void;

/** Lists of shipments are streamed by themselves: they may be large, and names may stand in them. */
export const isParcels = (path: string): boolean => /(^|\/)parcels\.csv$/i.test(path);
export const isText = (path: string): boolean => /\.(md|csv)$/i.test(path) && !isParcels(path);
export const isPhoto = (path: string): boolean => /\.(jpe?g|png|webp|avif|hei[cf]|tiff?|gif)$/i.test(path);

/** Bytes of a text that is read: far more than a record may have in any encoding, or a list of searches has. */
const MOST_BYTES = { record: 4_000_000, list: 32_000_000 } as const;

/** Whether a text is so long that it is not read: nobody wrote it. */
export const isTooBig = ({ path, stamp }: Pick<ListedFile, 'path' | 'stamp'>): boolean =>
  isText(path) && sizeIn(stamp) > (/\.md$/i.test(path) ? MOST_BYTES.record : MOST_BYTES.list);

/** Bytes of a photo that is read: 200 million pixels in full quality have fewer. */
const MOST_OF_PHOTO = 200_000_000;

/** Raise when a look at the same photo finds something else. */
const PROBE_VERSION = 4;

/** Photos decoded at once: one for each of two processors, each within the memory of a small machine. */
const PROBES_AT_ONCE = 2;

const hashOfFile = async (path: string): Promise<string> => {
  const hash = createHash('sha256');
  for await (const bytes of createReadStream(path, { highWaterMark: 262_144 })) hash.update(bytes as Buffer);
  return hash.digest('hex');
};

const textFile = async (dir: string, { path, stamp }: ListedFile): Promise<KnownFile> => {
  const text = decodeText(await readFile(join(dir, path)));
  return { path, stamp, hash: sha256(text), text };
};

/** Looks at a photo, unless a file of the same bytes was looked at before. */
const photoFile = async (
  dir: string,
  { path, stamp, size }: ListedFile,
  memory: Memory,
): Promise<KnownFile> => {
  if (size > MOST_OF_PHOTO) {
    const { unusable } = await import('./probe.ts');
    const hash = digestOf('large photo', size);
    return {
      path,
      stamp,
      hash,
      photo: unusable(path, hash, {
        problem: `has ${Math.round(size / 1e6)} MB, expected at most ${MOST_OF_PHOTO / 1e6}`,
        fix: 'Save it again as a JPEG, or at half its width',
      }),
    };
  }
  const bytes = await readFile(join(dir, path));
  const hash = sha256(bytes);
  const key = digestOf('photo', PROBE_VERSION, hash);
  const before = recallData(memory, key) as PhotoSource | undefined;
  if (before) return { path, stamp, hash, photo: { ...before, path } };
  const { probe } = await import('./probe.ts');
  const photo = await probe(path, bytes);
  if (!mayPass(photo)) keepData(memory, key, photo);
  return { path, stamp, hash, photo };
};

/**
 * What is in the listed files. A file whose stamp is as `before` knows it is not read. `onProgress` hears of photos that
 * are looked at.
 */
export const knowFiles = async (
  dir: string,
  listed: readonly ListedFile[],
  before: ReadonlyMap<string, KnownFile>,
  memory: Memory,
  onProgress: Progress = () => {},
): Promise<ReadonlyMap<string, KnownFile>> => {
  const known = new Map<string, KnownFile>();
  const changed: ListedFile[] = [];
  for (const file of listed) {
    const old = before.get(file.path);
    if (old?.stamp === file.stamp) known.set(file.path, old);
    else if (
      hasContent(file) &&
      !isTooBig(file) &&
      (isText(file.path) || isPhoto(file.path) || isParcels(file.path))
    )
      changed.push(file);
    else known.set(file.path, { path: file.path, stamp: file.stamp, hash: '' });
  }
  const remember = (file: KnownFile): void => void known.set(file.path, file);
  const texts = changed.filter(({ path }) => isText(path));
  for (const file of await mapConcurrently(16, texts, (one) => textFile(dir, one))) remember(file);
  for (const file of changed)
    if (isParcels(file.path))
      remember({ path: file.path, stamp: file.stamp, hash: await hashOfFile(join(dir, file.path)) });
  const photos = changed.filter(({ path }) => isPhoto(path));
  let done = 0;
  await mapConcurrently(PROBES_AT_ONCE, photos, async (file) => {
    remember(await photoFile(dir, file, memory));
    onProgress(++done, photos.length);
  });
  return new Map(
    listed.flatMap(({ path }) => {
      const file = known.get(path);
      return file ? [[path, file]] : [];
    }),
  );
};

/** As it is written down: the text is read from the file again. */
type Row = readonly [path: string, stamp: string, hash: string, photo?: PhotoSource];

const keyFor = (dir: string): string => digestOf('known files', PROBE_VERSION, dir);

/** The files of a folder as an earlier run knew them. */
export const rememberedFiles = (dir: string, memory: Memory): ReadonlyMap<string, KnownFile> => {
  const rows = recallData(memory, keyFor(dir)) as readonly Row[] | undefined;
  return new Map(
    (rows ?? []).map(([path, stamp, hash, photo]) => [path, { path, stamp, hash, ...(photo && { photo }) }]),
  );
};

/** Writes down what is known of the files, apart from those that were changed only a moment before `readAt`. */
export const rememberFiles = (
  dir: string,
  files: ReadonlyMap<string, KnownFile>,
  listed: readonly ListedFile[],
  readAt: number,
  memory: Memory,
): void => {
  const rows = listed.flatMap((listedFile): Row[] => {
    const { path } = listedFile;
    const file = files.get(path);
    if (!file || isTooFresh(listedFile, readAt)) return [];
    const { stamp, hash, photo } = file;
    if (photo && mayPass(photo)) return [];
    return [photo ? [path, stamp, hash, photo] : [path, stamp, hash]];
  });
  // Most runs know what the last one knew, and have nothing to write.
  const key = keyFor(dir);
  if (JSON.stringify(recallData(memory, key)) !== JSON.stringify(rows)) keepData(memory, key, rows);
};
