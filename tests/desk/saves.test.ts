import { existsSync, mkdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isSameValue } from '../../src/content/field-path.ts';
import { withStory } from '../../src/content/story-text.ts';
import { editedBy, exactText, isRecordPath, recordOf, STORY } from '../../src/desk/record.ts';
import { openHistory } from '../../src/io/history.ts';
import { listFiles } from '../../src/io/list-files.ts';
import { stateOf } from '../../src/io/owned-files.ts';
import { sha256 } from '../../src/text/hash.ts';
import { temporary } from '../io/temporary.ts';
import { seeded } from '../support/seeded.ts';
import { shareOf } from '../support/share-of.ts';
import { sentForm, textLeaves } from '../support/typed-form.ts';

const CONTENT = join(import.meta.dirname, '../../content');
const records = listFiles(CONTENT)
  .map(({ path }) => path)
  .filter(isRecordPath);
const textAt = (path: string): string => exactText(readFileSync(join(CONTENT, path))) ?? '';

/** The file as other programs would have saved it. */
const savedBy: Readonly<Record<string, (text: string) => string>> = {
  'as it is': (text) => text,
  'with line ends of Windows': (text) => text.replaceAll('\n', '\r\n'),
  'with a byte order mark': (text) => `\ufeff${text}`,
  'without a line end at its end': (text) => text.replace(/\n+$/, ''),
};

test.each(Object.keys(savedBy))(
  'a form that is sent as it was shown changes no byte of any record of the demo, %s',
  (how) => {
    expect(records.length).toBeGreaterThan(70);
    for (const path of records) {
      const record = recordOf(path, savedBy[how]?.(textAt(path)) ?? '', 'x');
      const form = sentForm(record);
      expect(form.size, path).toBeGreaterThan(5);
      const result = editedBy(record, (name) => form.get(name));
      expect(result, path).toEqual({ kind: 'edited', text: record.text, about: [] });
    }
  },
);

/** Lines of one text that are not in the other, each counted. */
const linesBeyond = (some: string, others: string): number => {
  const left = new Map<string, number>();
  for (const line of others.split('\n')) left.set(line, (left.get(line) ?? 0) + 1);
  let beyond = 0;
  for (const line of some.split('\n')) {
    const count = left.get(line) ?? 0;
    if (count === 0) beyond += 1;
    left.set(line, count - 1);
  }
  return beyond;
};

test('random edits of single fields change that field alone, and undo gives the very bytes, in every record of the demo', async () => {
  const folder = await temporary();
  const content = join(folder, 'content');
  const random = seeded(14);
  const pick = random.one;
  const texts = [
    'Seed tray, 30 × 12 cm',
    'a: b # c',
    "“Quoted” and 'so'",
    '- dashed',
    '2026',
    'true',
    'Zwei Zeilen\nund mehr',
    '{braces}',
    'ünïcode 🌱',
    '@at',
    '  blanks  inside',
  ];
  const history = openHistory(join(folder, 'history'), content);
  let [edits, saves] = [0, 0];
  for (const path of records)
    for (let round = 0; round < shareOf(5); round += 1) {
      const how = pick(Object.keys(savedBy));
      const text = savedBy[how]?.(textAt(path)) ?? '';
      mkdirSync(dirname(join(content, path)), { recursive: true });
      writeFileSync(join(content, path), text);
      const record = recordOf(path, text, sha256(Buffer.from(text)));
      const form = sentForm(record);
      const leaf = pick([...textLeaves(record), STORY]);
      form.set(leaf, leaf === STORY ? `${form.get(STORY)}\r\n\r\nOne more ${edits}.` : pick(texts));
      const result = editedBy(record, (name) => form.get(name));
      if (result.kind === 'refused') throw new Error(`${path} ${leaf}: refused`);
      const after = recordOf(path, result.text, '');
      if (leaf === STORY) expect(isSameValue(after.values, record.values), `${path} story`).toBe(true);
      else {
        expect(after.story, `${path} ${leaf}`).toBe(record.story);
        // One key alone: sending the new form with the old value in its place gives the old values.
        expect(linesBeyond(text, result.text), `${path} ${leaf}`).toBeLessThanOrEqual(
          leaf.split('.').length > 2 ? 9 : 5,
        );
      }
      // The disk is asked to be sure of each change, which takes its time: two of each record are saved.
      edits += 1;
      if (round > 1) continue;
      const bytes = Buffer.from(result.text);
      const written = history.change({ path, seen: sha256(Buffer.from(text)), bytes, about: result.about });
      expect(written.kind).toBe('written');
      expect(readFileSync(join(content, path)).equals(bytes)).toBe(true);
      if (result.text === text) continue;
      saves += 1;
      const undone = history.undo(history.undoable(path)?.id ?? 0);
      expect(undone?.kind).toBe('written');
      expect(readFileSync(join(content, path)).equals(Buffer.from(text)), `${path} ${leaf}`).toBe(true);
    }
  expect({ edits: edits > shareOf(350), saves: saves > shareOf(120) }).toEqual({ edits: true, saves: true });
}, 60_000);

test('a story is changed line by line: lines that stay keep their bytes, whatever their ends', () => {
  const line = fc.constantFrom('', 'One.', 'Two **two**.', '---', '## Three', '  four ');
  const end = fc.constantFrom('\n', '\r\n');
  fc.assert(
    fc.property(
      fc.array(fc.tuple(line, end), { maxLength: 8 }),
      fc.array(line, { maxLength: 8 }),
      (before, after) => {
        const head = '---\nname: A\n---\nStart.\n';
        const text = head + before.map(([words, ending]) => words + ending).join('');
        const story = `Start.\n${after.join('\n')}`;
        const changed = withStory(text, story) ?? '';
        expect(recordOf('cycles/2026-01/items/a.md', changed, '').story).toBe(story);
        expect(changed.startsWith(head)).toBe(true);
      },
    ),
  );
});

test('a change is taken back and brought again, also after a restart; a file that changed since is left alone', async () => {
  const folder = await temporary({ 'content/box.md': 'one' });
  const content = join(folder, 'content');
  const open = () => openHistory(join(folder, 'history'), content);
  const now = (): string => readFileSync(join(content, 'box.md'), 'utf8');
  const change = (seen: string, text: string) =>
    open().change({ path: 'box.md', seen: sha256(seen), bytes: Buffer.from(text), about: ['name'] });
  expect(change('one', 'two').kind).toBe('written');
  expect(change('two', 'three').kind).toBe('written');
  const steps: string[] = [];
  for (const way of ['undoable', 'undoable', 'redoable', 'redoable', 'undoable'] as const) {
    const history = open();
    history.undo(history[way]()?.id ?? -1);
    steps.push(now());
  }
  expect(steps).toEqual(['two', 'one', 'two', 'three', 'two']);
  expect(change('three', 'four')).toMatchObject({ kind: 'changed underneath' });
  writeFileSync(join(content, 'box.md'), 'theirs');
  expect(open().undoable()).toBeUndefined();
  expect(open().redoable()).toBeUndefined();
  expect(now()).toBe('theirs');
  expect(change('two', 'mine')).toMatchObject({
    kind: 'changed underneath',
    now: { hash: sha256('theirs') },
  });
  expect(now()).toBe('theirs');
});

test('a photo that was put in is taken out again, and comes back', async () => {
  const folder = await temporary({ 'content/box.md': 'x' });
  const content = join(folder, 'content');
  const history = openHistory(join(folder, 'history'), content);
  const path = 'cycles/2026-03/photos/tray.jpg';
  const put = { path, seen: null, bytes: new Uint8Array([1, 2, 3]), about: ['photo'] };
  expect(history.change(put).kind).toBe('written');
  // Exclusive: a second one of the name is refused, whatever is in it.
  expect(history.change({ ...put, bytes: new Uint8Array([4]) })).toMatchObject({
    kind: 'changed underneath',
  });
  history.undo(history.undoable()?.id ?? 0);
  expect(stateOf(content, path)).toBeUndefined();
  history.undo(history.redoable()?.id ?? 0);
  expect([...(stateOf(content, path)?.bytes ?? [])]).toEqual([1, 2, 3]);
});

test('what a stopped run left half written beside the history is taken away once nobody can be writing it', async () => {
  const folder = await temporary({
    'content/box.md': 'x',
    'history/00000001.json.aa.part': '{"id"',
    'history/00000002.json.bb.part': '{"id"',
  });
  const [old, fresh] = ['00000001.json.aa.part', '00000002.json.bb.part'];
  const before = Date.now() / 1000 - 7200;
  utimesSync(join(folder, 'history', old), before, before);
  openHistory(join(folder, 'history'), join(folder, 'content'));
  expect([old, fresh].map((name) => existsSync(join(folder, 'history', name)))).toEqual([false, true]);
});
