import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dateOfDay, dayOfDate } from '../../src/text/days.ts';
import { contents, temporaryBox, writeFiles } from '../io/temporary.ts';
import { lidlore } from './terminal.ts';
import { tinyBox } from './tiny-box.ts';

const LEFT = dayOfDate('2026-03-03');
/** A row of a parcel that took so many days, or is still on its way; with a name that must go nowhere. */
const row = (days: number | undefined, carrier: string, i: number): string =>
  `"Quillfeather, No. ${i}",${dateOfDay(LEFT)},${days === undefined ? '' : dateOfDay(LEFT + days)},${carrier}`;
const LIST = [
  'Name,shipped,delivered,carrier',
  ...Array.from({ length: 90 }, (_, i) => row(3 + (i % 6), 'Xanthic Post', i)),
  ...Array.from({ length: 10 }, (_, i) => row(i === 0 ? 9 : undefined, 'Skerry Packet', i)),
].join('\r\n');

/** The tiny box with a list for its first cycle. */
const boxWith = async (list: string | Uint8Array, more = '') => {
  const files = await tinyBox();
  files['content/cycles/2026-03/parcels.csv'] = list;
  files['content/box.md'] = String(files['content/box.md']).replace('every: P1M', `every: P1M${more}`);
  return temporaryBox(files);
};
const HABIT = '\nreveal: {share: 0.9, weekdays: [thursday], time: "19:00"}';

describe('lidlore parcels', () => {
  test('says in plain words what has arrived, what is overdue and which carrier is slow', async () => {
    const dir = await boxWith(LIST, HABIT);
    const { status, stdout } = await lidlore(dir, 'parcels', '--as-of', '2026-03-14');
    expect(status).toBe(0);
    expect(stdout).toMatchInlineSnapshot(`
      "Parcels of 2026-03, Proving, as of 2026-03-14
      91 of 100 parcels have arrived, 91%; 9 are on the way.

      Nine in ten had arrived by 11 March 2026, 8 days after they left.

      Reveal
      The reveal is planned for Thursday 19 March 2026, 19:00. It is safe: nine in ten have arrived.
      The first evening of the box’s habit from now on is that one.
        Thursday 19 March 2026, 19:00: 91% expected by the day before
        Thursday 26 March 2026, 19:00: 91% expected by the day before
        Thursday 2 April 2026, 19:00: 91% expected by the day before

      Overdue
      Of what has arrived, 99 in a hundred took at most 9 days; 9 parcels on the way are older and should
      be chased.
        9 parcels that left on 2026-03-03, 11 days ago: content/cycles/2026-03/parcels.csv, lines 93, 94,
        95, 96, 97, 98, 99, 100, 101

      By carrier
      Skerry Packet is slower than the others, beyond chance: 1 of 10 parcels has arrived, the newest on
      12 March 2026.
      Carrier        Parcels  Arrived  On way  Overdue  Share  Half by
      Xanthic Post        90       90       0        0   100%    day 5
      Skerry Packet       10        1       9        9    10%           slow

      Share arrived by days since they left (Aalen-Johansen)
      Day  Waiting  Arrived  Share  95% limits
        3      100       15  0.150  0.093 to 0.236
        4       85       15  0.300  0.220 to 0.400
        5       70       15  0.450  0.359 to 0.553
        6       55       15  0.600  0.506 to 0.696
        7       40       15  0.750  0.662 to 0.830
        8       25       15  0.900  0.832 to 0.949
        9       10        1  0.910  0.844 to 0.956
      "
    `);
    expect(stdout.split('\n').filter((line) => line.length > 100)).toEqual([]);
  });

  test('gives the whole curve as JSON', async () => {
    const dir = await boxWith(LIST, HABIT);
    const { status, stdout } = await lidlore(dir, 'parcels', '2026-03', '--as-of', '2026-03-14', '--json');
    const found = JSON.parse(stdout);
    expect(status).toBe(0);
    expect(found).toMatchObject({
      ok: true,
      cycle: '2026-03',
      parcels: 100,
      delivered: 91,
      travelling: 9,
      wanted: 0.9,
    });
    expect(found.curve[0]).toEqual({
      day: 3,
      atRisk: 100,
      delivered: 15,
      share: expect.closeTo(0.15, 12),
      standardError: expect.closeTo(Math.sqrt((0.15 * 0.85) / 100), 12),
      lower: expect.any(Number),
      upper: expect.any(Number),
    });
    expect(found.outlook.dates.day).toBe('2026-03-11');
    expect(stdout).not.toContain('Quillfeather');
  });

  test('reads a file that is not in place yet, as it is, in windows-1252 and UTF-16 too', async () => {
    const dir = await boxWith(LIST);
    const list = LIST.replaceAll('Skerry Packet', 'Poste Sévère');
    await writeFiles(dir, {
      'latin.csv': Buffer.from(list, 'latin1'),
      'wide.csv': Buffer.from(`\ufeff${list}`, 'utf16le'),
      'plain.csv': list,
    });
    for (const file of ['latin.csv', 'wide.csv', 'plain.csv']) {
      const { status, stdout } = await lidlore(dir, 'parcels', file, '--as-of', '2026-03-14');
      expect(status).toBe(0);
      expect(stdout).toContain('Poste Sévère is slower than the others, beyond chance: 1 of 10 parcels');
    }
  });

  test('tells a cycle without a list from an earlier one', async () => {
    const dir = await boxWith(LIST, HABIT);
    const { stdout } = await lidlore(dir, 'parcels', '2026-04', '--as-of', '2026-04-01');
    expect(stdout).toContain('There is no list of its parcels yet.');
    expect(stdout).toContain('Told from the earlier cycle (2026-03).');
  });

  test.each([
    [['parcels', '2026-05'], 'There is no cycle 2026-05'],
    [['parcels', 'nowhere.csv'], 'There is no file nowhere.csv.'],
    [['parcels', '--share', '9'], 'Unexpected --share 9, expected a share between 0 and 1'],
    [['parcels', '--share', '1.0'], 'Unexpected --share 1.0'],
    [['parcels', '--as-of', 'soon'], 'Unexpected --as-of soon'],
    [['parcels', 'a', 'b'], 'Unexpected second b'],
  ])('refuses %j', async (words, says) => {
    const dir = await boxWith(LIST);
    const { status, stderr } = await lidlore(dir, ...words);
    expect({ status, says: stderr.includes(says) }, stderr).toEqual({ status: 2, says: true });
  });

  test('gives no figures of a file that cannot be relied on, and ends with 1', async () => {
    const dir = await boxWith(LIST.replaceAll('2026-03', '03/2026'));
    const { status, stdout, stderr } = await lidlore(dir, 'parcels', '--as-of', '2026-03-14');
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toContain('content/cycles/2026-03/parcels.csv:1:1  must fix: Unexpected dates');
  });
});

describe('lidlore build', () => {
  test('puts a paper on the parcels into the back room, and nothing of them into the site', async () => {
    const dir = await boxWith(LIST, HABIT);
    await lidlore(dir, 'build', '--as-of', '2026-03-27');
    const papers = await contents(join(dir, 'backroom'));
    expect(papers['2026-03/parcels.html']).toContain('Xanthic Post');
    expect(papers['2026-04/parcels.html']).toContain('There is no list of its parcels yet.');
    expect(Object.values(papers).join()).not.toContain('Quillfeather');
    const marks = /Xanthic|Skerry|Quillfeather|parcels\.(csv|html)/;
    const site = Object.entries(await contents(join(dir, 'site')));
    expect(site.filter((entry) => marks.test(entry.join())).map(([path]) => path)).toEqual([]);
  });
});
