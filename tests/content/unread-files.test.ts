import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type StandingFile, unreadFindings } from '../../src/content/unread-files.ts';
import type { Cycle, Take } from '../../src/model/box.ts';
import { isUnnamedTake } from '../../src/model/take.ts';
import { shareOf } from '../support/share-of.ts';

const file = (path: string, more: Partial<StandingFile> = {}): StandingFile => ({
  path,
  isBroken: false,
  isPhoto: /\.jpe?g$/i.test(path),
  ...more,
});
const found = (path: string, more: Partial<StandingFile> = {}): readonly string[] =>
  unreadFindings([file(path, more)]).map(({ weight, location }) => `${weight} ${location.file}`);

describe('a file that a rule reads is not named', () => {
  test.each([
    'box.md',
    'searches.csv',
    'addresses.csv',
    'cycles/2026-03/cycle.md',
    'cycles/2026-03/items/05-dough-whisk.md',
    'cycles/2026-03/items/teekanne.md',
    'cycles/2026-03/parcels.csv',
    'cycles/2026-03/Parcels.CSV',
    'cycles/2026-03/photos/IMG_2231.JPG',
    'cycles/2026-03/items/05.jpg',
  ])('%s', (path) => expect(found(path)).toEqual([]));
});

describe('what systems, editors and version control leave behind is not named', () => {
  test.each([
    ...['.DS_Store', 'Thumbs.db', 'desktop.ini', 'Icon\r', '._05.md', '.#05.md', '#05.md#', '05.md~'],
    ...['~$05.docx', '.~lock.05.odt#', '.05.md.swp', '05.md.bak', '05.md.orig', '05.md.tmp'],
  ])('%j', (name) => {
    expect(found(`cycles/2026-03/items/${name}`)).toEqual([]);
    expect(found(name)).toEqual([]);
  });

  test('a whole folder of an archive’s own files', () =>
    expect(found('__MACOSX/cycles/2026-03/items/05.md')).toEqual([]));
});

describe('a record under another name or in another place must be fixed, with the name that it should have', () => {
  const items = 'cycles/2026-03/items';
  test.each([
    ['05.MD', '05.md'],
    ['05.Md', '05.md'],
    ['05.markdown', '05.md'],
    ['05.md.txt', '05.md'],
    ['05.txt', '05.md'],
    ['05', '05.md'],
    ['05.md ', '05.md'],
    ['.02-x.md', '02-x.md'],
    ['05-whisk.docx', '05-whisk.md'],
    ['05-whisk.odt', '05-whisk.md'],
    ['05-whisk.pages', '05-whisk.md'],
    ['05-брод.MD', '05-брод.md'],
  ])('%j in items/', (name, right) => {
    const [finding, ...others] = unreadFindings([file(`${items}/${name}`)]);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ weight: 'must fix', rule: 'file-unread' });
    expect(finding?.location).toEqual({ file: `${items}/${name}`, line: 1, column: 1 });
    expect(`${finding?.message} ${finding?.fix}`).toContain(right);
  });

  test.each([
    [`${items}/more/05.md`, `${items}/more/05.md`],
    ['cycles/2026-03/Items/05.md', 'cycles/2026-03/Items'],
    ['cycles/2026-03/item/05.md', 'cycles/2026-03/item'],
    ['Cycles/2026-03/cycle.md', 'Cycles'],
    ['cycle/2026-03/cycle.md', 'cycle'],
    ['2026-04/cycle.md', '2026-04'],
    ['cycles/2026-04.md', 'cycles/2026-04.md'],
    ['2026-04.md', '2026-04.md'],
    ['cycles/2026-03/05-whisk.md', 'cycles/2026-03/05-whisk.md'],
    [`${items}/notes.csv`, `${items}/notes.csv`],
  ])('%s', (path, place) => expect(found(path)).toEqual([`must fix ${place}`]));

  test('a folder is named once, however much is in it', () => {
    const many = ['cycle.md', 'items/01-a.md', 'items/02-b.md'].map((name) => file(`Cycles/2026-03/${name}`));
    expect(unreadFindings(many)).toHaveLength(1);
  });

  test('but a folder that is no month has a finding of its own', () =>
    expect(found('cycles/march/items/05.MD')).toEqual([]));
});

describe('another file is to be looked at, with the name that it was meant to have', () => {
  test.each([
    ['notes.txt', 'outside the content folder'],
    ['README.md', 'outside the content folder'],
    ['Searches.csv', 'searches.csv'],
    ['searches.xlsx', 'searches.csv'],
    ['Box.md', 'box.md'],
    ['box.markdown', 'box.md'],
    ['cycles/2026-03/Cycle.md', 'cycle.md'],
    ['cycles/2026-03/cycle.md.txt', 'cycle.md'],
    ['cycles/2026-03/parcels.tsv', 'parcels.csv'],
    ['cycles/2026-03/parcels.xlsx', 'parcels.csv'],
    ['cycles/2026-03/thoughts.md', 'outside the content folder'],
    ['cycles/2026-03/photos/film.mp4', 'outside the content folder'],
    ['cycles/2026-03/photos/raw.cr2', 'outside the content folder'],
  ])('%s', (path, right) => {
    const [finding, ...others] = unreadFindings([file(path)]);
    expect(others).toEqual([]);
    expect(finding?.weight).toBe('look at');
    expect(finding?.fix).toContain(right);
  });
});

test('a link to nothing is named wherever it stands, and must be fixed where a record was meant', () => {
  expect(found('cycles/2026-03/items/05.md', { isBroken: true })).toEqual([
    'must fix cycles/2026-03/items/05.md',
  ]);
  expect(found('cycles/2026-03/photos/a.jpg', { isBroken: true, isPhoto: false })).toEqual([
    'look at cycles/2026-03/photos/a.jpg',
  ]);
});

test('a link that leads out of the folder must be fixed, whatever it is called', () => {
  for (const path of ['cycles/2026-03/items/05.md', 'cycles/2026-03/photos', 'searches.csv', 'a.jpg'])
    expect(found(path, { leadsOut: true })).toEqual([`must fix ${path}`]);
});

test('of two lists of parcels in one cycle the one that is not read is named', () => {
  const lists = ['Parcels.CSV', 'parcels.csv'].map((name) => file(`cycles/2026-03/${name}`));
  const other = file('cycles/2026-02/Parcels.CSV');
  expect(
    unreadFindings([other, ...lists]).map(({ weight, location }) => `${weight} ${location.file}`),
  ).toEqual(['must fix cycles/2026-03/Parcels.CSV']);
});

test('a filmed piece is read where a record names it, and named where none does', () => {
  const path = 'cycles/2026-03/takes/tray.mov';
  const cycle = (takes?: Cycle['takes'], take?: Take): Cycle =>
    ({ id: '2026-03', items: [{ ...(take && { take }) }], takes }) as unknown as Cycle;
  const named = { name: 'tray.mov', from: 4 };
  expect(found(path)).toEqual([]);
  expect(isUnnamedTake(path, [cycle()])).toBe(true);
  for (const one of [cycle(undefined, named), cycle({ hook: named }), cycle({ whole: named })])
    expect(isUnnamedTake(path, [one])).toBe(false);
  // Of a cycle that could not be read nobody knows what it names.
  expect(isUnnamedTake('cycles/2026-02/takes/tray.mov', [cycle()])).toBe(false);
  expect(found(path, { isUnnamedTake: true })).toEqual([`look at ${path}`]);
});

test('of any path at all, a file is read, left behind by a program, or named once', () => {
  const name = fc.oneof(
    fc.constantFrom('cycles', 'items', 'photos', '2026-03', 'Items', 'box', 'cycle'),
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }).filter((text) => !text.includes('/')),
  );
  const ending = fc.constantFrom('', '.md', '.MD', '.txt', '.csv', '.jpg', '.docx', ' ');
  fc.assert(
    fc.property(fc.array(name, { minLength: 1, maxLength: 5 }), ending, (names, end) => {
      const path = names.join('/') + end;
      const findings = unreadFindings([file(path)]);
      expect(findings.length).toBeLessThanOrEqual(1);
      for (const { message, fix, location } of findings) {
        expect(path.startsWith(location.file)).toBe(true);
        expect(message).toMatch(/^Unexpected .* it was not read$/su);
        expect(fix).not.toBe('');
      }
    }),
    { numRuns: shareOf(2000) },
  );
});
