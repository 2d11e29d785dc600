/** What a build writes down of the addresses that it has shown: when it does, when it must not, and whatever stops it. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { addressesToAdd } from '../../src/content/addresses.ts';
import { listFiles } from '../../src/io/list-files.ts';
import { unsealed } from '../../src/model/seal.ts';
import { publicAddresses } from '../../src/render/public-addresses.ts';
import { contents, temporaryBox, writeFiles } from '../io/temporary.ts';
import { compiledCommand, runCompiled } from '../support/compiled.ts';
import { demoBox } from '../support/demo-box.ts';
import { cycleText, inContent, SHOWN, SHOWN_BOX } from '../support/shown-box.ts';

const HOOK = join(import.meta.dirname, '../support/kill-at-call.cjs');
const BUILD = ['build', '--as-of', '2026-03-27'];
const LIST = 'content/addresses.csv';

/** The box with every file as if it had been written long ago. */
const aged = async (more: Record<string, string> = {}): Promise<string> => {
  const dir = await temporaryBox({ ...inContent(SHOWN_BOX), ...more });
  for (const { path } of listFiles(join(dir, 'content'))) await utimes(join(dir, 'content', path), 1, 1);
  return dir;
};
const listIn = (dir: string): Promise<string | undefined> =>
  readFile(join(dir, LIST), 'utf8').catch(() => undefined);

test('a build writes down what it has shown, says so, and finds nothing changed right after', async () => {
  const dir = await aged();
  const first = await runCompiled(dir, ...BUILD);
  expect(first).toMatchObject({
    status: 0,
    stdout: expect.stringContaining(`Wrote 11 new addresses into ${LIST}`),
  });
  expect(await listIn(dir)).toBe(SHOWN);
  const again = await runCompiled(dir, ...BUILD);
  expect(again).toMatchObject({ status: 0, stdout: expect.stringMatching(/^Nothing has changed/) });
  expect(again.stdout).not.toContain('Wrote');
  expect(await listIn(dir)).toBe(SHOWN);
});

test('every address in it is made: its page, and the element of its anchor', async () => {
  const dir = await aged();
  await runCompiled(dir, ...BUILD);
  const site = await contents(join(dir, 'site'));
  const listed = SHOWN.trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(',')[0] ?? '');
  for (const [page = '', anchor] of listed.map((address) => address.split('#')))
    expect(site[page]).toContain(anchor === undefined ? '<html' : ` id="${anchor}"`);
  const pages = Object.keys(site).filter((path) => /^(?:boxes|kinds)\//.test(path));
  expect(new Set(pages)).toEqual(new Set(listed.map((address) => address.split('#')[0])));
});

describe('nothing is written down', () => {
  test.each<readonly [string, readonly string[], Record<string, string>]>([
    ['for a moment still to come', ['build', '--as-of', '2999-01-01'], {}],
    ['for another folder', [...BUILD, '--out', 'preview'], {}],
    ['for a share', [...BUILD, '--share', '1/1'], {}],
    ['where something must be fixed', BUILD, { 'content/cycles/2026-01/cycle.md': '---\ntheme: [\n---\n' }],
    ['where somebody else’s files are in the way', BUILD, { 'site/mine.txt': 'mine' }],
    ['by a proof', ['proof', '2026-01', '--as-of', '2026-03-27'], {}],
  ])('%s', async (_, words, more) => {
    const dir = await aged(more);
    await runCompiled(dir, ...words);
    expect(await listIn(dir)).toBeUndefined();
  });

  test('of what is sealed, until it is not', async () => {
    const dir = await aged();
    await runCompiled(dir, 'build', '--as-of', '2026-03-12');
    expect(await listIn(dir)).not.toMatch(/2026-03-r|kinds/);
    const before = (await listIn(dir)) ?? '';
    await runCompiled(dir, ...BUILD);
    const after = (await listIn(dir)) ?? '';
    expect(after.startsWith(before)).toBe(true);
    expect(after.slice(before.length)).toBe(SHOWN.slice(SHOWN.indexOf('boxes/2026-03')));
  });
});

test('the usual folder is known however it is named', async () => {
  const dir = await aged();
  await runCompiled(dir, ...BUILD, '--out', './site/');
  expect(await listIn(dir)).toBe(SHOWN);
});

test('a page that was shown and is not made any more stops the build, and the old site stays', async () => {
  const dir = await aged();
  await runCompiled(dir, ...BUILD);
  const before = await contents(join(dir, 'site'));
  await writeFiles(dir, { 'content/cycles/2026-03/cycle.md': cycleText('2026-03', 'Proving') });
  const { status, stderr } = await runCompiled(dir, ...BUILD);
  expect(status).toBe(1);
  expect(stderr).toMatch(/content\/cycles\/2026-03\/cycle\.md:2:1 {2}must fix: .*\(address-lost\)/);
  expect(stderr).toContain('content/addresses.csv:8:1');
  expect(await contents(join(dir, 'site'))).toEqual(before);
  await writeFiles(dir, {
    'content/cycles/2026-03/cycle.md': cycleText('2026-03', 'Proving', 'formerly: [2026-03-rising]\n'),
  });
  const mended = await runCompiled(dir, ...BUILD);
  expect(mended.status).toBe(0);
  expect(await listIn(dir)).toBe(
    `${SHOWN}${SHOWN.match(/.*2026-03-rising.*\n/g)
      ?.join('')
      .replaceAll('rising', 'proving')}`,
  );
});

describe('a list that cannot be written', () => {
  test('leaves the site published, is said each time, and is written by the first build that can', async () => {
    const dir = await aged();
    await mkdir(join(dir, LIST));
    for (const time of [1, 2]) {
      const { status, stdout, stderr } = await runCompiled(dir, ...BUILD);
      expect(status).toBe(0);
      expect(stdout, `time ${time}`).toMatch(/^Made/);
      expect(stderr).toMatch(
        /content\/addresses\.csv:1:1 {2}look at: Unexpected refusal of the disk \(EISDIR\)/,
      );
    }
    expect(existsSync(join(dir, 'site/boxes/2026-03-rising.html'))).toBe(true);
    await rm(join(dir, LIST), { recursive: true });
    await runCompiled(dir, ...BUILD);
    expect(await listIn(dir)).toBe(SHOWN);
  });
});

test('two builds at once write each address down once', async () => {
  const dir = await aged();
  const ended = await Promise.all([BUILD, BUILD, BUILD].map((words) => runCompiled(dir, ...words)));
  expect(ended.map(({ status }) => status)).toEqual([0, 0, 0]);
  expect(await listIn(dir)).toBe(SHOWN);
});

test('a list that an owner saved with a spreadsheet is kept, and the next day’s lines are like its own', async () => {
  const saved = `\ufeff${SHOWN.replace(/kinds.*\n/g, '')
    .replaceAll(',', ';')
    .replaceAll('\n', '\r\n')}`;
  const dir = await aged({ [LIST]: saved });
  expect((await runCompiled(dir, 'build', '--as-of', '2026-04-02')).status).toBe(0);
  expect(await listIn(dir)).toBe(
    `${saved}kinds/flour-sieve.html;kind;2026-04-02\r\nkinds/spoon.html;kind;2026-04-02\r\n`,
  );
});

test('a build that is killed between publishing and writing down leaves it to the next', async () => {
  const dir = await aged();
  const [node = '', ...words] = compiledCommand(...BUILD);
  const { signal } = spawnSync(node, ['--require', HOOK, ...words], {
    cwd: dir,
    env: { ...process.env, LIDLORE_KILL_BEFORE: 'addresses.csv' },
  });
  expect(signal).toBe('SIGKILL');
  expect(existsSync(join(dir, 'site/.lidlore'))).toBe(true);
  expect(await listIn(dir)).toBeUndefined();
  expect(await runCompiled(dir, ...BUILD)).toMatchObject({ status: 0 });
  expect(await listIn(dir)).toBe(SHOWN);
});

describe('the demo', () => {
  let wanted = '';
  beforeAll(async () => {
    const root = join(import.meta.dirname, '../..');
    const box = await demoBox(join(root, '.lidlore'));
    const open = unsealed(box, Date.UTC(2026, 2, 27, 23));
    wanted = addressesToAdd('', publicAddresses(open), '2026-03-27').text;
  });
  test('has the list that its first build would write, so that a fresh clone stays as it was', async () => {
    expect(await readFile(join(import.meta.dirname, '../../content/addresses.csv'), 'utf8')).toBe(wanted);
  });
});

test('a list by hand is what the build reads: a line more is missed, a line less is written again', async () => {
  const dir = await aged();
  await runCompiled(dir, ...BUILD);
  await writeFile(join(dir, LIST), `${SHOWN}boxes/2026-03-dough.html,article 2026-03,2026-03-20\n`);
  expect(await runCompiled(dir, ...BUILD)).toMatchObject({
    status: 1,
    stderr: expect.stringContaining('expected `boxes/2026-03-dough.html`: it was first shown on 2026-03-20'),
  });
  await writeFile(join(dir, LIST), SHOWN.replace(/kinds.*\n/g, ''));
  await runCompiled(dir, ...BUILD);
  expect(await listIn(dir)).toBe(SHOWN);
});
