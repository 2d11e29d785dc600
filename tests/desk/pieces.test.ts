import { chmod, readFile, rm } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { afterAll, expect, onTestFinished, test } from 'vitest';
import { openDesk } from '../../src/desk/desk.ts';
import { layTable } from '../../src/desk/table.ts';
import { openHistory } from '../../src/io/history.ts';
import { rememberedPictures } from '../../src/io/memory/remembered-pictures.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import { type Served, serve } from '../../src/io/serve.ts';
import { openWorkspace } from '../../src/workspace/workspace.ts';
import { tinyBox } from '../cli/tiny-box.ts';
import { temporary, temporaryBox } from '../io/temporary.ts';
import { shortMemory } from '../support/short-memory.ts';

const TEMPLATES = join(import.meta.dirname, '../../templates');
/** Stand in for ffmpeg: one writes a word into the file that it is asked for, one hangs, one takes every frame. */
const QUICK = '#!/bin/sh\nfor last; do :; done\nprintf film > "$last"\n';
const SLOW = '#!/bin/sh\nexec sleep 60\n';
const TAKES = '#!/bin/sh\nexec cat > /dev/null\n';

interface Desk {
  readonly dir: string;
  readonly get: (path: string, headers?: Record<string, string>) => Promise<Response>;
  readonly text: (path: string) => Promise<string>;
  readonly press: (path: string, fields: Record<string, string>) => Promise<Response>;
}

const open: Served[] = [];
afterAll(async () => {
  for (const one of open) await one.close();
});

const deskOver = async (ffmpeg: string, folderOf = temporaryBox): Promise<Desk> => {
  const files = await tinyBox();
  const pieces = 'call: join\npieces: [article, letter, clip, cards]\nclip: 15\n';
  const dir = await folderOf({
    ...files,
    'content/box.md': String(files['content/box.md']).replace('call: join\n', pieces),
    'bin/ffmpeg': ffmpeg,
  });
  await chmod(join(dir, 'bin/ffmpeg'), 0o755);
  const remembered = (name: string) => rememberedPictures(join(dir, '.lidlore', name));
  const table = layTable({
    workspace: await openWorkspace({ path: join(dir, 'content'), memory: shortMemory(), program: 'test' }),
    history: openHistory(join(dir, '.lidlore/history'), join(dir, 'content')),
    pictures: remembered('pictures'),
    films: remembered('films'),
    ffmpeg: join(dir, 'bin/ffmpeg'),
    readTemplates: () => readTemplates({ own: TEMPLATES }),
    folders: { site: join(dir, 'site'), backroom: join(dir, 'backroom') },
    now: () => Date.parse('2026-03-27T12:00Z'),
  });
  let hosts: ReadonlySet<string> = new Set();
  const closing = new AbortController();
  onTestFinished(() => closing.abort());
  const served = await serve({
    port: 0,
    others: 0,
    toNetwork: false,
    handle: openDesk(table, () => ({ hosts, token: 't' }), closing.signal),
    onBug: (error) => {
      throw error;
    },
  });
  open.push(served);
  hosts = new Set([`127.0.0.1:${served.port}`]);
  const base = `http://127.0.0.1:${served.port}`;
  const get = (path: string, headers = {}) => fetch(base + path, { headers });
  return {
    dir,
    get,
    text: async (path) => (await get(path)).text(),
    press: (path, fields) =>
      fetch(base + path, {
        method: 'POST',
        redirect: 'manual',
        headers: { origin: base },
        body: new URLSearchParams({ token: 't', ...fields }),
      }),
  };
};

const FILM = '/pieces/2026-03/film';
const srcIn = (page: string, tag: string): string =>
  new RegExp(`<${tag}[^>]* src="([^"]+)"`).exec(page)?.[1]?.replaceAll('&amp;', '&') ?? '';

test('a film is made when it is asked for, shown, and given whole and in parts; Ready takes it along', async () => {
  const desk = await deskOver(QUICK);
  expect(await desk.text(FILM)).toContain('Make the film');
  const backRoom = `/shown/${Date.parse('2026-03-27T12:00Z')}/backroom/index.html`;
  expect(await desk.text(backRoom)).not.toContain('2026-03/clip.mp4');
  await desk.press(FILM, { do: 'make' });
  await expect.poll(() => desk.text(FILM), { timeout: 20_000 }).toContain('<video');
  expect(await desk.text(backRoom)).toContain('2026-03/clip.mp4');
  const src = srcIn(await desk.text(FILM), 'video');
  expect(await desk.text(src)).toBe('film');
  const part = await desk.get(src, { range: 'bytes=1-2' });
  expect([part.status, part.headers.get('content-range'), await part.text()]).toEqual([
    206,
    'bytes 1-2/4',
    'il',
  ]);
  const save = await desk.get(`${src}?save=1`);
  expect(save.headers.get('content-disposition')).toBe('attachment');
  await desk.press('/ready/2026-03', { do: 'build' });
  expect(await readFile(join(desk.dir, 'backroom/2026-03/clip.mp4'), 'utf8')).toBe('film');
}, 60_000);

test('a film is stopped, and can be begun again', async () => {
  const desk = await deskOver(SLOW);
  await desk.press(FILM, { do: 'make' });
  expect(await desk.text(FILM)).toContain('data-work');
  await desk.press(FILM, { do: 'stop' });
  await expect.poll(() => desk.text(FILM), { timeout: 20_000 }).toContain('It was stopped.');
  expect(await desk.text(FILM)).toContain('Make it again');
}, 60_000);

test('a film that cannot be made says why, and the desk goes on', async () => {
  const desk = await deskOver(TAKES);
  expect(await desk.text(FILM)).toContain('Make the film');
  await rm(join(desk.dir, 'content/cycles/2026-03/photos'), { recursive: true });
  await desk.press(FILM, { do: 'make' });
  await expect
    .poll(() => desk.text(FILM), { timeout: 20_000 })
    .toContain('Unexpected end of making the film');
  expect((await desk.get('/cycle/2026-03')).status).toBe(200);
}, 60_000);

test('cards are drawn when they are asked for, each with its picture text', async () => {
  const desk = await deskOver(QUICK, temporary);
  const cards = '/pieces/2026-03/cards';
  expect(await desk.text(cards)).toContain('0 of ');
  await desk.press(cards, { do: 'draw' });
  await expect.poll(() => desk.text(cards), { timeout: 50_000 }).toMatch(/All \d+ pictures are drawn/);
  const page = await desk.text(cards);
  expect(page).toMatch(/id="text-1"[^>]*>Cane proving basket\./);
  expect((await desk.get(srcIn(page, 'img'))).headers.get('content-type')).toBe('image/jpeg');
}, 60_000);

test('a letter is seen with its pictures from here, in the light and in the dark whatever the browser prefers', async () => {
  const desk = await deskOver(QUICK);
  const frame = async (query: string): Promise<string> =>
    srcIn(await desk.text(`/pieces/2026-03/letter?${query}`), 'iframe');
  for (const [scheme, asked] of [
    ['dark', '(min-width:0)'],
    ['light', '(max-width:-1px)'],
  ]) {
    const src = await frame(`colours=${scheme}`);
    const letter = await desk.text(src);
    expect(letter).toContain(`@media ${asked}{`);
    expect(letter).toContain(`content="${scheme}"`);
    const picture = srcIn(letter, 'img');
    expect(picture).toMatch(/^\/shown\//);
    expect((await desk.get(picture)).headers.get('content-type')).toMatch(/^image\//);
    const article = srcIn(await desk.text(`/pieces/2026-03/article?colours=${scheme}`), 'iframe');
    const html = await desk.text(article);
    expect(html).not.toContain('prefers-color-scheme');
    const sheet = /href="(\.\.\/assets\/colours[^"]*\.css|[^"]*\.css)"/.exec(html)?.[1] ?? '';
    const css = await desk.text(new URL(sheet, `http://a${article}`).pathname);
    expect(css).not.toContain('prefers-color-scheme');
  }
  expect(await desk.text(await frame(''))).toContain('prefers-color-scheme:dark');
}, 60_000);

test('Ready says which files an address does not serve as they were made', async () => {
  const desk = await deskOver(QUICK);
  const ready = '/ready/2026-03';
  expect(await desk.text(ready)).toContain('There is no site to compare');
  await desk.press(ready, { do: 'build' });
  const asked: string[] = [];
  const host = createServer((request, response) => {
    asked.push(String(request.url));
    readFile(join(desk.dir, 'site', String(request.url))).then(
      (bytes) => response.end(request.url === '/feed.xml' ? 'earlier' : bytes),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((done) => host.listen(0, '127.0.0.1', done));
  onTestFinished(() => void host.close());
  const address = `http://127.0.0.1:${(host.address() as AddressInfo).port}/`;
  await rm(join(desk.dir, 'site/robots.txt'), { force: true });
  await desk.text(ready);
  expect(asked).toEqual([]);
  await desk.press(ready, { do: 'compare', address });
  await expect.poll(() => desk.text(ready), { timeout: 20_000 }).toContain(`What ${address} serves:`);
  const page = await desk.text(ready);
  expect(page).toContain('1 file differs:');
  expect(page).toContain('<li>feed.xml</li>');
  expect(asked.length).toBeGreaterThan(5);
  expect(await (await desk.press(ready, { do: 'compare', address: 'no address' })).text()).toContain(
    'That is no address of a site.',
  );
}, 60_000);
