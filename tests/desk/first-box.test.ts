/** The desk on a box that is just begun, as its owner meets it: one desk for all, each test from where the one before left it. */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { lidlore } from '../cli/terminal.ts';
import { temporary } from '../io/temporary.ts';
import { ask, type Got, ownHeaders } from '../support/ask-desk.ts';
import { type DeskProcess, openedDesk } from '../support/open-desk.ts';

const BOX = [
  ...['begin', '--name', 'Skein & Hollow', '--about', 'A box of yarn.', '--currency', 'GBP'],
  ...['--zone', 'Europe/London', '--language', 'en-GB'],
];
const CYCLE = 'content/cycles/2026-11/';

let folder = '';
let desk: DeskProcess;
let port = 0;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'lidlore-first-'));
  expect((await lidlore(folder, ...BOX)).status).toBe(0);
  desk = await openedDesk(folder, ['--as-of', '2026-11-27', '--port', '4960']);
  port = Number(new URL(desk.address).port);
});
afterAll(async () => {
  desk.child.kill('SIGKILL');
  await rm(folder, { recursive: true, force: true });
});

const got = (path: string): Promise<Got> => ask({ port, path });

/** A page, wherever it leads on to. */
const page = async (path: string): Promise<string> => {
  const answer = await got(path);
  const { location } = answer.headers;
  return typeof location === 'string' ? page(location) : answer.text;
};

/** Presses a button of a page's form; gives the address that it leads on to. */
const pressed = async (path: string, fields: Readonly<Record<string, string>>): Promise<string> => {
  const token = /data-token="([^"]+)"/.exec(await page(path))?.[1] ?? '';
  const body = new URLSearchParams({ token, ...fields }).toString();
  const { headers } = await ask({ port, method: 'POST', path, headers: ownHeaders(port), body });
  return String(headers.location);
};

const text = (html: string): string => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');

test('where there is no cycle, every way leads to the form that begins one, and no part is offered that needs one', async () => {
  for (const path of ['/', '/photos/', '/proof/', '/pieces', '/voices/']) {
    const shown = await page(path);
    expect(shown).toContain('<h1>The first box</h1>');
    expect(shown).toMatch(/name="month"[^>]* value="2026-11"/);
    expect(shown).not.toMatch(/<a href="\/(?:photos|parcels|pieces|voices|proof)/);
    expect(shown).not.toContain('<summary>');
  }
  expect(await page('/write/box.md')).toMatch(/id="field-calls" open>[\s\S]*Unexpected box without a call/);
});

test('a cycle and its things that are begun here are those that `lidlore begin` lays out, save for what the summary names', async () => {
  expect(await pressed('/cycle/', { do: 'add cycle', month: '2026-11', theme: 'On the Line' })).toContain(
    '/write/cycles/2026-11/cycle.md',
  );
  const names = ['Birch needles, 4 mm', 'Rosehip hand cream', 'Birch needles'];
  for (const name of names) await pressed('/write/cycles/2026-11/cycle.md', { do: 'add thing', name });
  const other = await temporary({});
  const words = ['--theme', 'On the Line', '--things', names.join('; ')];
  expect((await lidlore(other, ...BOX, '2026-11', ...words)).status).toBe(0);
  const both = async (path: string): Promise<readonly string[]> =>
    Promise.all([folder, other].map((dir) => readFile(join(dir, CYCLE, path), 'utf8')));
  for (const item of ['01-birch-needles', '02-rosehip-hand-cream', '03-birch-needles-2']) {
    const [here, there] = await both(`items/${item}.md`);
    expect(here).toBe(there);
  }
  const [here, there] = (await both('cycle.md')).map((one) => one.replace(/^summary: .*$/m, ''));
  expect(here).toBe(there);
});

test('what stands already is not begun again, and that is said', async () => {
  const record = await readFile(join(folder, CYCLE, 'cycle.md'), 'utf8');
  const asked = { do: 'add cycle', month: '2026-11', theme: 'Again' };
  expect(await pressed('/cycle/2026-11', asked)).toBe('/cycle/2026-11?said=stands');
  expect(await pressed('/cycle/2026-11', { ...asked, month: 'soon' })).toBe(
    '/cycle/2026-11?said=not%20begun',
  );
  expect(await readFile(join(folder, CYCLE, 'cycle.md'), 'utf8')).toBe(record);
});

test('things that are still to be written are counted as things, and nothing is done that only looks so', async () => {
  const shown = text(await page('/cycle/2026-11'));
  expect(shown).toContain('0 of 3 things have a picture.');
  expect(shown).toMatch(/Photographs (?:next|overdue)/);
  expect(shown).not.toMatch(/(?:Photographs|Written|Proof|Article) done/);
  expect(shown).toContain('There is no proof before what must be fixed is fixed.');
});

test('what is to mend is told by the record it is in and by the names of its fields, and as nothing but that', async () => {
  const shown = text(await page('/findings/2026-11'));
  expect(shown).toMatch(/\d+ must be fixed before the site can be made\./);
  expect(shown).toMatch(/Rosehip hand cream must fix “Maker” is still empty\./);
  expect(shown).not.toMatch(/colon|take the line out|without an item/);
  const record = text(await page('/write/cycles/2026-11/items/02-rosehip-hand-cream.md'));
  expect(record).toContain('must fix Nothing stands here yet.');
  expect(record).not.toMatch(/colon|Unexpected empty/);
  const ready = text(await page('/ready/2026-11'));
  expect(ready).toContain('To be fixed first');
  expect(ready).toMatch(/“Maker” is still empty\. Mend it there[^M]* Birch needles, 4 mm/);
});

test('the proof says why it is not there', async () => {
  expect(await page('/proof/2026-11')).toContain('There is no proof before what must be fixed is fixed.');
});
