/** Builds over a memory that was harmed in every way: the bytes are those of a build without one, and nobody is told of a bug. */
import {
  chmodSync,
  chownSync,
  cpSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { lidlore } from '../../cli/terminal.ts';
import { EDITS, editableBox } from '../../support/random-edits.ts';
import { type Chance, seeded } from '../../support/seeded.ts';
import { halfOf, isWhole, shareOf } from '../../support/share-of.ts';
import { textsOf, treeOf } from '../../support/tree.ts';
import { writeFiles } from '../temporary.ts';

const AS_OF = '2026-03-27';

/** Who owns nothing, by custom: what stops everybody else does not stop the superuser. */
const NOBODY = 65_534;

let root = '';
/** The memory of a build that was whole, several packs in it. */
let sound = '';
const CONTENTS = ['edited', 'as it was'] as const;
/** What a build without a memory makes of each content. */
const wanted = new Map<'as it was' | 'edited', object>();
const STORY = 'content/cycles/2026-02/items/01-bread-knife.md';
let storyAsItWas = '';

const memory = (): string => join(root, '.lidlore');
const made = (): object => ({
  site: textsOf(treeOf(join(root, 'site'))),
  backroom: textsOf(treeOf(join(root, 'backroom'))),
});
const removeMade = (): void => {
  for (const name of ['site', 'backroom']) rmSync(join(root, name), { recursive: true, force: true });
};
const removeMemory = (): void => rmSync(memory(), { recursive: true, force: true });
const build = () => lidlore(root, 'build', '--as-of', AS_OF, '--without', 'film');

const giveContent = (content: 'as it was' | 'edited'): void => {
  const text = content === 'edited' ? `${storyAsItWas}\nIt cuts the crust as well.\n` : storyAsItWas;
  if (readFileSync(join(root, STORY), 'utf8') !== text) writeFileSync(join(root, STORY), text);
};

const built = async (): Promise<void> => {
  const { status, stderr } = await build();
  expect({ status, stderr }).toMatchObject({ status: 0 });
};

beforeAll(async () => {
  root = await mkdtemp(join(tmpdir(), 'lidlore-damaged-'));
  sound = join(root, 'sound');
  await writeFiles(root, await editableBox());
  storyAsItWas = readFileSync(join(root, STORY), 'utf8');
  for (const content of CONTENTS) {
    giveContent(content);
    removeMade();
    removeMemory();
    await built();
    wanted.set(content, made());
  }
  expect(wanted.get('edited')).not.toEqual(wanted.get('as it was'));
  // A few edits there and back leave packs, one for each run.
  const chance = seeded(5);
  const edits = EDITS.filter(({ sort }) => /^(a palette|a voice|parcels|the box’s name)$/.test(sort));
  await cp(join(root, 'content'), join(root, 'kept-content'), { recursive: true, preserveTimestamps: true });
  for (let i = 0; i < 3; i++) {
    await chance.one(edits).apply(root, chance);
    await built();
  }
  rmSync(join(root, 'content'), { recursive: true });
  renameSync(join(root, 'kept-content'), join(root, 'content'));
  await built();
  expect(made()).toEqual(wanted.get('as it was'));
  await cp(memory(), sound, { recursive: true });
}, 240_000);
afterAll(() => rm(root, { recursive: true, force: true }));

const giveMemory = (): void => {
  removeMemory();
  cpSync(sound, memory(), { recursive: true });
};

const filesIn = (dir: string, ending: string): readonly string[] =>
  readdirSync(dir)
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => join(dir, name));
const packs = (): readonly string[] => filesIn(memory(), '.pack');
const lists = (): readonly string[] => filesIn(memory(), '.list');
const pictures = (): readonly string[] => filesIn(join(memory(), 'pictures'), '');

const flip = (file: string, chance: Chance, bytes = 1): void => {
  const content = readFileSync(file);
  for (let i = 0; i < bytes; i++) {
    const at = chance.below(content.length);
    content[at] = (content[at] ?? 0) ^ (1 + chance.below(255));
  }
  writeFileSync(file, content);
};

const cut = (file: string, chance: Chance): void => truncateSync(file, chance.below(lstatSync(file).size));

const exchange = (one: string, other: string): void => {
  renameSync(one, `${one}.aside`);
  renameSync(other, one);
  renameSync(`${one}.aside`, other);
};

const folderInstead = (file: string): void => {
  rmSync(file);
  mkdirSync(file);
  writeFileSync(join(file, 'something'), 'of somebody’s');
};

const exchangeAll = (files: readonly string[]): void => {
  files.forEach((file, i) => {
    const next = files[i + 1];
    if (i % 2 === 0 && next !== undefined) exchange(file, next);
  });
};

const each =
  (files: () => readonly string[], harm: (file: string, chance: Chance) => void) =>
  (chance: Chance): void => {
    for (const file of files()) harm(file, chance);
  };
const some =
  (files: () => readonly string[], harm: (file: string, chance: Chance) => void) =>
  (chance: Chance): void =>
    harm(chance.one(files()), chance);

interface Harm {
  readonly name: string;
  readonly times: number;
  readonly harm: (chance: Chance) => void;
}

const HARMS: readonly Harm[] = [
  { name: 'nothing harmed', times: 1, harm: () => {} },
  { name: 'a pack cut', times: shareOf(6), harm: some(packs, cut) },
  {
    name: 'every pack cut, and its list gone',
    times: shareOf(4),
    harm: (chance) => {
      each(packs, cut)(chance);
      each(lists, (file) => rmSync(file))(chance);
    },
  },
  { name: 'a byte of each pack changed', times: shareOf(6), harm: each(packs, flip) },
  {
    name: 'a hundred bytes of each pack changed',
    times: shareOf(6),
    harm: each(packs, (f, c) => flip(f, c, 100)),
  },
  {
    name: 'a hundred bytes of each pack changed, and its list gone',
    times: shareOf(4),
    harm: (chance) => {
      each(packs, (file) => flip(file, chance, 100))(chance);
      each(lists, (file) => rmSync(file))(chance);
    },
  },
  {
    name: 'every value of each pack changed, its list sound',
    times: 2,
    harm: each(packs, (file) => writeFileSync(file, Buffer.alloc(lstatSync(file).size, 0x5a))),
  },
  { name: 'packs exchanged', times: 2, harm: () => exchangeAll(packs()) },
  { name: 'lists exchanged', times: 2, harm: () => exchangeAll(lists()) },
  {
    name: 'a pack in its list’s place',
    times: 1,
    harm: () => exchangeAll([packs(), lists()].flatMap(([f]) => f ?? [])),
  },
  {
    name: 'every pack another’s bytes of the same length',
    times: 1,
    harm: () => {
      const [first = ''] = packs();
      const bytes = readFileSync(first);
      for (const file of packs().slice(1)) {
        writeFileSync(file, bytes);
        cpSync(`${first}.list`, `${file}.list`);
      }
    },
  },
  { name: 'packs emptied', times: 1, harm: each(packs, (file) => truncateSync(file)) },
  { name: 'lists emptied', times: 1, harm: each(lists, (file) => truncateSync(file)) },
  { name: 'lists cut', times: shareOf(4), harm: each(lists, cut) },
  { name: 'bytes of lists changed', times: shareOf(4), harm: each(lists, flip) },
  { name: 'folders where packs were', times: 1, harm: each(packs, folderInstead) },
  { name: 'a folder where one pack was', times: 2, harm: some(packs, folderInstead) },
  { name: 'folders where lists were', times: 1, harm: each(lists, folderInstead) },
  {
    name: 'links that lead nowhere, and in a circle, where packs were',
    times: 1,
    harm: each(packs, (file, chance) => {
      rmSync(file);
      symlinkSync(chance.share() < 0.5 ? 'nowhere' : file, file);
    }),
  },
  { name: 'a picture emptied', times: 1, harm: some(pictures, (file) => truncateSync(file)) },
  { name: 'every picture cut', times: 2, harm: each(pictures, cut) },
  { name: 'a byte of every picture changed', times: 2, harm: each(pictures, flip) },
  {
    name: 'every picture some text',
    times: 1,
    harm: each(pictures, (file) => writeFileSync(file, 'a picture of something else')),
  },
  { name: 'pictures exchanged among each other', times: 1, harm: () => exchangeAll(pictures()) },
  {
    name: 'one picture under every name',
    times: 1,
    harm: () => {
      const bytes = readFileSync(pictures()[0] ?? '');
      for (const file of pictures()) writeFileSync(file, bytes);
    },
  },
  { name: 'folders where pictures were', times: 1, harm: each(pictures, folderInstead) },
  {
    name: 'a file where the pictures were',
    times: 1,
    harm: () => {
      rmSync(join(memory(), 'pictures'), { recursive: true });
      writeFileSync(join(memory(), 'pictures'), '');
    },
  },
  {
    name: 'a file where the memory was',
    times: 1,
    harm: () => {
      removeMemory();
      writeFileSync(memory(), 'not a folder');
    },
  },
  {
    name: 'all at once',
    times: shareOf(6),
    harm: (chance) => {
      for (const file of [...packs(), ...lists(), ...pictures()]) {
        const fate = chance.below(6);
        if (fate === 0) cut(file, chance);
        else if (fate === 1) flip(file, chance, 3);
        else if (fate === 2) rmSync(file);
      }
    },
  },
];

const buildsAsWithout = async (content: 'as it was' | 'edited', harmed: string): Promise<void> => {
  const { status, stderr } = await build();
  expect({ status, stderr }, harmed).toEqual({ status: 0, stderr: expect.not.stringContaining('bug') });
  expect(made(), harmed).toEqual(wanted.get(content));
};

/** Harms after which it is built once more. */
const again = halfOf(HARMS.map(({ name }) => name));

describe('a build gives the bytes of a build without a memory, with', () => {
  test.each(HARMS)('$name ($times ×)', async ({ times, harm, name }) => {
    const chance = seeded(times + name.length);
    for (let i = 0; i < times; i++) {
      const content = chance.share() < 0.5 ? 'as it was' : 'edited';
      giveContent(content);
      removeMade();
      giveMemory();
      harm(chance);
      await buildsAsWithout(content, `${name}, number ${i}`);
      if (i > 0 || !again.includes(name)) continue;
      // What is left of the harm does not come back.
      removeMade();
      await buildsAsWithout(content, `${name}, number ${i}, once more`);
    }
  });
});

describe('what the last build left is', () => {
  const last = (): readonly string[] => filesIn(memory(), '.json');
  /** Another report in the same file: what was written to tell damage stays as it was. */
  const rewritten =
    (change: (whole: Record<string, unknown>) => unknown) =>
    (file: string): void => {
      const [text = '', ...rest] = readFileSync(file, 'utf8').split('\n');
      writeFileSync(file, [JSON.stringify(change(JSON.parse(text))), ...rest].join('\n'));
    };
  beforeAll(async () => {
    giveContent('as it was');
    removeMade();
    giveMemory();
    await built();
    // Told again, it is in the memory for sure: files changed a moment before are looked at once more.
    await new Promise((done) => setTimeout(done, 100));
    await built();
    expect((await build()).stdout).toMatch(/unchanged|Nothing/i);
    rmSync(sound, { recursive: true });
    cpSync(memory(), sound, { recursive: true });
  });
  test.each<readonly [string, (file: string, chance: Chance) => void]>([
    ['emptied', (file) => truncateSync(file)],
    ['cut', cut],
    ['changed in a byte', flip],
    ['null', (file) => writeFileSync(file, 'null')],
    ['a folder', folderInstead],
    [
      'in the form that has no digest',
      (file) => writeFileSync(file, readFileSync(file, 'utf8').split('\n')[0] ?? ''),
    ],
    ['without a report', rewritten(({ report: _, ...rest }) => rest)],
    ['with an empty report', rewritten((whole) => ({ ...whole, report: {} }))],
    ['with a report that is a word', rewritten((whole) => ({ ...whole, report: 'fine' }))],
    [
      'with a report of the right keys and wrong values',
      rewritten((whole) => ({
        ...whole,
        report: { diagnostics: 5, report: { sealed: 'none', proofs: null } },
      })),
    ],
    [
      'with findings of nothing',
      rewritten((whole) => ({ ...whole, report: { ...Object(whole.report), diagnostics: [{}, null] } })),
    ],
  ])('%s: the next build looks for itself', async (name, harm) => {
    const chance = seeded(name.length);
    for (let i = 0; i < (/cut|byte/.test(name) ? shareOf(12) : 1); i++) {
      giveMemory();
      const [file = ''] = last();
      harm(file, chance);
      const { status, stderr, stdout } = await build();
      expect({ status, stderr }).toEqual({ status: 0, stderr: expect.not.stringContaining('bug') });
      expect(stdout).toContain('64 files');
      expect(made()).toEqual(wanted.get('as it was'));
    }
  });
});

describe('where the disk lets nobody', () => {
  const forbid = (files: readonly string[]): void => {
    for (const file of files) chmodSync(file, 0);
  };
  const MODES: readonly (readonly [string, () => void])[] = [
    ['read a pack', () => forbid(packs())],
    ['read a picture', () => forbid(pictures())],
    ['read a list', () => forbid(lists())],
    ['list the memory', () => chmodSync(memory(), 0o300)],
    ['list the pictures', () => chmodSync(join(memory(), 'pictures'), 0o300)],
    ['write into the memory', () => chmodSync(memory(), 0o500)],
    ['do anything in the memory', () => chmodSync(memory(), 0)],
    [
      'write into the memory, and nothing of use is there',
      () => {
        removeMemory();
        mkdirSync(memory(), { mode: 0o500 });
        if (process.getuid?.() === 0) chownSync(memory(), NOBODY, NOBODY);
      },
    ],
    [
      'write pictures',
      () => {
        rmSync(join(memory(), 'pictures'), { recursive: true });
        mkdirSync(join(memory(), 'pictures'), { mode: 0o500 });
        if (process.getuid?.() === 0) chownSync(join(memory(), 'pictures'), NOBODY, NOBODY);
      },
    ],
  ];
  const giveTo = (dir: string, user: number): void => {
    chownSync(dir, user, user);
    for (const name of existsSync(dir) ? readdirSync(dir, { withFileTypes: true }) : []) {
      const path = join(dir, name.name);
      if (name.isDirectory()) giveTo(path, user);
      else chownSync(path, user, user);
    }
  };
  /** As somebody whom the disk may refuse. */
  const asNobody = async (work: () => Promise<void>): Promise<void> => {
    const isSuperuser = process.geteuid?.() === 0;
    if (isSuperuser) process.seteuid?.(NOBODY);
    try {
      await work();
    } finally {
      if (isSuperuser) process.seteuid?.(0);
    }
  };
  test.each(MODES)('%s, a build does without', async (name, change) => {
    // The one content and the other by turns, and both where all is tried.
    const turn = MODES.findIndex(([mode]) => mode === name) % 2;
    for (const content of CONTENTS.filter((_, i) => isWhole || i === turn)) {
      giveContent(content);
      removeMade();
      giveMemory();
      if (process.getuid?.() === 0) giveTo(root, NOBODY);
      change();
      await asNobody(() => buildsAsWithout(content, name));
      chmodSync(memory(), 0o700);
    }
  });
});
