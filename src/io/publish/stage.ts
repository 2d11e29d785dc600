/** Makes what a plan lacks, beside its place and on the same disk, and writes down what is to be done with it. */
import { createHash, randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { mapConcurrently } from '../map-concurrently.ts';
import type { FileSystem, Found } from './file-system.ts';
import { type Journal, journalText, type Placing, STAGED_JOURNAL, STAGED_MANIFEST } from './journal.ts';
import { type Entry, manifestBody, manifestText } from './manifest.ts';
import { JOURNAL, STAGING } from './names.ts';
import type { Plan, WantedFile } from './plan.ts';
import type { PublishedFile, Step } from './publish.ts';

export interface Staged {
  readonly plan: Plan;
  readonly journal: Journal;
  /** Of all files of the target. */
  readonly bytes: number;
  /** Whether anything but the manifest is to be put in place or taken away, or a stopped run's journal to be settled. */
  readonly isJournaled: boolean;
  /** Whether nothing at all is to be done. */
  readonly isDone: boolean;
  /** Files of ours that somebody changed by hand and that this run replaces or takes away. */
  readonly replaced: readonly string[];
}

/** Files that are made and written at the same time: enough that the disk syncs many in one go. */
const AT_ONCE = 16;

const STEPS: readonly Step[] = ['asset', 'page', 'list'];

const hashOf = (bytes: string | Uint8Array): string => createHash('sha256').update(bytes).digest('base64url');

const bytesOf = async ({ bring }: PublishedFile): Promise<string | Uint8Array> => {
  const brought = await bring();
  return typeof brought === 'object' && 'copyOf' in brought ? readFile(brought.copyOf) : brought;
};

interface Settled {
  readonly entry: Entry;
  /** Bytes. */
  readonly size: number;
  /** Where new bytes were written. */
  readonly staged?: string;
  readonly wasChanged?: boolean;
}

interface InPlace {
  readonly hash: string;
  readonly found: Found;
  /** Undefined for bytes that we did not leave there. */
  readonly key: string | undefined;
  readonly wasChanged: boolean;
}

/** What the file in place is: read only where its size, time or inode differ from all that we left. */
const inPlace = async (
  { file, known, found, left }: WantedFile,
  dir: string,
  fs: FileSystem,
): Promise<InPlace | undefined> => {
  if (!found) return undefined;
  if (left) return { hash: left.hash, found, key: left.key, wasChanged: false };
  const bytes = await fs.read(join(dir, file.path));
  if (bytes === undefined) return undefined;
  const hash = hashOf(bytes);
  const same = known.find((entry) => entry.hash === hash);
  return { hash, found, key: same?.key, wasChanged: !same && known.some((one) => one.hash !== '') };
};

/** Rejects with the first failure, once nothing is under way any more, so that what was written can be taken away. */
export const allAtOnce = async <T, R>(
  entries: readonly T[],
  work: (entry: T) => Promise<R>,
): Promise<R[]> => {
  let failed: { readonly error: unknown } | undefined;
  const results = await mapConcurrently(AT_ONCE, entries, async (entry) => {
    if (failed) return undefined;
    try {
      return { result: await work(entry) };
    } catch (error) {
      failed ??= { error };
      return undefined;
    }
  });
  if (failed) throw failed.error;
  return results.flatMap((one) => (one ? [one.result] : []));
};

const changedByHand = async (path: string, { dir, state }: Plan, fs: FileSystem): Promise<boolean> => {
  const known = state.known.get(path) ?? [];
  const found = fs.lstat(join(dir, path));
  const isAsWeLeft = known.length === 0 || known.some((one) => one.hash === '');
  if (!found || isAsWeLeft) return false;
  if (known.some((one) => one.print === found.print)) return false;
  const bytes = await fs.read(join(dir, path));
  return bytes !== undefined && !known.some((one) => one.hash === hashOf(bytes));
};

/**
 * Makes and writes what is missing into the folder named `staging`; a file whose bytes are those in place is not written. `onStaged` hears of
 * each file that was. Rejects with what the disk or a `bring` said, and `discard` then takes away what was written.
 */
export const stage = async (
  plan: Plan,
  staging: string,
  fs: FileSystem,
  onStaged: () => void,
): Promise<Staged> => {
  const { dir, state } = plan;
  let made: Promise<unknown> | undefined;
  const write = async (name: string, bytes: string | Uint8Array): Promise<void> => {
    made ??= fs.makeFolder(join(dir, staging));
    await made;
    await fs.write(join(dir, staging, name), bytes);
  };
  const settle = async (one: WantedFile, index: number): Promise<Settled> => {
    const { key, path } = one.file;
    const there = await inPlace(one, dir, fs);
    if (there?.key === key)
      return { entry: { key, hash: there.hash, print: there.found.print }, size: there.found.size };
    const bytes = await bytesOf(one.file);
    const hash = hashOf(bytes);
    if (there?.hash === hash)
      return { entry: { key, hash, print: there.found.print }, size: there.found.size };
    const staged = String(index);
    await write(staged, bytes);
    const found = fs.lstat(join(dir, staging, staged));
    if (!found) throw new Error(`A staged file is gone: ${path}`);
    onStaged();
    const entry = { key, hash, print: found.print };
    return { entry, size: found.size, staged, wasChanged: there?.wasChanged ?? false };
  };
  // What stands as it should is told apart first: a thousand promises cost more than all the rest of it.
  const stands = ({ left, file }: WantedFile): boolean => left?.key === file.key;
  const lacking = plan.wanted.filter((one) => !stands(one));
  const settled = await allAtOnce([...lacking.entries()], async ([index, one]) => ({
    ...(await settle(one, index)),
    file: one.file,
    isOver: one.found !== undefined,
  }));
  const fresh = settled.filter(({ staged }) => staged !== undefined);
  const byStep = (step: Step): Placing[] =>
    fresh
      .filter(({ file }) => file.step === step)
      .map(({ staged = '', file, isOver }) => ({ staged, path: file.path, isOver }))
      // New pages before those that are replaced, because only the latter can be linked to them already.
      .sort((a, b) => Number(a.isOver) - Number(b.isOver));
  const files = new Map(settled.map(({ file, entry }) => [file.path, entry]));
  let bytes = settled.reduce((sum, { size }) => sum + size, 0);
  for (const { file, left, found } of plan.wanted)
    if (left && left.key === file.key) {
      files.set(file.path, left);
      bytes += found?.size ?? 0;
    }
  const body = manifestBody(files, plan.folders);
  const next = { id: hashOf(body), files, folders: plan.folders };
  const journal: Journal = {
    staging,
    next,
    first: plan.first,
    make: plan.make,
    place: STEPS.flatMap(byStep),
    gone: plan.gone,
    drop: plan.drop,
  };
  const isJournaled =
    fresh.length + plan.first.length + plan.gone.length + plan.drop.length > 0 || state.journal !== undefined;
  const isDone = !isJournaled && state.manifest?.id === next.id;
  // The disk syncs both in one go.
  await allAtOnce(
    [
      ...(isDone ? [] : [[STAGED_MANIFEST, manifestText(next.id, body)] as const]),
      ...(isJournaled ? [[STAGED_JOURNAL, journalText(journal, body)] as const] : []),
    ],
    ([staged, text]) => write(staged, text),
  );
  const replaced = fresh.filter(({ wasChanged }) => wasChanged).map(({ file }) => file.path);
  for (const { path } of [...plan.first, ...plan.gone])
    if (await changedByHand(path, plan, fs)) replaced.push(path);
  return { plan, journal, bytes, isJournaled, isDone, replaced: replaced.sort() };
};

/** A name for a staging folder that no other run has. */
export const stagingName = (): string => `${STAGING}${randomUUID()}`;

/** From here on the run is decided: whoever opens the folder next finishes it. */
export const commit = async (
  { plan: { dir }, journal, isJournaled }: Staged,
  fs: FileSystem,
): Promise<void> => {
  if (!isJournaled) return;
  await fs.sync(join(dir, journal.staging));
  await fs.rename(join(dir, journal.staging, STAGED_JOURNAL), join(dir, JOURNAL));
  await fs.sync(dir);
};

/** As if the run had not been decided. Only before anything was put in place, and where no earlier run was half way. */
export const takeBack = async ({ plan: { dir } }: Staged, fs: FileSystem): Promise<void> => {
  if (fs.lstat(join(dir, JOURNAL))) await fs.unlink(join(dir, JOURNAL));
};

/** Takes away the staging folders whose names are asked for. Each holds files alone, because we made it. */
export const discard = async (
  dir: string,
  fs: FileSystem,
  which: (name: string) => boolean,
): Promise<void> => {
  for (const { name, isFolder } of fs.list(dir)) {
    if (!isFolder || !name.startsWith(STAGING) || !which(name)) continue;
    for (const staged of fs.list(join(dir, name))) await fs.unlink(join(dir, name, staged.name));
    await fs.rmdir(join(dir, name));
  }
};
