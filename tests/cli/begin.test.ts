import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openDialogue } from '../../src/cli/dialogue.ts';
import { run } from '../../src/cli/run.ts';
import { parseFile } from '../../src/content/front-matter.ts';
import { planCycle, slugsFor } from '../../src/workspace/begin/plan-records.ts';
import { photo } from '../io/photos.ts';
import { contents, temporary, writeFiles } from '../io/temporary.ts';
import { shareOf } from '../support/share-of.ts';
import { lidlore } from './terminal.ts';

const ENV = { TZ: 'Europe/London', LANG: 'en_GB.UTF-8' };

/** Somebody at a terminal, who types these lines and then stops. */
const typed = async (cwd: string, lines: readonly string[], ...words: readonly string[]) => {
  const left = [...lines];
  let [stdout, stderr] = ['', ''];
  const status = await run(words, {
    stdin: { async *[Symbol.asyncIterator]() {} },
    stdout: { write: (text) => (stdout += text) },
    stderr: { write: (text) => (stderr += text) },
    cwd,
    env: ENV,
    isTTY: true,
    dialogue: async () => ({
      ask: async (question) => {
        stderr += question;
        return left.shift();
      },
      close: () => {},
    }),
  });
  return { status, stdout, stderr, left };
};

const BOX = [
  '--name',
  'Tin & Tansy',
  '--about',
  'A box for people who dry what they grow.',
  '--currency',
  'GBP',
  '--zone',
  'Europe/London',
  '--language',
  'en-GB',
];
const CYCLE = ['--theme', 'First Sowings', '--things', 'Wooden seed tray; Brass plant mister'];

/** A record’s fields as they are read. */
const fieldsIn = async (dir: string, path: string) =>
  parseFile({ path, text: await readFile(join(dir, 'content', path), 'utf8') }).data;

describe('somebody who is asked', () => {
  const ANSWERS = [
    ...[
      'Tin & Tansy',
      'A box for people who dry what they grow.',
      'tinandtansy.example',
      '',
      'tinandtansy.example/join',
    ],
    ...[
      'First Sowings',
      'Wooden seed tray, 30 × 12 cm',
      'Brass plant mister',
      'Heather honey',
      '',
      '2 mister',
      '',
      '1',
      '',
      '',
    ],
  ];

  test('has a box and its first cycle', async () => {
    const dir = await temporary();
    const said = await typed(dir, ANSWERS, 'begin', '2026-05');
    expect({ status: said.status, left: said.left }).toEqual({ status: 0, left: [] });
    expect(await fieldsIn(dir, 'box.md')).toMatchObject({
      name: 'Tin & Tansy',
      url: 'https://tinandtansy.example',
      currency: 'GBP',
      timeZone: 'Europe/London',
      lang: 'en-GB',
      calls: { join: { address: 'https://tinandtansy.example/join' } },
    });
    const item = 'cycles/2026-05/items/';
    expect(await fieldsIn(dir, `${item}02-brass-plant-mister.md`)).toMatchObject({
      kind: 'mister',
      brand: null,
    });
    expect(await fieldsIn(dir, `${item}03-heather-honey.md`)).toMatchObject({
      category: ['food'],
      allergens: null,
    });
    expect(said.stdout).toContain('lidlore build --as-of 2026-05-15T19:00');
  });

  test('is asked again where an answer will not do, in the words of its field', async () => {
    const dir = await temporary();
    const said = await typed(
      dir,
      [
        ...['Tin', '', 'x'.repeat(161), 'A box.', 'no address', ...ANSWERS.slice(2, 5)],
        ...['soon', 'Dec 2026', ...ANSWERS.slice(5, -2)],
        ...['first of May', '1st December', ''],
      ],
      'begin',
    );
    expect(said.status).toBe(0);
    expect(said.stderr).toContain('expected a text of at most 160 characters. Please try again.');
    expect(said.stderr).toContain('expected an address, as sillandsprig.example or https://');
    expect(said.stderr).toContain('Unexpected “soon”, expected a month');
    expect(said.stderr).toContain('Unexpected “first of May”, expected a date');
    expect(await fieldsIn(dir, 'cycles/2026-12/cycle.md')).toMatchObject({ shipped: '2026-12-01' });
  });

  test.each(ANSWERS.map((_, count) => count))(
    'leaves nothing behind who stops after %i answers',
    async (count) => {
      const dir = await temporary();
      const { status, stderr } = await typed(dir, ANSWERS.slice(0, count), 'begin', '2026-05');
      expect({ status, files: await contents(dir) }).toEqual({ status: 130, files: {} });
      expect(stderr).toContain('Nothing was made');
    },
  );
});

describe('where nobody can be asked', () => {
  test('what has no default is named, and nothing is made', async () => {
    const dir = await temporary();
    const { status, stderr } = await lidlore(dir, 'begin', '--theme', 'Tea');
    expect(status).toBe(2);
    for (const option of ['name', 'about']) expect(stderr).toContain(`--${option}  `);
    expect(await contents(dir)).toEqual({});
  });

  test.each([
    [['begin', 'may'], 'expected a month'],
    [['begin', ...BOX, '--address', 'nowhere'], 'Unexpected --address nowhere, expected an address'],
    [['begin', ...BOX, ...CYCLE, '--lead', '3'], 'expected a number from 1 to 2'],
    [
      ['begin', ...BOX, ...CYCLE, '--shipped', '2026-02-30'],
      'Unexpected --shipped 2026-02-30, expected a date',
    ],
    [['begin', ...BOX, '--theme', 'A', '--from', 'none.csv'], 'There is no file none.csv'],
    [['begin', ...BOX, ...CYCLE, '--photos', 'none'], 'There is no folder none'],
  ])('%j is met with advice', async (words, advice) => {
    const dir = await temporary();
    const { status, stderr } = await lidlore(dir, ...words);
    expect(status).toBe(2);
    expect(stderr).toContain(advice);
    expect(await contents(dir)).toEqual({});
  });

  test('a cycle comes after the last, by its days, and picks up its peek; nothing is written over', async () => {
    const dir = await temporary();
    expect(
      (
        await lidlore(
          dir,
          'begin',
          '2026-03',
          ...BOX,
          ...CYCLE,
          '--shipped',
          '2026-03-03',
          '--reveal',
          '2026-03-19T19:00',
        )
      ).status,
    ).toBe(0);
    const march = 'content/cycles/2026-03/';
    const record = await readFile(join(dir, `${march}cycle.md`), 'utf8');
    const item = '---\nname: Tray\nkind: seed tray\nlead: true\nbrand: A\ndescription: B.\n---\n\nC.\n';
    await writeFiles(dir, {
      [`${march}cycle.md`]: record.replace('\n---\n\n', '\npeek:\n  text: Find two screws.\n---\n\n'),
      [`${march}items/01-wooden-seed-tray.md`]: item,
      [`${march}items/02-brass-plant-mister.md`]: item.replace('lead: true\n', '').replace('Tray', 'Mister'),
    });
    const before = await contents(join(dir, march));
    expect(
      await lidlore(dir, 'begin', '--theme', 'Walls', '--things', '猫の家; Peek; Seed trays in oak; Peek'),
    ).toMatchObject({ status: 0 });
    expect(await fieldsIn(dir, 'cycles/2026-04/cycle.md')).toMatchObject({
      shipped: '2026-04-07',
      reveal: '2026-04-23T19:00',
    });
    expect(await readFile(join(dir, 'content/cycles/2026-04/cycle.md'), 'utf8')).toContain(
      'Find two screws.',
    );
    expect(Object.keys(await contents(join(dir, 'content/cycles/2026-04/items')))).toEqual([
      ...['01-猫の家.md', '02-peek-2.md', '03-seed-trays-in-oak.md', '04-peek-3.md'],
    ]);
    expect(await fieldsIn(dir, 'cycles/2026-04/items/03-seed-trays-in-oak.md')).toMatchObject({
      kind: 'seed tray',
    });
    expect((await lidlore(dir, 'begin', '2026-03', ...CYCLE)).stderr).toContain(
      'The cycle 2026-03 stands already',
    );
    expect(await contents(join(dir, march))).toEqual(before);
  });

  test('what lies in the way of a folder is said, and what was made is gone', async () => {
    const dir = await temporary({ 'content/cycles/2026-05/photos': 'a file' });
    const said = await lidlore(dir, 'begin', '2026-05', ...BOX, ...CYCLE);
    expect(said.status).toBe(2);
    expect(said.stderr).toContain('Unexpected content/cycles/2026-05/photos, which stands there already');
    expect(await contents(dir)).toEqual({ 'content/cycles/2026-05/photos': 'a file' });
  });
});

test('a list gives records and keeps what is the owner’s own out of every page; then all builds', {
  timeout: 60_000,
}, async () => {
  const dir = await temporary({
    'items.csv': Buffer.from(
      '\ufeffItem;Maker;Sentence;RRP;Supplier;Story\r\nOak seed tray;Tolley Joinery;A tray of oak.;£1,016.00;Secret & Sons;"First.\r\n\r\nThen."\r\nMister;Coppice;A mister.;24,50;;Told.\r\nTotal;;;1040;;\r\n',
      'utf16le',
    ),
    'drop/tray.jpg': await photo(900, 900),
    'drop/IMG_2.jpg': await photo(1000, 1000),
    'drop/list.txt': '',
  });
  const words = [
    'begin',
    '2026-05',
    ...BOX,
    '--theme',
    'Sowing',
    '--from',
    'items.csv',
    '--columns',
    'description = Sentence',
    '--photos',
    'drop',
  ];
  const said = await lidlore(dir, ...words);
  expect(said).toMatchObject({ status: 0 });
  expect(said.stderr).toContain('adds up the others');
  expect(await fieldsIn(dir, 'cycles/2026-05/items/01-oak-seed-tray.md')).toMatchObject({
    ...{ price: '1016.00', brand: 'Tolley Joinery', description: 'A tray of oak.' },
    image: [{ file: 'tray.jpg', alt: 'Oak seed tray' }],
  });
  expect(await fieldsIn(dir, 'cycles/2026-05/items/02-mister.md')).toMatchObject({
    image: [{ file: 'IMG_2.jpg' }],
  });
  const built = await lidlore(dir, 'build', '--as-of', '2026-06-01');
  expect(built.stderr).not.toContain('must fix');
  expect(built.status).toBe(0);
  for (const folder of ['site', 'backroom'])
    for (const text of Object.values(await contents(join(dir, folder))))
      expect(text).not.toContain('Secret & Sons');
});

test('photos that come later are added to records that are not written yet, and the files stay where they were', async () => {
  const dir = await temporary();
  await lidlore(dir, 'begin', '2026-05', ...BOX, ...CYCLE);
  await writeFiles(dir, { 'phone/mister.HEIC': 'a', 'phone/the whole box.jpg': 'b', 'phone/IMG_7.jpg': 'c' });
  const record = join(dir, 'content/cycles/2026-05/items/02-brass-plant-mister.md');
  const before = await readFile(record, 'utf8');
  const said = await lidlore(dir, 'begin', '2026-05', '--photos', 'phone', '--pairs', '1=none');
  expect(said).toMatchObject({ status: 0 });
  expect(await fieldsIn(dir, 'cycles/2026-05/cycle.md')).toMatchObject({
    photo: { file: 'the whole box.jpg' },
  });
  const after = await readFile(record, 'utf8');
  expect(await fieldsIn(dir, 'cycles/2026-05/items/02-brass-plant-mister.md')).toMatchObject({
    image: [{ file: 'mister.HEIC', alt: 'Brass plant mister' }],
  });
  // The hints stay, and so does every line that waits for its answer.
  for (const line of before.split('\n')) expect(after).toContain(line);
  expect(after.length).toBeGreaterThan(before.length);
  expect(Object.keys(await contents(dir)).filter((path) => path.startsWith('phone/')).length).toBe(3);
  expect(Object.keys(await contents(join(dir, 'content/cycles/2026-05/photos')))).toEqual([
    'mister.HEIC',
    'the whole box.jpg',
  ]);
});

test('whatever things are called, their records read back the same', () => {
  const name = fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
    .map((one) => one.replace(/\s+/g, ' ').trim())
    .filter((one) => one !== '');
  fc.assert(
    fc.property(fc.array(name, { minLength: 1, maxLength: 4 }), name, (names, theme) => {
      const things = names.map((one) => ({
        ...{ name: one, kind: one, values: { color: one }, story: '', pictures: [one] },
        notes: [{ title: one, text: `${one} -->` }],
      }));
      const files = planCycle(
        {
          month: '2026-05',
          theme,
          shipped: '2026-05-01',
          reveal: '2026-05-15T19:00',
          promised: theme,
          things,
          lead: 0,
        },
        'en-GB',
      );
      const read = files.map((file) => parseFile(file));
      expect(read.flatMap(({ diagnostics }) => diagnostics)).toEqual([]);
      expect(read[0]?.data?.theme).toBe(theme);
      names.forEach((one, i) => {
        expect(read[i + 1]?.data).toMatchObject({
          name: one,
          kind: one,
          color: one,
          image: [{ file: one, alt: one }],
        });
      });
      expect(new Set(slugsFor(names)).size).toBe(names.length);
      for (const { path } of files)
        expect(Buffer.byteLength(path.slice(path.lastIndexOf('/') + 1))).toBeLessThan(256);
    }),
    { numRuns: shareOf(300) },
  );
});

test('lines that are pasted at once answer one question each, and the end of input stops', async () => {
  const input = new PassThrough();
  const { ask, close } = openDialogue(input, new PassThrough());
  input.write('one\ntwo\n');
  input.end('three');
  expect([await ask('?'), await ask('?'), await ask('?'), await ask('?')]).toEqual([
    'one',
    'two',
    'three',
    undefined,
  ]);
  close();
});

test('in an empty folder the program says how to begin, in two lines', async () => {
  const { status, stderr } = await lidlore(await temporary());
  expect(status).toBe(2);
  expect(stderr).toMatch(/^.*lidlore begin\n.*lidlore --help\n$/);
});
