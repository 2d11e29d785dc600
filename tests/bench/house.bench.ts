/**
 * The house: what each thing that an owner waits for costs, beside the least it could. `npm run bench -- house`
 * leaves out the longest; `LIDLORE_BENCH=all` adds 96 photos and 1,200 cycles. It measures the program in dist/.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { bundleScript } from './bundle.ts';
import { type Cost, compare, costOf, exponentOf, medianCost, type Program, RUNS } from './cost.ts';
import { editLatency } from './edit-latency.ts';
import { percentile } from './percentile.ts';
import { renditionsIn, writePhotoBox } from './photo-box.ts';
import { type Row, ratioRow, tableLines } from './table.ts';
import { AFTER_ALL, writeTextBox } from './text-box.ts';

const ROOT = join(import.meta.dirname, '../..');
const MAIN = join(ROOT, 'dist/cli/main.js');
const ALL = process.env.LIDLORE_BENCH === 'all';

/** The demo on the day it is built for, and its newest cycle then. */
const DEMO_DAY = '2026-03-27';
const DEMO_CYCLE = '2026-03';

const dir = mkdtempSync(join(tmpdir(), 'lidlore-bench-'));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

const folder = (name: string): string => {
  const path = join(dir, name);
  mkdirSync(path, { recursive: true });
  return path;
};

const nothing: Program = { words: ['-e', '0'] };

const lidlore = (cwd: string, ...words: readonly string[]): Program => ({ words: [MAIN, ...words], cwd });

/** A build has nothing to go by: no site, no back room, nothing remembered. */
const forget = (cwd: string): void => {
  for (const name of ['site', 'backroom', '.lidlore'])
    rmSync(join(cwd, name), { recursive: true, force: true });
};

/** A copy of the demo, built; pictures that were made before are taken along. */
const demo = (): string => {
  const cwd = folder('demo');
  cpSync(join(ROOT, 'content'), join(cwd, 'content'), { recursive: true });
  const kept = join(ROOT, '.lidlore');
  if (existsSync(kept)) cpSync(kept, join(cwd, '.lidlore'), { recursive: true });
  costOf(lidlore(cwd, 'build', '--as-of', DEMO_DAY));
  return cwd;
};

let words = 0;

/** Puts a word that no run has seen at the end of the first item's story of the demo's newest cycle. */
const changeOneWord = (cwd: string): void => {
  const file = join(cwd, 'content/cycles', DEMO_CYCLE, 'items/01-wooden-seed-tray.md');
  words += 1;
  const word = `quiet${String.fromCharCode(96 + words)}`;
  writeFileSync(file, readFileSync(file, 'utf8').replace(/(?: quiet[a-z]+)?\n*$/, ` ${word}\n`));
};

const latencyRow = async (cycles: number, most: number): Promise<Row> => {
  const question = `one word changed, workspace open, ${cycles} cycles: 95th percentile`;
  const aim = `≤ ${most} ms`;
  const cwd = folder(`open-${cycles}`);
  writeTextBox(cwd, cycles);
  const times = await editLatency(join(cwd, 'content'), 100, AFTER_ALL);
  const [wall, cpu] = (['wall', 'cpu'] as const).map((of) =>
    percentile(
      times.map((time) => time[of]),
      0.95,
    ),
  );
  const remark = `${wall?.toFixed(1)} ms of ${times.length} edits, processor time ${cpu?.toFixed(1)} ms`;
  return { question, aim, met: wall !== undefined && wall <= most, remark };
};

const photoRow = async (): Promise<Row> => {
  const question = 'cold build, 12 cycles, 96 photos of 12 megapixels';
  if (!ALL) return { question, aim: '≤ 1.1 ×', remark: 'asked for by LIDLORE_BENCH=all' };
  const cwd = folder('photos');
  await writePhotoBox(cwd, 12);
  const build = lidlore(cwd, 'build', '--as-of', AFTER_ALL);
  costOf(build);
  const plan = join(dir, 'plan.json');
  writeFileSync(plan, JSON.stringify(await renditionsIn(join(cwd, 'site'), join(cwd, 'content'))));
  const bare = await bundleScript('floors/pictures', dir);
  const floor: Program = { words: [bare, join(cwd, 'content'), plan, join(dir, 'bare')] };
  return ratioRow(
    question,
    compare(floor, build, () => forget(cwd)),
    1.1,
  );
};

/** Whether the program knows how to build without proofs: words that it does not know end it with 2. */
const canLeaveOutProofs = (cwd: string): boolean => {
  const words = [MAIN, 'build', '--without', 'proof', '--as-of', AFTER_ALL];
  return spawnSync(process.execPath, words, { cwd, stdio: 'ignore' }).status !== 2;
};

const GIGABYTE = 2 ** 30;

const textRows = async (sizes: readonly number[]): Promise<readonly Row[]> => {
  const floorFile = await bundleScript('floors/markdown', dir);
  const ways = [
    { name: 'without proofs', words: ['--without', 'proof'], most: 1.5 },
    { name: 'with proofs', words: [], most: 4 },
  ];
  const rows: Row[] = [];
  for (const { name, words, most } of ways) {
    const points: { readonly size: number; readonly cost: Cost }[] = [];
    for (const size of sizes) {
      const question = `text only, ${size} cycles, first build, ${name}`;
      const cwd = folder(`text-${size}`);
      writeTextBox(cwd, size);
      if (words.length > 0 && size === sizes[0] && !canLeaveOutProofs(cwd)) {
        rows.push({
          question: `text only, first build, ${name}`,
          aim: `≤ ${most} ×`,
          remark: 'not measured: the command refuses --without proof',
        });
        break;
      }
      const floor: Program = { words: [floorFile, join(cwd, 'content'), join(dir, 'floor.html')] };
      const build = lidlore(cwd, 'build', '--as-of', AFTER_ALL, ...words);
      const compared = compare(floor, build, () => forget(cwd));
      points.push({ size, cost: compared.ours });
      rows.push(ratioRow(question, compared, most));
    }
    const last = points.at(-1);
    if (!last || points.length < 2) continue;
    const exponents = (['cpu', 'wall'] as const).map((of) =>
      exponentOf(points.map(({ size, cost }) => ({ size, time: cost[of] }))),
    );
    rows.push({
      question: `exponent of growth to ${last.size} cycles, ${name}`,
      aim: '≤ 1.05',
      met: exponents.every((exponent) => exponent <= 1.05),
      remark: `${exponents.map((exponent) => exponent.toFixed(2)).join(' / ')}`,
    });
    rows.push({
      question: `peak memory at ${last.size} cycles, ${name}`,
      aim: '≤ 1 GB at 1,200',
      ...(last.size === 1200 ? { met: last.cost.peak <= GIGABYTE } : {}),
      remark: `${(last.cost.peak / 2 ** 20).toFixed(0)} MB`,
    });
  }
  return rows;
};

const proofRow = (question: string, proof: Program, most: number): Row => {
  // Below the aim a proof ends with 1.
  const ours = medianCost(Array.from({ length: RUNS }, () => costOf({ ...proof, ends: [0, 1] })));
  return { question, runs: RUNS, ours, aim: `≤ ${most} s of processor time`, met: ours.cpu <= most };
};

test('the house', { timeout: 6 * 3600 * 1000 }, async () => {
  const rows: Row[] = [];
  const say = (row: Row): void => {
    rows.push(row);
    console.error(tableLines([row]).at(-1));
  };
  const box = demo();
  const build = lidlore(box, 'build', '--as-of', DEMO_DAY);
  say(ratioRow('nothing changed', compare(nothing, build), 1.6));
  const article: Program = {
    words: [
      await bundleScript('floors/article', dir),
      join(box, 'content/cycles', DEMO_CYCLE),
      join(dir, 'floor.html'),
    ],
  };
  say(
    ratioRow(
      'one word changed in one of 12',
      compare(article, build, () => changeOneWord(box)),
      1.5,
    ),
  );
  say(await latencyRow(12, 60));
  say(await latencyRow(240, 150));
  say(await photoRow());
  for (const row of await textRows(ALL ? [12, 120, 1200] : [12, 120])) say(row);
  say(proofRow('proof of one of 12', lidlore(box, 'proof', DEMO_CYCLE, '--as-of', DEMO_DAY), 0.35));
  if (ALL) {
    const cwd = folder('text-1200');
    const newest = writeTextBox(cwd, 1200).at(-1) ?? '';
    say(proofRow('proof of one of 1,200', lidlore(cwd, 'proof', newest, '--as-of', AFTER_ALL), 0.6));
  } else
    say({
      question: 'proof of one of 1,200',
      aim: '≤ 0.6 s of processor time',
      remark: 'asked for by LIDLORE_BENCH=all',
    });
  say(ratioRow('--help', compare(nothing, lidlore(ROOT, '--help')), 1.25));
  console.log(`\nMedians, seconds: processor time / wall.\n${tableLines(rows).join('\n')}`);
});
