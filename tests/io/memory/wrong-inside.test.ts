/** Builds over a memory whose values are sound as bytes, and wrong inside. */
import {
  closeSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { entriesIn, PACK_HEAD, packedEntry } from '../../../src/io/memory/pack.ts';
import { lidlore } from '../../cli/terminal.ts';
import { editableBox } from '../../support/random-edits.ts';
import { type Chance, seeded } from '../../support/seeded.ts';
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

type Change = (value: Buffer, chance: Chance) => Uint8Array;

/** Values that are read as JSON, and others. */
const isJson = (value: Buffer): boolean => /^[[{"]/.test(value.toString('latin1', 0, 1));

/** Writes every value of the packs anew, some of them changed, each with a checksum that is right. */
const rewrite = (share: number, chance: Chance, change: Change): number => {
  let changed = 0;
  for (const name of readdirSync(memory()).filter((one) => one.endsWith('.pack'))) {
    const path = join(memory(), name);
    const file = openSync(path, 'r');
    const bytes = readFileSync(path);
    const entries = entriesIn(file, bytes.length);
    closeSync(file);
    const pieces = entries.flatMap(({ key, offset, length }) => {
      const value = bytes.subarray(offset, offset + length);
      const other = chance.share() < share ? change(value, chance) : value;
      if (!value.equals(other)) changed += 1;
      return packedEntry(key, other);
    });
    writeFileSync(path, Buffer.concat([PACK_HEAD, ...pieces]));
    rmSync(`${path}.list`, { force: true });
  }
  return changed;
};

/** Some node of a value in JSON becomes another. */
const someNode =
  (other: unknown): Change =>
  (value, chance) => {
    if (!isJson(value)) return value;
    const nodes: [Record<string, unknown>, string][] = [];
    let whole: unknown;
    try {
      whole = JSON.parse(value.toString());
    } catch {
      return value;
    }
    const visit = (node: unknown): void => {
      if (node === null || typeof node !== 'object') return;
      for (const key of Object.keys(node)) {
        nodes.push([node as Record<string, unknown>, key]);
        visit((node as Record<string, unknown>)[key]);
      }
    };
    visit(whole);
    if (nodes.length === 0) return value;
    const [node, key] = chance.one(nodes);
    if (other === undefined) delete node[key];
    else node[key] = other;
    return Buffer.from(JSON.stringify(whole));
  };

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
  ['a key less', 1, someNode(undefined)],
  ['a key less here and there', 0.1, someNode(undefined)],
  ['null for something', 1, someNode(null)],
  ['a number for something', 1, someNode(3)],
  ['a word for something', 1, someNode('word')],
  ['a list for something', 1, someNode([])],
];

test.each(CHANGES)(
  'values that are %s stop no build, and nobody is told of a bug',
  async (_, share, change) => {
    await rm(memory(), { recursive: true, force: true });
    await cp(join(root, 'sound'), memory(), { recursive: true });
    for (const name of readdirSync(memory()).filter((one) => one.endsWith('.json')))
      rmSync(join(memory(), name));
    expect(rewrite(share, seeded(2), change)).toBeGreaterThan(0);
    const { status, stderr } = await build();
    expect({ status, stderr }).toEqual({ status: 0, stderr: expect.not.stringContaining('bug') });
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
