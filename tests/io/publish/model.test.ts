/** Any sequence of publishes, deaths, refusals, settlings and the owner's own changes, beside a model of what must be there. */
import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { intact } from '../../../src/io/publish/intact.ts';
import { publish } from '../../../src/io/publish/publish.ts';
import { settle } from '../../../src/io/publish/settle.ts';
import { readState } from '../../../src/io/publish/state.ts';
import { FAULTS, type Fault, faultyDisk } from '../../support/faulty-disk.ts';
import { type TreeEntry, textsOf, treeOf } from '../../support/tree.ts';
import { QUICK_DISK } from '../temporary.ts';
import { filesOf, type Site } from './box.ts';

let root = '';
beforeAll(async () => {
  root = await mkdtemp(join(QUICK_DISK, 'lidlore-model-'));
  await mkdir(join(root, 'elsewhere'));
  await writeFile(join(root, 'elsewhere/a.html'), 'theirs');
});
afterAll(() => rm(root, { recursive: true, force: true }));

/** Some are folders in one site and files in another. */
const PATHS = ['a.html', 'b.jpg', 'd/a.html', 'd/e/b.jpg', 'd/e', 'feed.xml', 'x', 'x/y.html', 'x/z/w.jpg'];

const siteArbitrary: fc.Arbitrary<Site> = fc
  .dictionary(fc.constantFrom(...PATHS), fc.constantFrom('one', 'two', 'three'))
  .map((site) =>
    Object.fromEntries(
      Object.entries(site).filter(
        ([path]) => !Object.keys(site).some((other) => path.startsWith(`${other}/`)),
      ),
    ),
  );

type Command =
  | { readonly do: 'publish'; readonly site: Site; readonly salt: string }
  | { readonly do: 'meet a fault'; readonly site: Site; readonly at: number; readonly fault: Fault }
  | { readonly do: 'settle' }
  | { readonly do: 'edit'; readonly path: string }
  | { readonly do: 'delete'; readonly path: string }
  | { readonly do: 'add'; readonly what: 'file' | 'link' | 'folder' | 'hidden'; readonly folder: string };

const commandArbitrary: fc.Arbitrary<Command> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.record({ do: fc.constant('publish'), site: siteArbitrary, salt: fc.constantFrom('', '2') }),
  },
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constant('meet a fault'),
      site: siteArbitrary,
      at: fc.nat(110),
      fault: fc.constantFrom(...FAULTS),
    }),
  },
  fc.record({ do: fc.constant('settle') }),
  fc.record({ do: fc.constant('edit'), path: fc.constantFrom(...PATHS) }),
  fc.record({ do: fc.constant('delete'), path: fc.constantFrom(...PATHS) }),
  fc.record({
    do: fc.constant('add'),
    what: fc.constantFrom('file', 'link', 'folder', 'hidden'),
    folder: fc.constantFrom('', 'd', 'd/e', 'x', 'x/z'),
  }),
);

/** The owner's things by path, as the tree showed them when they were made. */
type Owners = Map<string, TreeEntry>;

const isBelowOwners = (owners: Owners, path: string): boolean =>
  [...owners.keys()].some((one) => path.startsWith(`${one}/`));

const addOwners = async (
  dir: string,
  { what, folder }: Command & { do: 'add' },
  owners: Owners,
  n: number,
) => {
  const inFolder = treeOf(dir).get(folder)?.kind === 'folder' ? `${folder}/` : '';
  const path = `${inFolder}${what === 'hidden' ? '.' : ''}theirs-${n}`;
  await mkdir(dir, { recursive: true });
  if (what === 'folder') await mkdir(join(dir, path));
  else if (what === 'link') await symlink(join(root, 'elsewhere'), join(dir, path));
  else await writeFile(join(dir, path), 'theirs');
  const entry = treeOf(dir).get(path);
  if (entry) owners.set(path, entry);
};

/** An edit of a file that a stopped run was taking away cannot be told from a file that was put there after it: it is the owner's. */
const editFile = async (dir: string, path: string, owners: Owners): Promise<void> => {
  if (treeOf(dir).get(path)?.kind !== 'file' || owners.has(path)) return;
  await writeFile(join(dir, path), 'by hand');
  const { journal } = await readState(dir);
  const entry = treeOf(dir).get(path);
  if (entry && [...(journal?.first ?? []), ...(journal?.gone ?? [])].some((one) => one.path === path))
    owners.set(path, entry);
};

const checkOwners = (dir: string, owners: Owners): void => {
  const tree = treeOf(dir);
  for (const [path, entry] of owners) expect(tree.get(path), path).toEqual(entry);
  expect(textsOf(treeOf(join(root, 'elsewhere')))).toEqual({ 'a.html': 'theirs' });
};

const checkWhole = (dir: string, site: Site, owners: Owners): void => {
  checkOwners(dir, owners);
  const tree = treeOf(dir);
  const texts = textsOf(new Map([...tree].filter(([path]) => !owners.has(path))));
  expect(texts).toEqual(site);
  const needed = [...Object.keys(site), ...owners.keys()];
  for (const [path, { kind }] of tree)
    if (kind === 'folder' && !owners.has(path))
      expect(
        needed.some((one) => one.startsWith(`${path}/`)),
        `${path} is left over`,
      ).toBe(true);
  expect([...tree.keys()].filter((path) => path.startsWith('.lidlore'))).toEqual(['.lidlore']);
  expect(intact(dir)).toBeDefined();
};

let sequences = 0;
let faults = 0;

/** Runs the commands; the last thing is always a publish that must succeed. */
const play = async (commands: readonly Command[], last: Site): Promise<void> => {
  const dir = join(root, String(sequences++));
  await publish([{ dir, files: [] }]);
  const owners: Owners = new Map();
  for (const [n, command] of [...commands, { do: 'publish', site: last, salt: '' } as const].entries()) {
    // A thing of the owner's where a file should be is refused; what must then hold is that it stays.
    const isRefused = (site: Site): boolean =>
      Object.keys(site).some((path) => owners.has(path) || isBelowOwners(owners, path)) ||
      [...owners.keys()].some((one) => Object.keys(site).some((path) => one.startsWith(`${path}/`)));
    switch (command.do) {
      case 'publish':
        if (isRefused(command.site)) {
          await expect(publish([{ dir, files: filesOf(command.site) }])).rejects.toThrow('not made here');
          checkOwners(dir, owners);
        } else {
          await publish([{ dir, files: filesOf(command.site, command.salt) }]);
          checkWhole(dir, command.site, owners);
        }
        break;
      case 'meet a fault': {
        const faulty = faultyDisk(command.at, command.fault);
        await publish([{ dir, files: filesOf(command.site) }], { fs: faulty.fs }).catch(() => undefined);
        if (faulty.met()) faults++;
        checkOwners(dir, owners);
        break;
      }
      case 'settle':
        await settle(dir);
        checkOwners(dir, owners);
        break;
      case 'edit':
        await editFile(dir, command.path, owners);
        break;
      case 'delete':
        if (treeOf(dir).get(command.path)?.kind === 'file') await rm(join(dir, command.path));
        owners.delete(command.path);
        break;
      case 'add':
        await addOwners(dir, command, owners, n);
    }
  }
};

test('whatever happens, the owner’s things stay, and a publish gives what it was asked for', async () => {
  await fc.assert(fc.asyncProperty(fc.array(commandArbitrary, { maxLength: 12 }), siteArbitrary, play), {
    numRuns: 150,
    seed: 20260327,
  });
  process.stdout.write(`Sequences played: ${sequences}, with ${faults} faults.\n`);
  expect(faults).toBeGreaterThan(100);
});

test('the model finds fault with a publish that loses something of the owner’s', async () => {
  const owners: Owners = new Map();
  const dir = join(root, 'checked');
  await publish([{ dir, files: filesOf({ 'a.html': 'one' }) }]);
  await addOwners(dir, { do: 'add', what: 'hidden', folder: '' }, owners, 1);
  checkWhole(dir, { 'a.html': 'one' }, owners);
  await rm(join(dir, '.theirs-1'));
  expect(() => checkOwners(dir, owners)).toThrow();
  owners.clear();
  await mkdir(join(dir, 'left'));
  expect(() => checkWhole(dir, { 'a.html': 'one' }, owners)).toThrow('left is left over');
});
