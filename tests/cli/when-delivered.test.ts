import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { contents, temporaryBox, writeFiles } from '../io/temporary.ts';
import { lidlore } from './terminal.ts';
import { tinyBox } from './tiny-box.ts';

const CYCLE = 'content/cycles/2026-04';
const LIST = `${CYCLE}/parcels.csv`;
const list = (...delivered: readonly string[]): string =>
  `shipped,delivered\n${delivered.map((day) => `2026-04-03,${day}\n`).join('')}`;
const NEARLY_ALL = list(...Array.from({ length: 9 }, (_, i) => `2026-04-0${5 + Math.min(i, 4)}`), '');

const waitingBox = async (): Promise<string> => {
  const files = await tinyBox();
  const record = files[`${CYCLE}/cycle.md`] as string;
  return temporaryBox({
    ...files,
    [`${CYCLE}/cycle.md`]: record.replace(/^reveal: .*$/m, 'reveal: when-delivered'),
  });
};
const shows = async (dir: string): Promise<boolean> => {
  const site = Object.entries(await contents(join(dir, 'site')));
  return site.some((entry) => /scraper|2026-04/i.test(entry.join()));
};

describe('a box whose reveal waits for its parcels', () => {
  it('opens when they have arrived, and closes again when its list is gone', async () => {
    const dir = await waitingBox();
    const without = await lidlore(dir, 'build', '--as-of', '2026-04-30');
    expect(without.status).toBe(0);
    expect(without.stdout).toContain('Sealed until its parcels have arrived: 2026-04, Proving.');
    expect(without.stdout).toContain('Build again with a newer list of the parcels of 2026-04.');
    expect(without.stderr).toMatch(
      /content\/cycles\/2026-04\/cycle\.md:5:1 {2}look at: .*\(reveal-parcels\)/,
    );
    expect(await shows(dir)).toBe(false);

    await writeFiles(dir, { [LIST]: NEARLY_ALL });
    // The ninth of ten came on 9 April; without a habit every evening will do, at 19:00.
    const early = await lidlore(dir, 'build', '--as-of', '2026-04-10T18:59');
    expect(early.stdout).toContain('Sealed until 10 April 2026: 2026-04, Proving.');
    expect(early.stdout).toContain('Build again after 10 April 2026, 19:00: 2026-04, Proving, is revealed.');
    expect(await shows(dir)).toBe(false);
    const open = await lidlore(dir, 'build', '--as-of', '2026-04-10T19:00');
    expect(open.stdout).not.toMatch(/Sealed until|Build again/);
    expect(await shows(dir)).toBe(true);

    await rm(join(dir, LIST));
    expect((await lidlore(dir, 'build', '--as-of', '2026-04-30')).status).toBe(0);
    expect(await shows(dir)).toBe(false);
  });

  it('stays closed with a list that is broken, and the build says what to mend', async () => {
    const dir = await waitingBox();
    await lidlore(dir, 'build', '--as-of', '2026-04-30');
    await writeFiles(dir, { [LIST]: NEARLY_ALL.replace('delivered', 'arrived') });
    const broken = await lidlore(dir, 'build', '--as-of', '2026-04-30');
    expect(broken.status).toBe(1);
    expect(broken.stderr).toContain('(parcels-column)');
    expect(await shows(dir)).toBe(false);
    await writeFiles(dir, { [LIST]: '' });
    await lidlore(dir, 'build', '--as-of', '2026-04-30');
    expect(await shows(dir)).toBe(false);
  });

  it('is told of as data too, with the next build', async () => {
    const dir = await waitingBox();
    const said = async (asOf: string): Promise<object> =>
      JSON.parse((await lidlore(dir, 'build', '--json', '--as-of', asOf)).stdout);
    expect(await said('2026-03-27')).toMatchObject({
      ok: true,
      sealed: [{ cycle: '2026-04', theme: 'Proving', until: 'its parcels have arrived' }],
    });
    expect(await said('2026-03-27')).not.toHaveProperty('next');
    expect(await said('2026-03-10')).toMatchObject({
      next: {
        at: '2026-03-19T19:00:00Z',
        words: '19 March 2026, 19:00: 2026-03, Proving, is revealed',
        changes: [{ change: 'reveal', cycle: '2026-03', theme: 'Proving' }],
      },
    });
  });

  it('can be proved and its parcels told of before anybody knows the day', async () => {
    const dir = await waitingBox();
    await writeFiles(dir, { [LIST]: list('2026-04-05', '2026-04-06', '', '') });
    const proof = await lidlore(dir, 'proof', '2026-04', '--as-of', '2026-04-07');
    expect(proof.stdout, proof.stderr).toContain('Zanzibar dough scraper');
    const parcels = await lidlore(dir, 'parcels', '2026-04', '--as-of', '2026-04-07');
    expect(parcels.stdout, parcels.stderr).toMatch(/2 of 4/);
    expect(parcels.stdout).not.toMatch(/The reveal is planned/);
    await writeFiles(dir, { [LIST]: NEARLY_ALL });
    const known = await lidlore(dir, 'parcels', '2026-04', '--as-of', '2026-04-10T12:00');
    expect(known.stdout.replace(/\s+/g, ' ')).toContain(
      'The reveal is planned for Friday 10 April 2026, 19:00',
    );
  });
});
