/** The desk over a memory that is wrong inside, and over one that is damaged or taken away while it is open. */
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { stateOf } from '../../src/io/owned-files.ts';
import { writeFiles } from '../io/temporary.ts';
import { ask, ownHeaders } from '../support/ask-desk.ts';
import { closedDesk, type DeskProcess, openedDesk } from '../support/open-desk.ts';
import { editableBox } from '../support/random-edits.ts';
import { seeded } from '../support/seeded.ts';
import { rewriteMemory, someNode } from '../support/wrong-memory.ts';

let root = '';
let sound = '';
let desk: DeskProcess;
let port = 0;
let told = '';
/** A record of the newest box, and the addresses that are looked at. */
let record = '';
let pages: readonly string[] = [];
let whole: readonly string[] = [];

const memory = (): string => join(root, '.lidlore');
const content = (): string => join(root, 'content');

const open = async (): Promise<void> => {
  desk = await openedDesk(root, ['--as-of', '2026-03-27', '--port', '4960']);
  port = Number(new URL(desk.address).port);
  told = '';
  desk.child.stderr?.on('data', (text: string) => (told += text));
};

/** Each page without what another desk gives anew. */
const seen = async (): Promise<readonly string[]> => {
  const texts: string[] = [];
  for (const path of pages) {
    const { status, text } = await ask({ port, path });
    texts.push(
      `${status} ${path}\n${text
        .replace(/(data-token="|name="token" value=")[^"]*/g, '$1')
        .replace(/data-version="\d+"/, '')
        .replace(/<form method="post" action="\/history[\s\S]*?<\/form>/g, '')}`,
    );
  }
  return texts;
};

const send = async (path: string, fields: Record<string, string>) => {
  const { text } = await ask({ port, path: `/write/${record}` });
  const token = /data-token="([^"]+)"/.exec(text)?.[1] ?? '';
  return ask({
    port,
    method: 'POST',
    path,
    headers: ownHeaders(port),
    body: new URLSearchParams({ token, ...fields }).toString(),
  });
};

/** The file is changed, and taken back to the very bytes. */
const changeAndTakeBack = async (): Promise<void> => {
  const before = stateOf(content(), record);
  const saved = await send(`/write/${record}`, { seen: before?.hash ?? '', 'f.brand': 'Reed & Rush' });
  expect(saved.headers.location).toContain('said=saved');
  expect(readFileSync(join(content(), record), 'utf8')).toContain('brand: Reed & Rush\n');
  const undone = await send('/history/2026-03', { do: 'undo' });
  expect(undone.headers.location).toContain('said=undone');
  expect(stateOf(content(), record)?.hash).toBe(before?.hash);
};

beforeAll(async () => {
  root = await mkdtemp(join(tmpdir(), 'lidlore-harmed-'));
  sound = join(root, 'sound');
  await writeFiles(root, await editableBox());
  const items = readdirSync(join(content(), 'cycles/2026-03/items')).sort();
  record = `cycles/2026-03/items/${items[0]}`;
  await open();
  const written = await ask({ port, path: `/write/${record}` });
  const article = /<iframe src="([^"#]+)"/.exec(written.text)?.[1] ?? '';
  expect(article).toContain('/site/boxes/');
  pages = [
    `/write/${record}`,
    article,
    article.replace(/site\/.*/, 'site/index.html'),
    '/proof/2026-03',
    '/findings/2026-03',
  ];
  whole = await seen();
  for (const text of whole) expect(text).toMatch(/^200 /);
  await closedDesk(desk);
  await cp(memory(), sound, { recursive: true });
}, 60_000);
afterAll(async () => {
  desk.child.kill('SIGKILL');
  await rm(root, { recursive: true, force: true });
});

const restore = async (): Promise<void> => {
  await rm(memory(), { recursive: true, force: true });
  await cp(sound, memory(), { recursive: true });
};

test.each([
  ['null', 1, () => Buffer.from('null')],
  ['a key less here and there', 0.05, someNode(undefined)],
] as const)(
  'values that are %s change no page, lose no change, and nobody is told of a bug',
  async (_, share, change) => {
    await restore();
    expect(rewriteMemory(memory(), share, seeded(2), change)).toBeGreaterThan(0);
    await open();
    expect(await seen()).toEqual(whole);
    await changeAndTakeBack();
    expect(await closedDesk(desk)).toBe(0);
    expect(told).not.toMatch(/bug|Error/);
  },
  60_000,
);

test('a memory that is damaged while the desk is open, and then taken away as a whole, stops nothing', async () => {
  await restore();
  await open();
  let harmed = 0;
  for (const name of readdirSync(memory()).filter((one) => one.endsWith('.pack'))) {
    const path = join(memory(), name);
    // In the very file that the desk holds open.
    writeFileSync(path, Buffer.alloc(statSync(path).size, 7));
    harmed += 1;
  }
  expect(harmed).toBeGreaterThan(0);
  expect(await seen()).toEqual(whole);
  await changeAndTakeBack();
  await rm(memory(), { recursive: true, force: true });
  // What was to be taken back is gone, and is not offered.
  expect((await send('/history/2026-03', { do: 'redo' })).headers.location).toContain('said=nothing');
  await changeAndTakeBack();
  expect(await seen()).toEqual(whole);
  expect(await closedDesk(desk)).toBe(0);
  expect(told).not.toMatch(/bug|Error/);
  await open();
  expect(await seen()).toEqual(whole);
  expect(await closedDesk(desk)).toBe(0);
}, 60_000);

test('a kept version that is damaged is no way back, and is kept anew by the next change to it', async () => {
  await restore();
  await open();
  const before = stateOf(content(), record)?.hash ?? '';
  await changeAndTakeBack();
  const kept = join(memory(), 'history/kept', before);
  writeFileSync(kept, 'damaged');
  await changeAndTakeBack();
  expect(readFileSync(kept, 'utf8')).toBe(readFileSync(join(content(), record), 'utf8'));
  expect(await closedDesk(desk)).toBe(0);
  expect(told).not.toMatch(/bug|Error/);
}, 60_000);
