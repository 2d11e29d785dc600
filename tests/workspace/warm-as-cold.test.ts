import { cp, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { lidlore } from '../cli/terminal.ts';
import { contents, sharePictures, temporary, temporaryBox } from '../io/temporary.ts';
import { EDITS, editableBox, MOMENTS } from '../support/random-edits.ts';
import { seeded } from '../support/seeded.ts';
import { shareOf } from '../support/share-of.ts';

const STEPS = shareOf(200);

/** What was published, and what was written down of it. */
const pagesOf = async (root: string): Promise<Record<string, string>> => ({
  'content/addresses.csv': await readFile(join(root, 'content/addresses.csv'), 'utf8').catch(() => ''),
  ...Object.fromEntries(
    Object.entries(await contents(join(root, 'site'))).map(([path, text]) => [`site/${path}`, text]),
  ),
  ...Object.fromEntries(
    Object.entries(await contents(join(root, 'backroom')).catch(() => ({}))).map(([path, text]) => [
      `backroom/${path}`,
      text,
    ]),
  ),
});

/** What was said that does not tell of time or of what was remembered. */
const findings = (stderr: string): string =>
  stderr
    .split('\n')
    .filter((line) => !/^(Looking at photos|Making pictures)/.test(line))
    .join('\n');

const differing = (a: Record<string, string>, b: Record<string, string>): readonly string[] =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])].filter((path) => a[path] !== b[path]).sort();

it(`a build after each of ${STEPS} random edits gives the bytes of a build from nothing`, {
  timeout: 60_000 + STEPS * 4_000,
}, async () => {
  const seed = Number(process.env.LIDLORE_SEED ?? 20_260_319);
  const chance = seeded(seed);
  const warm = await temporaryBox(await editableBox());
  const good = join(await temporary(), 'content');
  const made = new Map<string, number>();
  let [asOf, published, refused] = ['2026-03-27', 0, 0];
  for (let step = 0; step < STEPS; step += 1) {
    let sort = 'the moment';
    if (step > 0 && chance.share() < 0.12) asOf = chance.one(MOMENTS);
    else {
      const edit = chance.one(EDITS);
      if (refused >= 2) {
        // Else one mistake would hide all that comes after it.
        await rm(join(warm, 'content'), { recursive: true });
        await cp(good, join(warm, 'content'), { recursive: true });
        sort = 'all put back as it was';
      } else sort = (await edit.apply(warm, chance)) ? edit.sort : 'nothing';
    }
    made.set(sort, (made.get(sort) ?? 0) + 1);
    const cold = await temporary();
    await cp(join(warm, 'content'), join(cold, 'content'), { recursive: true });
    await cp(join(warm, 'templates'), join(cold, 'templates'), { recursive: true }).catch(() => undefined);
    await sharePictures(cold);
    const again = await lidlore(warm, 'build', '--as-of', asOf, '--without', 'film');
    const first = await lidlore(cold, 'build', '--as-of', asOf, '--without', 'film');
    const where = `step ${step} of seed ${seed}, after ${sort}, as of ${asOf}`;
    expect([again.status, findings(again.stderr)], where).toEqual([first.status, findings(first.stderr)]);
    if (first.status === 0) {
      expect(differing(await pagesOf(warm), await pagesOf(cold)), where).toEqual([]);
      published += 1;
      refused = 0;
      await rm(good, { recursive: true, force: true });
      await cp(join(warm, 'content'), good, { recursive: true });
    } else refused += 1;
    await rm(cold, { recursive: true, force: true });
  }
  console.info(
    `${STEPS} edits of ${made.size} sorts, ${published} published, ${STEPS - published} refused alike`,
  );
  expect(published).toBeGreaterThan(STEPS / 2);
});
