/** A build is a process of its own here, and is killed (SIGKILL) at any moment of it: the next one has to put all right. */
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { photo } from '../io/photos.ts';
import { addOwnersThings } from '../io/publish/box.ts';
import { sharePictures, writeFiles } from '../io/temporary.ts';
import { compiledCommand, runCompiled } from '../support/compiled.ts';
import { killedRun } from '../support/killed-runs.ts';
import { editableBox } from '../support/random-edits.ts';
import { type Chance, seeded } from '../support/seeded.ts';
import { shareOf } from '../support/share-of.ts';
import { type TreeEntry, treeOf } from '../support/tree.ts';

const KILLS = shareOf(200);
/** Boxes on which builds are killed at the same time, one for each of two processors. */
const LANES = 2;

/** The newer of two cycles is open, and sealed. */
const OPEN = '2026-03-27';
const SEALED = '2026-03-12';
type Moment = typeof OPEN | typeof SEALED;

/** Stands in the title and the names of what is sealed; too long to turn up in a hash by chance. */
const MARK = 'zqxsecret';

type Content = 'one' | 'other';
type Folder = 'site' | 'backroom';
const FOLDERS: readonly Folder[] = ['site', 'backroom'];
type Tree = ReadonlyMap<string, TreeEntry>;

/** What a build from nothing gives: bytes by path, bookkeeping apart. */
type Wanted = Readonly<Record<Folder, ReadonlyMap<string, string>>>;

let root = '';
/** The files in which the two contents differ, of either. */
const files: Record<Content, Record<string, string | Uint8Array>> = { one: {}, other: {} };
const wanted = new Map<string, Wanted>();
/** Bytes of the pictures that only the open cycle has. */
const secretPictures = new Set<string>();
let coldMs = 0;

const wantedFor = (content: Content, moment: Moment): Wanted => {
  const one = wanted.get(`${content} ${moment}`);
  if (!one) throw new Error(`Expected a build of ${content} as of ${moment}`);
  return one;
};

const isBookkeeping = (path: string): boolean => path.startsWith('.lidlore');

const filesOf = (tree: Tree): ReadonlyMap<string, string> =>
  new Map(
    [...tree].flatMap(([path, { bytes }]) =>
      bytes === undefined || isBookkeeping(path) ? [] : [[path, bytes]],
    ),
  );

/** Where in a public folder something of the sealed cycle is, hidden and half made files among the rest. */
const sealedIn = (tree: Tree): readonly string[] =>
  [...tree].flatMap(([path, { bytes = '' }]) =>
    `${path}\n${bytes}`.toLowerCase().includes(MARK) || secretPictures.has(bytes) ? [path] : [],
  );

/** What is wrong in a folder of a finished build. */
const wrongsIn = (tree: Tree, right: ReadonlyMap<string, string>, owners: Tree): readonly string[] => {
  const folders = new Set(
    [...right.keys()].flatMap((path) => path.split('/').map((_, i, parts) => parts.slice(0, i).join('/'))),
  );
  return [
    ...[...right].flatMap(([path, bytes]) =>
      tree.get(path)?.bytes === bytes ? [] : [`${path} is not right`],
    ),
    ...[...owners].flatMap(([path, entry]) =>
      JSON.stringify(tree.get(path)) === JSON.stringify(entry) ? [] : [`the owner’s ${path} is changed`],
    ),
    ...[...tree].flatMap(([path, { kind }]) =>
      right.has(path) || owners.has(path) || path === '.lidlore' || (kind === 'folder' && folders.has(path))
        ? []
        : [`${path} is left over`],
    ),
  ];
};

beforeAll(async () => {
  root = await mkdtemp(join(tmpdir(), 'lidlore-killed-'));
  // Two cycles are enough, and each build is the shorter.
  const box = Object.fromEntries(
    Object.entries(await editableBox()).filter(([path]) => !path.includes('/2026-01/')),
  );
  for (const [path, text] of Object.entries(box))
    if (path.includes('/2026-03/') && typeof text === 'string')
      box[path] = text.replace('theme: ', 'theme: Zqxsecret ').replace('name: ', 'name: Zqxsecret ');
  for (const path of Object.keys(box).filter((one) => one.includes('/items/01-'))) {
    files.one[path] = box[path] ?? '';
    files.other[path] = `${box[path]}\nIt hangs on a nail by the door.\n`;
  }
  const replaced = 'content/cycles/2026-02/photos/box.jpg';
  files.one[replaced] = box[replaced] ?? '';
  files.other[replaced] = await photo(84, 70);

  const reference = join(root, 'reference');
  await writeFiles(reference, box);
  for (const content of ['one', 'other'] as const) {
    await writeFiles(reference, files[content]);
    for (const moment of [OPEN, SEALED] as const) {
      for (const name of [...FOLDERS, '.lidlore'])
        rmSync(join(reference, name), { recursive: true, force: true });
      await sharePictures(reference);
      const { status, stderr, ms } = await runCompiled(
        reference,
        'build',
        '--as-of',
        moment,
        '--without',
        'film',
      );
      expect({ status, stderr }).toMatchObject({ status: 0 });
      coldMs = ms;
      wanted.set(`${content} ${moment}`, {
        site: filesOf(treeOf(join(reference, 'site'))),
        backroom: filesOf(treeOf(join(reference, 'backroom'))),
      });
    }
    const shown = new Set(wantedFor(content, SEALED).site.values());
    for (const [path, bytes] of wantedFor(content, OPEN).site)
      if (path.startsWith('pictures/') && !shown.has(bytes)) secretPictures.add(bytes);
  }
  for (let lane = 0; lane < LANES; lane++)
    await writeFiles(join(root, `lane-${lane}`), { ...box, ...files.one });
}, 120_000);
afterAll(() => rm(root, { recursive: true, force: true }));

/** What a killed build was at, as far as the disk shows it. */
const workAt = (dir: string): string => {
  const has = (name: RegExp): boolean =>
    FOLDERS.some((folder) => readdirSync(join(dir, folder)).some((entry) => name.test(entry)));
  const remembered = existsSync(join(dir, '.lidlore')) ? readdirSync(join(dir, '.lidlore')) : [];
  if (has(/^\.lidlore-journal$/)) return 'putting files in place';
  if (has(/^\.lidlore-new-/)) return 'writing files aside';
  if (has(/^\.lidlore-lock/)) return 'planning what to publish';
  if (remembered.some((name) => name.endsWith('.pack') && !remembered.includes(`${name}.list`)))
    return 'writing what it remembers';
  if (remembered.length > 0 && remembered.every((name) => name === 'pictures')) return 'making pictures';
  return 'reading and making pages, or done';
};

interface Tried {
  readonly sort: string;
  /** What the killed build and the one that follows it are asked for. */
  readonly killed: Moment;
  readonly after: Moment;
  readonly prepare: () => Promise<void>;
}

const count = (counts: Map<string, number>, what: string): void =>
  void counts.set(what, (counts.get(what) ?? 0) + 1);

/** Kills builds of one box, one after another, until `kills` of them were killed. */
const killBuilds = async (
  dir: string,
  kills: number,
  chance: Chance,
  counts: Map<string, number>,
): Promise<void> => {
  let content: Content = 'one';
  let moment: Moment = OPEN;
  const build = async (asOf: Moment): Promise<void> => {
    const { status, stderr } = await runCompiled(dir, 'build', '--as-of', asOf, '--without', 'film');
    expect({ status, stderr }).toEqual({ status: 0, stderr: expect.not.stringContaining('bug') });
  };
  await build(moment);
  const before = FOLDERS.map((folder) => new Set(treeOf(join(dir, folder)).keys()));
  for (const folder of FOLDERS) await addOwnersThings(join(dir, folder), join(dir, `elsewhere-${folder}`));
  const owners = FOLDERS.map(
    (folder, i) => new Map([...treeOf(join(dir, folder))].filter(([path]) => !before[i]?.has(path))),
  );
  expect(owners.map(({ size }) => size > 10)).toEqual([true, true]);

  const edit = async (): Promise<void> => {
    content = content === 'one' ? 'other' : 'one';
    await writeFiles(dir, files[content]);
  };
  const forget = async (): Promise<void> => {
    rmSync(join(dir, '.lidlore'), { recursive: true, force: true });
    if (chance.share() < 0.5) await edit();
  };
  const other = (): Moment => (moment === OPEN ? SEALED : OPEN);
  const toTry = (): Tried => {
    const dice = chance.share();
    if (dice < 0.3) return { sort: 'after an edit', killed: moment, after: moment, prepare: edit };
    if (dice < 0.45)
      return { sort: 'with nothing remembered', killed: moment, after: moment, prepare: forget };
    const prepare = async (): Promise<void> => (chance.share() < 0.3 ? edit() : undefined);
    if (moment === OPEN)
      return { sort: 'with a cycle sealed again', killed: other(), after: other(), prepare };
    return dice < 0.75
      ? { sort: 'with a cycle revealed, and sealed after all', killed: OPEN, after: SEALED, prepare }
      : { sort: 'with a cycle revealed', killed: OPEN, after: OPEN, prepare };
  };

  const isPublishing = (): boolean => existsSync(join(dir, 'site', '.lidlore-lock'));
  const hasPictures = (): boolean => existsSync(join(dir, '.lidlore/pictures'));
  /**
   * About how long a build takes here and now until it publishes, and from then on, by what is tried. Publishing
   * and pictures take the smaller part, so that few would be killed at them if moments were drawn from the whole.
   */
  const lasts = new Map<string, number>();
  for (let killed = 0, tries = 0; killed < kills; tries++) {
    expect(tries, 'builds that had to be begun').toBeLessThan(kills * 2);
    const { sort, killed: asked, after, prepare } = toTry();
    await prepare();
    const atPictures = sort === 'with nothing remembered' && chance.share() < 0.5;
    const atPublishing = !atPictures && chance.share() < 0.4;
    const phase = `${sort} ${atPublishing} ${atPictures}`;
    const about = lasts.get(phase) ?? coldMs * (atPictures ? 0.06 : atPublishing ? 0.2 : 0.5);
    const run = await killedRun(
      compiledCommand('build', '--as-of', asked, '--without', 'film'),
      about * chance.share(),
      dir,
      atPublishing ? isPublishing : atPictures ? hasPictures : undefined,
    );
    const wasLate = !run.wasKilled || isPublishing() !== atPublishing;
    lasts.set(phase, about * (wasLate ? 0.93 : 1.03));
    if (run.wasKilled) {
      killed++;
      count(counts, sort);
      count(counts, `while ${workAt(dir)}`);
    }
    // Sealed before and sealed after, so not a moment in between may show it.
    if (run.wasKilled && moment === SEALED && asked === SEALED)
      expect(sealedIn(treeOf(join(dir, 'site'))), sort).toEqual([]);
    await build(after);
    moment = after;
    const right = wantedFor(content, moment);
    for (const [i, folder] of FOLDERS.entries()) {
      const tree = treeOf(join(dir, folder));
      expect(
        wrongsIn(tree, right[folder], owners[i] ?? new Map()),
        `${folder} ${sort}, try ${tries}`,
      ).toEqual([]);
      if (folder === 'site' && moment === SEALED) expect(sealedIn(tree), sort).toEqual([]);
    }
  }
};

describe('the checks of what follows a killed build', () => {
  const entry = (bytes: string): TreeEntry => ({ kind: 'file', bytes, identity: '' });
  const asTree = (site: ReadonlyMap<string, string>): Map<string, TreeEntry> =>
    new Map([...site].map(([path, bytes]) => [path, entry(bytes)]));
  test('see a sealed page, name or picture wherever it lies, and nothing where there is none', () => {
    const open = asTree(wantedFor('one', OPEN).site);
    const sealed = (): Map<string, TreeEntry> => asTree(wantedFor('one', SEALED).site);
    expect(sealedIn(open).length).toBeGreaterThan(8);
    expect(sealedIn(sealed())).toEqual([]);
    const [picture = ''] = secretPictures;
    for (const [path, bytes] of [
      ['.lidlore-new-1/3', picture],
      ['pictures/a.jpg', picture],
      ['.lidlore', `["boxes/2026-03-${MARK}.html"]`],
      [`boxes/${MARK}.html`, ''],
    ] as const)
      expect(sealedIn(sealed().set(path, entry(bytes))), path).toEqual([path]);
  });
  test('see a file that is missing, changed or left over, and an owner’s that was touched', () => {
    const right = wantedFor('one', OPEN).site;
    const owners = new Map([['mine.txt', { ...entry('mine'), identity: '1' }]]);
    const whole = (): Map<string, TreeEntry> => new Map([...asTree(right), ...owners]);
    expect(wrongsIn(whole(), right, owners)).toEqual([]);
    const missing = whole();
    missing.delete('index.html');
    expect(wrongsIn(missing, right, owners)).toEqual(['index.html is not right']);
    expect(wrongsIn(whole().set('index.html', entry('')), right, owners)).toEqual([
      'index.html is not right',
    ]);
    expect(wrongsIn(whole().set('old.html', entry('')), right, owners)).toEqual(['old.html is left over']);
    expect(wrongsIn(whole().set('.lidlore-lock', entry('')), right, owners)).toEqual([
      '.lidlore-lock is left over',
    ]);
    expect(wrongsIn(whole().set('mine.txt', { ...entry('mine'), identity: '2' }), right, owners)).toEqual([
      'the owner’s mine.txt is changed',
    ]);
  });
});

test(`${KILLS} builds killed at random moments: the next one gives the bytes of a build from nothing, shows nothing sealed and leaves the owner’s alone`, {
  timeout: 60_000 + KILLS * 5_000,
}, async () => {
  const seed = Number(process.env.LIDLORE_SEED ?? 20_260_327);
  const counts = new Map<string, number>();
  await Promise.all(
    Array.from({ length: LANES }, (_, lane) =>
      killBuilds(join(root, `lane-${lane}`), KILLS / LANES, seeded(seed + lane), counts),
    ),
  );
  const told = [...counts].sort(([a], [b]) => (a < b ? -1 : 1)).map(([what, times]) => `${times} ${what}`);
  console.info(`Builds killed by SIGKILL: ${KILLS} (seed ${seed}). ${told.join(', ')}.`);
  const publishing = [...counts].filter(([what]) => /aside|in place|publish/.test(what));
  expect(publishing.reduce((sum, [, times]) => sum + times, 0)).toBeGreaterThan(KILLS / 20);
  expect(counts.get('while making pictures')).toBeGreaterThan(KILLS / 60);
  expect(counts.get('with a cycle revealed, and sealed after all')).toBeGreaterThan(KILLS / 20);
});
