/** Two builds of one box at the same time, each a process of its own: they share the memory and the folders. */
import { appendFileSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runCompiled } from '../../support/compiled.ts';
import { editableBox } from '../../support/random-edits.ts';
import { seeded } from '../../support/seeded.ts';
import { shareOf } from '../../support/share-of.ts';
import { textsOf, treeOf } from '../../support/tree.ts';
import { sharePictures, temporary, writeFiles } from '../temporary.ts';

// Three at least: with the folders gone, with all there, and with the memory gone.
const PAIRS = Math.max(3, shareOf(20));
const BUILD = ['build', '--as-of', '2026-03-27', '--without', 'film'] as const;
const STORY = 'content/cycles/2026-02/items/01-bread-knife.md';

const made = (dir: string): object => ({
  site: textsOf(treeOf(join(dir, 'site'))),
  backroom: textsOf(treeOf(join(dir, 'backroom'))),
});

test(`${PAIRS} pairs: both end well, and the files are those of a build from nothing`, async () => {
  const box = await editableBox();
  const [dir, reference] = [await temporary(box), await temporary(box)];
  appendFileSync(join(reference, STORY), '\nIt cuts the crust as well.\n');
  await sharePictures(reference);
  const edited = await runCompiled(reference, ...BUILD);
  const wanted = [made(reference)];
  await writeFiles(reference, box);
  for (const name of ['.lidlore', 'site', 'backroom']) rmSync(join(reference, name), { recursive: true });
  await sharePictures(reference);
  const asItWas = await runCompiled(reference, ...BUILD);
  wanted.unshift(made(reference));
  expect([edited.status, asItWas.status]).toEqual([0, 0]);
  expect(wanted[0]).not.toEqual(wanted[1]);

  const chance = seeded(20);
  let overlapped = 0;
  for (let pair = 0; pair < PAIRS; pair++) {
    await writeFiles(dir, { [STORY]: box[STORY] ?? '' });
    if (pair % 2 === 1) appendFileSync(join(dir, STORY), '\nIt cuts the crust as well.\n');
    const lacks = [['site', 'backroom'], [], ['.lidlore'], [], []][pair % 5] ?? [];
    for (const name of lacks) rmSync(join(dir, name), { recursive: true, force: true });
    const later = chance.below(200);
    const ended = await Promise.all(
      [0, later].map(async (wait) => {
        await new Promise((go) => setTimeout(go, wait));
        return runCompiled(dir, ...BUILD);
      }),
    );
    for (const { status, stderr } of ended)
      expect({ status, stderr }, `pair ${pair}`).toEqual({
        status: 0,
        stderr: expect.not.stringContaining('bug'),
      });
    if ((ended[0]?.ms ?? 0) > later) overlapped++;
    expect(made(dir), `pair ${pair}`).toEqual(wanted[pair % 2]);
    for (const folder of ['site', 'backroom'])
      expect(readdirSync(join(dir, folder)).filter((name) => name.startsWith('.'))).toEqual(['.lidlore']);
  }
  console.info(
    `Pairs of builds on one memory: ${PAIRS}, of which ${overlapped} were at work at the same time.`,
  );
  expect(overlapped).toBeGreaterThan(PAIRS / 2);
}, 120_000);
