/** Builds over a memory whose values are sound as bytes, and wrong inside. */
import { readdirSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { lidlore } from '../../cli/terminal.ts';
import { editableBox } from '../../support/random-edits.ts';
import { seeded } from '../../support/seeded.ts';
import { type Change, rewriteMemory, someNode } from '../../support/wrong-memory.ts';
import { writeFiles } from '../temporary.ts';

let root = '';
const memory = (): string => join(root, '.lidlore');
const build = () => lidlore(root, 'build', '--as-of', '2026-03-27', '--without', 'film');

beforeAll(async () => {
  root = await mkdtemp(join(tmpdir(), 'lidlore-wrong-'));
  await writeFiles(root, await editableBox());
  expect(await build()).toMatchObject({ status: 0 });
  await cp(memory(), join(root, 'sound'), { recursive: true });
}, 60_000);
afterAll(() => rm(root, { recursive: true, force: true }));

const text =
  (one: string): Change =>
  () =>
    Buffer.from(one);

const CHANGES: readonly (readonly [string, number, Change])[] = [
  ['null', 1, text('null')],
  ['an object of nothing', 1, text('{}')],
  ['a list of nothing', 1, text('[]')],
  ['a list of nulls', 1, text('[null,null,null]')],
  ['a number', 1, text('7')],
  ['a word', 1, text('"fine"')],
  ['no JSON', 1, text('{"a":')],
  ['empty', 1, text('')],
  ['bytes of chance', 1, (value, chance) => Buffer.from(value.map(() => chance.below(256)))],
  ['the first half', 1, (value) => value.subarray(0, value.length >> 1)],
  ['null here and there', 0.1, text('null')],
  ['a list of nothing here and there', 0.1, text('[]')],
];

const NODES: readonly (readonly [string, Change])[] = [
  ['nothing', someNode(undefined)],
  ['null', someNode(null)],
  ['a number', someNode(3)],
  ['a word', someNode('word')],
  ['a list', someNode([])],
];

/** Puts a memory back as it was, and rewrites a share of its values. */
const wrongly = async (share: number, change: Change): Promise<void> => {
  await rm(memory(), { recursive: true, force: true });
  await cp(join(root, 'sound'), memory(), { recursive: true });
  for (const name of readdirSync(memory()).filter((one) => one.endsWith('.json')))
    rmSync(join(memory(), name));
  expect(rewriteMemory(memory(), share, seeded(2), change)).toBeGreaterThan(0);
};

test.each(CHANGES)(
  'values that are %s stop no build, and nobody is told of a bug',
  async (_, share, change) => {
    await wrongly(share, change);
    const { status, stderr } = await build();
    expect({ status, stderr }).toEqual({ status: 0, stderr: expect.not.stringContaining('bug') });
  },
);

// Whoever writes a value anew with its checksum can have it say anything, and only the records could tell: it may seem that
// something must be fixed.
test.each(NODES)(
  'where %s is written for some part of each value, nobody is told of a bug',
  async (_, change) => {
    await wrongly(1, change);
    const { status, stderr } = await build();
    expect(stderr).not.toContain('bug');
    expect([0, 1]).toContain(status);
  },
);

test('a file that a stopped run left half written is taken away once nobody can be writing to it', async () => {
  await rm(memory(), { recursive: true, force: true });
  await cp(join(root, 'sound'), memory(), { recursive: true });
  const old = ['a.pack.1.part', 'pictures/b.2.part', 'last-build-c.json.3.part'].map((name) =>
    join(memory(), name),
  );
  for (const path of old) {
    writeFileSync(path, 'half');
    utimesSync(path, new Date(Date.now() - 7_200_000), new Date(Date.now() - 7_200_000));
  }
  const fresh = join(memory(), 'd.pack.4.part');
  writeFileSync(fresh, 'half');
  // Pictures are looked through when one has to be made.
  const [picture = ''] = readdirSync(join(memory(), 'pictures'));
  rmSync(join(memory(), 'pictures', picture));
  rmSync(join(root, 'site'), { recursive: true });
  expect(await build()).toMatchObject({ status: 0 });
  expect(old.filter((path) => statSync(path, { throwIfNoEntry: false }))).toEqual([]);
  expect(statSync(fresh).size).toBe(4);
});
