/** Every call to the disk that a publish makes fails in every way, and the process dies before and in each. */
import { existsSync, rmSync, writeFileSync } from 'node:fs';
import { cp, mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isPublishFailure } from '../../../src/io/publish/failure.ts';
import type { FileSystem } from '../../../src/io/publish/file-system.ts';
import { type PublishedFile, publish } from '../../../src/io/publish/publish.ts';
import { settle } from '../../../src/io/publish/settle.ts';
import { FAULTS, type Fault, faultyDisk, isDeath } from '../../support/faulty-disk.ts';
import { isWhole } from '../../support/share-of.ts';
import { type TreeEntry, treeOf } from '../../support/tree.ts';
import { QUICK_DISK } from '../temporary.ts';
import {
  addOwnersThings,
  after,
  before,
  filesOf,
  isSealed,
  lostReferences,
  ownersPart,
  resealed,
  SEALED,
  type Site,
  SURPRISES,
  wrongs,
} from './box.ts';

/** Milliseconds that a whole series may take on a machine with much else to do. */
const PATIENCE = 300_000;

let root = '';
let count = 0;
beforeAll(async () => {
  root = await mkdtemp(join(QUICK_DISK, 'lidlore-faults-'));
  await mkdir(join(root, 'elsewhere'));
});
afterAll(() => rm(root, { recursive: true, force: true }));

interface Place {
  readonly dir: string;
  readonly owners: ReadonlyMap<string, TreeEntry>;
  /** Everything in it, as `shown` gives it. */
  readonly old: string;
}

/** A folder with the first site and the owner's things, and the tree it had then. */
const published = async (): Promise<Place> => {
  const dir = join(root, String(count++));
  await publish([{ dir, files: filesOf(before) }]);
  await addOwnersThings(dir, join(root, 'elsewhere'));
  const tree = treeOf(dir);
  return { dir, owners: ownersPart(tree, before), old: shown(tree) };
};

const target = (dir: string, site: Site) => ({ dir, files: filesOf(site), first: isSealed });

/** Bytes of everything but the lock, so that what a refused run left can be compared with what was there. */
const shown = (tree: ReadonlyMap<string, TreeEntry>): string =>
  JSON.stringify([...tree].filter(([path]) => !path.startsWith('.lidlore-lock')));

/** How many calls one publish from `before` to `after` makes. */
const callsOfOne = async (): Promise<number> => {
  const { dir } = await published();
  const counted = faultyDisk(-1, 'die');
  await publish([target(dir, after)], { fs: counted.fs });
  return counted.calls();
};

const injected = new Map<string, number>();

/** What the next run is asked to do. */
const NEXT = ['the same', 'what is sealed again', 'nothing, only to settle'] as const;

/** Paths in place whose files show what is sealed in one of the sites. */
const sealedIn = (dir: string): ReadonlySet<string> =>
  new Set(SURPRISES.filter((path) => existsSync(join(dir, path))));

/** Publishes with one fault, looks at what is claimed and left, lets the next run follow; gives all that is wrong. */
const tryFault = async (
  at: number,
  fault: Fault,
  next: (typeof NEXT)[number],
  publisher: typeof publish = publish,
): Promise<readonly string[]> => {
  const { dir, owners, old } = await published();
  const found: string[] = [];
  const say = (words: string): void => {
    found.push(`call ${at}, ${fault}, then ${next}: ${words}`);
  };
  const faulty = faultyDisk(at, fault);
  try {
    await publisher([target(dir, after)], { fs: faulty.fs });
    // A lock that cannot be taken away is a dead one's for the next run.
    for (const wrong of wrongs(dir, after, owners))
      if (wrong !== '.lidlore-lock is left over') say(`after success, ${wrong}`);
  } catch (error) {
    if (!isDeath(error) && !isPublishFailure(error)) say(`rejects with ${error}`);
    if (isPublishFailure(error) && !isDeath(error) && !error.halfWay && shown(treeOf(dir)) !== old)
      say('claims that nothing was changed');
  }
  if (faulty.met()) injected.set(fault, (injected.get(fault) ?? 0) + 1);

  const sealedBefore = sealedIn(dir);
  if (next === 'nothing, only to settle') {
    const done = await settle(dir);
    const [asBefore, asAfter] = [wrongs(dir, before, owners), wrongs(dir, after, owners)];
    if (asAfter.length > 0 && (done === 'finished' || asBefore.length > 0))
      say(`after settling (${done}), ${asBefore} and ${asAfter}`);
  } else {
    const site = next === 'the same' ? after : resealed;
    const watched = faultyDisk(-1, 'die', () => {
      if (site === resealed)
        for (const path of sealedIn(dir)) if (!sealedBefore.has(path)) say(`${path} appears for a moment`);
    });
    await publish([target(dir, site)], { fs: watched.fs });
    for (const wrong of wrongs(dir, site, owners)) say(wrong);
  }
  return found;
};

describe('whatever call fails, and wherever the process dies', () => {
  test.each(FAULTS)(
    '%s: the next run gives exactly what is wanted, and all of the owner’s is as it was',
    async (fault) => {
      const calls = await callsOfOne();
      expect(calls).toBeGreaterThan(100);
      const found: string[] = [];
      for (let at = 0; at < calls; at++)
        for (const [i, next] of NEXT.entries()) {
          // In turn, and where all is tried each after a death.
          if ((at + i) % NEXT.length === 0 || (isWhole && fault === 'die'))
            found.push(...(await tryFault(at, fault, next)));
        }
      expect(found).toEqual([]);
      process.stdout.write(`Faults injected, ${fault}: ${injected.get(fault)}, over ${calls} calls.\n`);
      expect(injected.get(fault)).toBeGreaterThanOrEqual(calls);
    },
    PATIENCE,
  );

  test('a run that dies while it puts a dead run’s work right is put right in turn', async () => {
    const found: string[] = [];
    const calls = await callsOfOne();
    for (let at = 20; at < calls; at += 11)
      for (let again = 5; again < calls; again += 31) {
        const { dir, owners } = await published();
        await publish([target(dir, after)], { fs: faultyDisk(at, 'die').fs }).catch(() => undefined);
        await publish([target(dir, resealed)], { fs: faultyDisk(again, 'die').fs }).catch(() => undefined);
        await publish([target(dir, after)]);
        found.push(...wrongs(dir, after, owners).map((wrong) => `${at}, ${again}: ${wrong}`));
      }
    expect(found).toEqual([]);
  });

  test('when the run that follows a dead one dies too, settling gives the one’s site or the other’s, whole', async () => {
    const found: string[] = [];
    for (let again = 3; ; again += 4) {
      const { dir, owners } = await published();
      let renames = 0;
      const dying = faultyDisk(-1, 'die').fs;
      const rename = async (from: string, to: string): Promise<void> => {
        if (++renames > 3) throw new Error('dies half way');
        await dying.rename(from, to);
      };
      await publish([target(dir, after)], { fs: { ...dying, rename } }).catch(() => undefined);
      const second = faultyDisk(again, 'die');
      await publish([target(dir, resealed)], { fs: second.fs }).catch(() => undefined);
      if (!second.met()) break;
      await settle(dir);
      const [one, other] = [wrongs(dir, after, owners), wrongs(dir, resealed, owners)];
      if (one.length > 0 && other.length > 0) found.push(`${again}: ${one} and ${other}`);
    }
    expect(found).toEqual([]);
  });

  test('the check finds fault with a run that writes straight into the folder', async () => {
    const straight = async (
      [one]: readonly { readonly dir: string; readonly files: readonly PublishedFile[] }[],
      { fs }: { readonly fs?: FileSystem } = {},
    ) => {
      for (const { path, bring } of one?.files ?? []) {
        const file = join(one?.dir ?? '', path);
        fs?.lstat(file);
        rmSync(file, { force: true, recursive: true });
        writeFileSync(file, String(await bring()), { flag: 'w' });
      }
      return [];
    };
    const found = await tryFault(3, 'EIO', 'nothing, only to settle', straight);
    expect(found.join()).toContain('rejects with');
    expect(found.join()).toContain('boxes/03.html is');
    expect(found.join()).toContain('is left over');
  });

  test('the check finds what is lost, changed, left over or sealed', async () => {
    const { dir, owners } = await published();
    expect(wrongs(dir, before, owners)).toEqual([]);
    await cp(join(dir, 'site.css'), join(dir, 'more.css'));
    rmSync(join(dir, 'boxes/dangling'));
    writeFileSync(join(dir, 'CNAME'), 'b.example');
    writeFileSync(join(dir, 'index.html'), `${SEALED}`);
    expect(wrongs(dir, before, owners)).toEqual(
      [
        'index.html is SURPRISE',
        'the owner’s boxes/dangling is not as it was'.replace('’', "'"),
        "the owner's CNAME is not as it was",
        'more.css is left over',
      ].sort((a, b) => wrongs(dir, before, owners).indexOf(a) - wrongs(dir, before, owners).indexOf(b)),
    );
    expect(wrongs(dir, after, owners).join()).toContain('boxes/04.html shows what is sealed');
  });
});

describe('at every instant', () => {
  const watch = async (dir: string, site: Site): Promise<readonly string[]> => {
    const lost: string[] = [];
    let looked = 0;
    const { fs } = faultyDisk(-1, 'die', () => {
      looked++;
      lost.push(...lostReferences(dir));
    });
    await publish([target(dir, site)], { fs });
    expect(looked).toBeGreaterThan(10);
    return lost;
  };

  test('each page in place finds all that it refers to', async () => {
    const { dir } = await published();
    expect(await watch(dir, after)).toEqual([]);
    expect(await watch(dir, before)).toEqual([]);
    expect(await watch(join(root, 'fresh'), before)).toEqual([]);
  });

  test('also when a run goes on from a dead one', async () => {
    const calls = await callsOfOne();
    for (let at = 10; at < calls; at += 11) {
      const { dir } = await published();
      await publish([target(dir, after)], { fs: faultyDisk(at, 'die').fs }).catch(() => undefined);
      expect(lostReferences(dir), `after call ${at}`).toEqual([]);
      expect(await watch(dir, resealed), `after call ${at}`).toEqual([]);
    }
  });

  test('the check finds a reference that leads nowhere', async () => {
    const { dir } = await published();
    rmSync(join(dir, 'pictures/b.jpg'));
    expect(lostReferences(dir)).toEqual(['boxes/03.html → pictures/b.jpg']);
  });
});
