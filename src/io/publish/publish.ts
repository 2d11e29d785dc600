/** Finished files → folders, put in place one by one, so that a run can be stopped at any moment. */
import { dirname } from 'node:path';
import { failureOf, inTheWay } from './failure.ts';
import { disk, type FileSystem } from './file-system.ts';
import { type Holder, type Lock, lock } from './lock.ts';
import { checkPaths, type Plan, planFor } from './plan.ts';
import { close, putInPlace } from './put-in-place.ts';
import { danglingLink, realFolder } from './real-folder.ts';
import { foreignIn } from './refusal.ts';
import { commit, discard, type Staged, stage, stagingName, takeBack } from './stage.ts';
import { readState } from './state.ts';

/** When a file is put in place. Asset: pictures, fonts, scripts, style sheets; page: HTML and other documents; list: what names pages (feeds, sitemap, catalogue index files, robots). */
export type Step = 'asset' | 'page' | 'list';

/** A file to publish. */
export interface PublishedFile {
  /** Relative, with forward slashes. */
  readonly path: string;
  /** Hash of all that the file is made from: where the folder holds an intact file of this path and key, nothing is brought or written. */
  readonly key: string;
  readonly step: Step;
  /** Its text or bytes, or the file to copy. Asked for only when it may have to be written. */
  readonly bring: () => Promise<string | Uint8Array | { readonly copyOf: string }>;
}

export interface Target {
  readonly dir: string;
  readonly files: readonly PublishedFile[];
  /** Whether one of the files of ours that go is taken away before all else: one of a cycle that is sealed again. `gone` are all that go. */
  readonly first?: (path: string, gone: ReadonlySet<string>) => boolean;
  /**
   * The `id` that a publish before gave: where another run has published since, nothing is done, because this one knows
   * less than that.
   */
  readonly after?: string;
}

export interface Published {
  /** Of all that stands in the folder now, as `Target.after` takes it. */
  readonly id: string;
  readonly files: number;
  readonly bytes: number;
  /** Paths written, and taken away, by this run, sorted. */
  readonly written: readonly string[];
  readonly removed: readonly string[];
  /** Paths of ours among them that somebody had changed by hand, sorted. */
  readonly replaced: readonly string[];
  /** Paths of others' files and links that stand in the folder, hidden ones apart, sorted. */
  readonly kept: readonly string[];
}

export interface PublishOptions {
  /** Told once for each folder that another run is working on. */
  readonly onWait?: (holder: Holder, dir: string) => void;
  /** Told how many files are written aside, of those that may have to be. */
  readonly onProgress?: (done: number, total: number) => void;
  /** The disk, unless a test takes its place. */
  readonly fs?: FileSystem;
}

interface Opened {
  readonly target: Target;
  readonly dir: string;
  /** The outermost folder that we made for it, if any. */
  readonly made: string | undefined;
}

const open = async (target: Target, fs: FileSystem): Promise<Opened> => {
  const nowhere = await danglingLink(target.dir, fs);
  if (nowhere !== undefined)
    throw inTheWay(
      `${target.dir} leads by a link to ${nowhere}, which is not there. Make that folder, or name another.`,
    );
  const dir = await realFolder(target.dir, fs);
  return { target, dir, made: await fs.makeFolder(dir) };
};

const plan = async ({ target, dir }: Opened, fs: FileSystem): Promise<Plan> => {
  const foreign = await foreignIn(dir, fs);
  if (foreign !== undefined) throw inTheWay(`${dir} ${foreign}`);
  return planFor(target, dir, await readState(dir, fs), fs);
};

/** Takes away the folders that were made for a target that got nothing. */
const removeMade = async ({ dir, made }: Opened, fs: FileSystem): Promise<void> => {
  if (made === undefined) return;
  for (let folder = dir; ; folder = dirname(folder)) {
    await fs.rmdir(folder);
    if (folder === made) return;
  }
};

const publishedBy = ({ plan, journal, bytes, replaced }: Staged): Published => ({
  id: journal.next.id,
  files: plan.wanted.length,
  bytes,
  written: journal.place.map(({ path }) => path).sort(),
  removed: [...plan.first, ...plan.gone].map(({ path }) => path).sort(),
  replaced,
  kept: plan.kept,
});

/**
 * Makes every file of all targets beside its place, writes down what is to be done, and does it, one target after the other.
 * Only files whose bytes change are touched; what others have in the folders is neither moved, changed nor followed.
 *
 * A run that was stopped before it wrote down what is to be done is undone. From one that was stopped
 * later we go on, but to our own files and not to its: what it had put in place is ours like any other
 * file, replaced or taken away in the usual order, and what it had still to put in place never gets there.
 * So nothing of a cycle that was sealed in between appears, not even for a moment.
 *
 * Gives nothing where a target was overtaken by another run. Rejects with a `PublishFailure` that says whether anything was changed, or with our own bug where nothing was. Ask `refusal` first.
 */
export const publish = async (
  targets: readonly Target[],
  { onWait, onProgress, fs = disk }: PublishOptions = {},
): Promise<readonly Published[]> => {
  for (const target of targets) checkPaths(target);
  const locks: Lock[] = [];
  const opened: Opened[] = [];
  const staging = stagingName();
  let halfWay = false;
  let isWhole = false;
  try {
    for (const target of targets) opened.push(await open(target, fs));
    const dirs = opened.map(({ dir }) => dir).sort();
    if (new Set(dirs).size < dirs.length) throw new Error('A folder must be published to once');
    // Always in the same order, so that two runs never wait for each other.
    for (const dir of dirs) {
      const held = await lock(fs, dir, { wait: true, onWait: (holder) => onWait?.(holder, dir) });
      if (held) locks.push(held);
    }
    const plans: Plan[] = [];
    for (const one of opened) plans.push(await plan(one, fs));
    const isOvertaken = ({ after }: Target, i: number): boolean =>
      after !== undefined && plans[i]?.state.manifest?.id !== after;
    if (targets.some(isOvertaken)) {
      isWhole = true;
      return [];
    }
    const isHalfWay = ({ state }: Plan): boolean => state.journal !== undefined;
    halfWay = plans.some(isHalfWay);
    for (const { dir, state } of plans) await discard(dir, fs, (name) => name !== state.journal?.staging);

    let done = 0;
    const total = plans.reduce((sum, { lacks }) => sum + lacks, 0);
    const staged: Staged[] = [];
    for (const one of plans) staged.push(await stage(one, staging, fs, () => onProgress?.(++done, total)));
    try {
      for (const one of staged) await commit(one, fs);
    } catch (error) {
      const before = halfWay;
      halfWay = true;
      for (const one of staged) if (!isHalfWay(one.plan)) await takeBack(one, fs);
      halfWay = before;
      throw error;
    }
    halfWay ||= staged.some(({ isJournaled }) => isJournaled);
    for (const one of staged) {
      if (one.isJournaled) await putInPlace(fs, one.plan.dir, one.journal);
      else if (!one.isDone) await close(fs, one.plan.dir, one.journal);
    }
    isWhole = true;
    return staged.map(publishedBy);
  } catch (error) {
    const failure = failureOf(error, halfWay);
    if (!halfWay)
      for (const { dir } of opened) await discard(dir, fs, (name) => name === staging).catch(() => undefined);
    throw failure;
  } finally {
    for (const held of locks) await held.release();
    if (!isWhole && !halfWay) for (const one of opened) await removeMade(one, fs).catch(() => undefined);
  }
};
