import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openDesk } from '../../src/desk/desk.ts';
import type { Gate } from '../../src/desk/gate.ts';
import { layTable, type Table } from '../../src/desk/table.ts';
import { openHistory } from '../../src/io/history.ts';
import { rememberedPictures } from '../../src/io/memory/remembered-pictures.ts';
import { placeWithin, replaceSeen } from '../../src/io/owned-files.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import { type Served, serve } from '../../src/io/serve.ts';
import { openWorkspace } from '../../src/workspace/workspace.ts';
import { tinyBox } from '../cli/tiny-box.ts';
import { sharePictures, temporary, writeFiles } from '../io/temporary.ts';
import { type Sent as AnySent, ask as anyAsk, ownHeaders } from '../support/ask-desk.ts';
import { shortMemory } from '../support/short-memory.ts';

const TOKEN = 'the-token';
const TEMPLATES = join(import.meta.dirname, '../../templates');
const RECORD = 'cycles/2026-03/items/01-basket.md';

let folder: string;
let table: Table;
let served: Served;
let shared: Served;
let gate: Gate = { hosts: new Set(), token: TOKEN };
let sharedGate: Gate = gate;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'lidlore-desk-'));
  await writeFiles(folder, await tinyBox());
  await sharePictures(folder);
  const workspace = await openWorkspace({
    path: join(folder, 'content'),
    memory: shortMemory(),
    program: 'test',
  });
  table = layTable({
    workspace,
    history: openHistory(join(folder, '.lidlore/history'), join(folder, 'content')),
    pictures: rememberedPictures(join(folder, '.lidlore/pictures')),
    films: rememberedPictures(join(folder, '.lidlore/films')),
    readTemplates: () => readTemplates({ own: TEMPLATES }),
    folders: { site: join(folder, 'site'), backroom: join(folder, 'backroom') },
    now: () => Date.parse('2026-03-27T12:00Z'),
  });
  const bug = (error: unknown): void => {
    throw error;
  };
  served = await serve({
    port: 0,
    others: 0,
    toNetwork: false,
    handle: openDesk(table, () => gate),
    onBug: bug,
  });
  shared = await serve({
    port: 0,
    others: 0,
    toNetwork: false,
    handle: openDesk(table, () => sharedGate),
    onBug: bug,
  });
  gate = { hosts: new Set([`127.0.0.1:${served.port}`, `localhost:${served.port}`]), token: TOKEN };
  sharedGate = { hosts: new Set([`127.0.0.1:${shared.port}`]), token: TOKEN, key: 'the-key' };
});
afterAll(async () => {
  await served.close();
  await shared.close();
  await rm(folder, { recursive: true, force: true });
});

type Sent = Partial<AnySent> & Pick<AnySent, 'path'>;

/** Any request to the desk of this file, where no other port is named. */
const ask = (sent: Sent) => anyAsk({ port: served.port, ...sent });

const own = (port = served.port) => ownHeaders(port);
const form = (fields: Record<string, string>): string => new URLSearchParams(fields).toString();
const textOf = (path: string): string => readFileSync(join(folder, 'content', path), 'utf8');
const hashNow = (path: string): string => table.read(path)?.hash ?? '';

/** A save that would be carried out. */
const save = (name: string): Sent => ({
  method: 'POST',
  path: `/write/${RECORD}`,
  headers: own(),
  body: form({ token: TOKEN, seen: hashNow(RECORD), 'f.name': name }),
});

test('a save of one of our own pages is carried out', async () => {
  const { status, headers } = await ask(save('Cane proving basket, round'));
  expect({ status, to: headers.location }).toEqual({ status: 303, to: `/write/${RECORD}?said=saved` });
  expect(textOf(RECORD)).toContain('name: Cane proving basket, round\n');
});

const foreign = 'https://elsewhere.example';
const REFUSED: readonly (readonly [what: string, change: (sent: Sent) => Sent, status: number])[] = [
  [
    'another name for this machine (a name that was pointed here)',
    (sent) => ({ ...sent, headers: { ...sent.headers, host: 'evil.example:4747' } }),
    421,
  ],
  [
    'our address with another port',
    (sent) => ({ ...sent, headers: { ...sent.headers, host: '127.0.0.1:1' } }),
    421,
  ],
  [
    'a page of another site',
    (sent) => ({ ...sent, headers: { ...sent.headers, origin: foreign, 'sec-fetch-site': 'cross-site' } }),
    403,
  ],
  [
    'a page of another site whose browser does not say so',
    (sent) => ({ ...sent, headers: { 'content-type': own()['content-type'], origin: foreign } }),
    403,
  ],
  ['a page without an origin', (sent) => ({ ...sent, headers: { ...sent.headers, origin: 'null' } }), 403],
  [
    'another server of this machine',
    (sent) => ({
      ...sent,
      headers: { ...sent.headers, origin: 'http://127.0.0.1:8000', 'sec-fetch-site': 'same-site' },
    }),
    403,
  ],
  [
    'nothing that says where it is from',
    (sent) => ({ ...sent, headers: { 'content-type': own()['content-type'] } }),
    403,
  ],
  ['no token', (sent) => ({ ...sent, body: String(sent.body).replace(/token=[^&]*&/, '') }), 403],
  ['another desk’s token', (sent) => ({ ...sent, body: String(sent.body).replace(TOKEN, 'the-tokem') }), 403],
  ['a longer token', (sent) => ({ ...sent, body: String(sent.body).replace(TOKEN, `${TOKEN}x`) }), 403],
  [
    'a body that is too large',
    (sent) => ({ ...sent, body: `${sent.body}&story=${'x'.repeat(9_000_000)}` }),
    413,
  ],
  [
    'a body of no kind',
    (sent) => ({ ...sent, headers: { ...sent.headers, 'content-type': 'application/octet-stream' } }),
    400,
  ],
  [
    'a form that breaks off',
    (sent) => ({
      ...sent,
      headers: { ...sent.headers, 'content-type': 'multipart/form-data; boundary=x' },
      body: '--x\r\nContent-Disp',
    }),
    400,
  ],
  ['another method', (sent) => ({ ...sent, method: 'PUT' }), 405],
  [
    'a part of the desk that there is none of',
    (sent) => ({ ...sent, path: '/shown/1/site/index.html' }),
    404,
  ],
];

test.each(REFUSED)('refuses a save from %s, and writes nothing', async (_, change, status) => {
  const before = textOf(RECORD);
  expect((await ask(change(save('Taken over')))).status).toBe(status);
  expect(textOf(RECORD)).toBe(before);
});

test('a page of another site reads nothing; a link from it leads here', async () => {
  const read = (headers: Record<string, string>) => ask({ path: '/cycle/2026-03', headers });
  expect(
    (await read({ 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors', 'sec-fetch-dest': 'image' }))
      .status,
  ).toBe(403);
  expect(
    (await read({ 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate', 'sec-fetch-dest': 'iframe' }))
      .status,
  ).toBe(403);
  expect((await read({ origin: foreign })).status).toBe(403);
  expect(
    (
      await read({
        'sec-fetch-site': 'cross-site',
        'sec-fetch-mode': 'navigate',
        'sec-fetch-dest': 'document',
      })
    ).status,
  ).toBe(200);
  expect((await read({ host: 'evil.example' })).status).toBe(421);
});

test('every page says what it may load, and nothing inline is among it', async () => {
  for (const panel of [
    'cycle',
    'photos',
    'proof',
    'parcels',
    'pieces',
    'voices',
    'moment',
    'findings',
    'ready',
    'history',
  ]) {
    const { status, headers, text } = await ask({ path: `/${panel}/2026-03` });
    expect({ panel, status }).toEqual({ panel, status: 200 });
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain('unsafe');
    expect(policy).toContain("frame-ancestors 'self'");
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(text).not.toMatch(/<script(?![^>]*\bsrc=)|\son[a-z]+=|<style|\sstyle=/);
  }
});

const OUTSIDE = [
  '../secret.md',
  '..%2f..%2fsecret.md',
  '%2e%2e/secret.md',
  'cycles/2026-03/../../../secret.md',
  'cycles/2026-03/items/..%2f..%2f..%2f..%2fsecret.md',
  'cycles/2026-03/items/%00.md',
  '/etc/passwd',
  'cycles/2026-03/items/.hidden.md',
  'searches.csv',
  'cycles\\2026-03\\cycle.md',
];

test.each(OUTSIDE)('neither shows nor writes %s', async (path) => {
  writeFileSync(join(folder, 'secret.md'), '---\nname: secret\n---\nSecret.\n');
  for (const [method, panel] of [
    ['GET', 'write'],
    ['GET', 'photo'],
    ['GET', 'shown/1/site'],
    ['GET', 'desk'],
    ['POST', 'write'],
  ] as const) {
    const { status, text } = await ask({
      method,
      path: `/${panel}/${path}`,
      headers: own(),
      ...(method === 'POST' && { body: form({ token: TOKEN, seen: '', 'f.name': 'x', whole: 'x' }) }),
    });
    expect(status === 200 ? text : '').not.toMatch(/Secret\.|root:/);
  }
  expect(readFileSync(join(folder, 'secret.md'), 'utf8')).toContain('name: secret');
});

test('no file is changed over a link that leads out of the content folder, and none in a folder that does', async () => {
  const here = await temporary({ 'content/box.md': 'box', 'outside/theirs.md': 'theirs' });
  const content = join(here, 'content');
  mkdirSync(join(content, 'items'));
  symlinkSync(join(here, 'outside/theirs.md'), join(content, 'items/linked.md'));
  symlinkSync(join(here, 'outside'), join(content, 'away'));
  symlinkSync(join(content, 'box.md'), join(content, 'items/inside.md'));
  const bytes = new Uint8Array([120]);
  for (const path of [
    'items/linked.md',
    'away/theirs.md',
    'away/new.md',
    'away/deeper/new.md',
    '../outside/theirs.md',
    'items',
    '.hidden.md',
    'a//b.md',
    '',
  ])
    for (const seen of [null, 'x'.repeat(64)])
      expect(replaceSeen(content, path, seen, bytes).kind, path).toBe('outside');
  expect(readFileSync(join(here, 'outside/theirs.md'), 'utf8')).toBe('theirs');
  expect(placeWithin(content, 'items/inside.md')).toBe(join(content, 'box.md'));
});

test('a shared desk asks for its key, keeps it in the browser, and shows the address without it', async () => {
  const port = shared.port;
  expect((await ask({ port, path: '/cycle/2026-03' })).status).toBe(403);
  expect((await ask({ port, path: '/?key=the-kez' })).status).toBe(403);
  const opened = await ask({ port, path: '/?key=the-key' });
  expect({ status: opened.status, to: opened.headers.location }).toEqual({ status: 303, to: '/' });
  const cookie = String(opened.headers['set-cookie']);
  expect(cookie).toMatch(/HttpOnly; SameSite=Strict/);
  const kept = { cookie: cookie.split(';')[0] ?? '' };
  expect((await ask({ port, path: '/cycle/2026-03', headers: kept })).status).toBe(200);
  const post = { ...save('Taken over'), port, headers: own(port) };
  expect((await ask(post)).status).toBe(403);
  expect(
    (
      await ask({
        ...post,
        headers: { ...own(port), ...kept },
        body: form({ token: TOKEN, seen: 'x', 'f.name': 'x' }),
      })
    ).status,
  ).toBe(409);
});

test('a file that was changed underneath is not written over: both versions are shown, and one’s own can be put over it', async () => {
  const mine = save('My own words');
  const theirs = textOf(RECORD)
    .replace(/^size: .*$/m, 'size: 24 cm')
    .replace(/^name: .*$/m, 'name: Their words');
  writeFileSync(join(folder, 'content', RECORD), theirs);
  const { status, text } = await ask(mine);
  expect(status).toBe(409);
  expect(textOf(RECORD)).toBe(theirs);
  expect(text).toContain('My own words');
  expect(text).toContain('Their words');
  const seen = /name="seen" value="(\w+)"/.exec(text)?.[1] ?? '';
  const base = /name="base" value="(\w+)"/.exec(text)?.[1] ?? '';
  await ask({ ...mine, body: form({ token: TOKEN, seen, base, 'f.name': 'My own words' }) });
  expect(textOf(RECORD)).toBe(theirs.replace('name: Their words', 'name: My own words'));
});

test('what must be fixed is at its field, and the last good page stays, marked as older', async () => {
  await table.refresh();
  const page = (await ask({ path: `/write/${RECORD}` })).text;
  const article = /<iframe src="([^"]+)"/.exec(page)?.[1] ?? '';
  expect((await ask({ path: article })).text).toContain('My own words');
  expect(page).not.toContain('older than the text');
  const broken = await ask({
    ...save(''),
    body: form({ token: TOKEN, seen: hashNow(RECORD), 'f.price': 'cheap' }),
  });
  expect(broken.status).toBe(303);
  const after = (await ask({ path: `/write/${RECORD}` })).text;
  expect(after).toMatch(/id="field-price-found"[^>]*>\s*<ul class="found">\s*<li class="must">/);
  expect(after).toContain('older than the text');
  expect((await ask({ path: article })).text).toContain('My own words');
  const undone = await ask({
    method: 'POST',
    path: '/history/2026-03',
    headers: own(),
    body: form({ token: TOKEN, do: 'undo', back: `/write/${RECORD}` }),
  });
  expect(undone.headers.location).toBe(`/write/${RECORD}?said=undone`);
  expect((await ask({ path: `/write/${RECORD}` })).text).not.toContain('older than the text');
});
