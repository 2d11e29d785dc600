/** Real processes: two at once, and killed ones. And as many files as a real site has. */
import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { rolldown } from 'rolldown';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { publish } from '../../../src/io/publish/publish.ts';
import { FAULTS, faultyDisk } from '../../support/faulty-disk.ts';
import { killRuns, randomOf } from '../../support/killed-runs.ts';
import { textsOf, treeOf } from '../../support/tree.ts';
import { QUICK_DISK } from '../temporary.ts';
import { addOwnersThings } from './box.ts';
import { manyFiles, manyTexts } from './many-files.ts';

const run = promisify(execFile);
let root = '';
let program = '';
beforeAll(async () => {
  root = await mkdtemp(join(QUICK_DISK, 'lidlore-runs-'));
  program = join(root, 'publisher.mjs');
  const bundle = await rolldown({ input: join(import.meta.dirname, 'publisher.ts'), platform: 'node' });
  await bundle.write({ file: program, format: 'esm' });
});
afterAll(() => rm(root, { recursive: true, force: true }));

const bookkeeping = (dir: string): string[] =>
  [...treeOf(dir).keys()].filter((path) => path.startsWith('.lidlore'));

test('two runs within .4 s, 30 times: one waits for the other, both end well, and the site is one of the two, whole', async () => {
  const dir = join(root, 'pairs');
  const random = randomOf(7);
  let waited = 0;
  for (let pair = 0; pair < 30; pair++) {
    const sites = [`one-${pair}`, `two-${pair}`];
    const said = await Promise.all(
      sites.map(async (site, i) => {
        await new Promise((go) => setTimeout(go, i * random() * random() * 400));
        return (await run(process.execPath, [program, dir, site, '80'])).stdout;
      }),
    );
    waited += said.filter((words) => words === 'waits\n').length;
    const texts = textsOf(treeOf(dir));
    expect(sites.map((site) => manyTexts(site, 80))).toContainEqual(texts);
    expect(bookkeeping(dir)).toEqual(['.lidlore']);
  }
  process.stdout.write(`Pairs of runs: 30, of which ${waited} had one that waited.\n`);
});

test('20 runs killed at random moments: what follows is whole, and the owner’s is as it was', async () => {
  const dir = join(root, 'killed');
  await mkdir(join(root, 'elsewhere'));
  await publish([{ dir, files: manyFiles('first', 300) }]);
  await addOwnersThings(dir, join(root, 'elsewhere'));
  const ours = new Set([...Object.keys(manyTexts('first', 300)), 'boxes', 'pictures']);
  const owners = [...treeOf(dir)].filter(([path]) => !ours.has(path) && !path.startsWith('.lidlore'));
  let halfDone = 0;
  // How long a run takes here and now says when to kill one.
  const begun = performance.now();
  await run(process.execPath, [program, dir, 'second', '300']);
  const wholeMs = performance.now() - begun;
  await publish([{ dir, files: manyFiles('first', 300) }]);
  const killed = await killRuns([process.execPath, program, dir, 'second', '300'], {
    times: 20,
    fromMs: wholeMs * 0.3,
    withinMs: wholeMs * 1.1,
    look: async () => {
      if (bookkeeping(dir).length > 1) halfDone++;
      await publish([{ dir, files: manyFiles('first', 300) }]);
      const tree = treeOf(dir);
      for (const [path, entry] of owners) expect(tree.get(path), path).toEqual(entry);
      const texts = textsOf(new Map([...tree].filter(([path]) => !owners.some(([one]) => one === path))));
      expect(texts).toEqual(manyTexts('first', 300));
      expect(bookkeeping(dir)).toEqual(['.lidlore']);
    },
  });
  process.stdout.write(`Runs killed by SIGKILL: ${killed}, of which ${halfDone} left work half done.\n`);
  expect(killed).toBeGreaterThan(0);
});

test('a call out of 1,100 files’ fails or the process dies, 12 times: the next run gives exactly what is wanted', async () => {
  const random = randomOf(11);
  const counted = faultyDisk(-1, 'die');
  const dir = join(root, 'many');
  await publish([{ dir, files: manyFiles('a', 1100) }]);
  await publish([{ dir, files: manyFiles('b', 1100) }], { fs: counted.fs });
  let met = 0;
  for (let i = 0; i < 12; i++) {
    const at = Math.floor(random() * counted.calls());
    const faulty = faultyDisk(at, FAULTS[i % FAULTS.length] ?? 'die');
    await publish([{ dir, files: manyFiles('a', 1100) }], { fs: faulty.fs }).catch(() => undefined);
    if (faulty.met()) met++;
    // The same folder again and again: one run is put right by the next, whatever that one wants.
    if (i % 4 === 3) {
      const site = i % 8 === 3 ? 'a' : 'b';
      await publish([{ dir, files: manyFiles(site, 1100) }]);
      expect(textsOf(treeOf(dir)), `after call ${at}`).toEqual(manyTexts(site, 1100));
      expect(bookkeeping(dir)).toEqual(['.lidlore']);
    } else
      await publish([{ dir, files: manyFiles('b', 1100) }], { fs: faultyDisk(at, 'die').fs }).catch(
        () => undefined,
      );
  }
  process.stdout.write(`Faults injected over 1,100 files: ${met}, among ${counted.calls()} calls.\n`);
  expect(met).toBeGreaterThan(6);
});
