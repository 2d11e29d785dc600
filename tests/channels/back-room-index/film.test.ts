/** The first page of the back room says whether the film of a cycle is there. */
import { expect, test } from 'vitest';
import { backRoomIndex } from '../../../src/channels/back-room-index/index.ts';
import type { CycleCompleteness } from '../../../src/model/carried.ts';
import { box, cycle, item, settings } from '../../support/box.ts';
import { madeOf } from '../../support/carried-out.ts';
import { privateInput } from '../../support/demo-box.ts';

const given = box({
  settings: settings({ pieces: ['article', 'clip'] }),
  cycles: [cycle({ items: [item()] })],
});
const whole: CycleCompleteness = {
  cycle: '2026-03',
  pieces: ['article', 'clip'],
  rows: [
    { thing: { kind: 'item', name: 'Brass plant mister' }, states: ['there', 'there'] },
    { thing: { kind: 'caution', sort: 'blade' }, states: ['there', 'there'] },
    { thing: { kind: 'address' }, states: ['there', 'absent'] },
  ],
};

/** Cells of the table by row, as they are read. */
const cellsWith = async (...names: readonly string[]): Promise<readonly (readonly string[])[]> => {
  const input = await privateInput(given, Date.UTC(2026, 2, 27));
  const files = names.map((name) => ({ where: 'backroom' as const, path: `2026-03/${name}` }));
  const plan = backRoomIndex.plan({ ...input, files, completeness: [whole] });
  const page = String((await madeOf(plan, input)).find(({ planned }) => 'path' in planned)?.content);
  const table = /<table[\s\S]*?<\/table>/.exec(page)?.[0] ?? '';
  return [...table.matchAll(/<tr[\s\S]*?<\/tr>/g)].map(([row]) =>
    [...row.matchAll(/<t[hd][^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell = '']) =>
      cell
        .replace(/<[^>]*>/g, ' ')
        .replace(/\s+/g, ' ')
        .trim(),
    ),
  );
};

test('a film that is there carries what its clip sheet does, and cautions stand in the post', async () => {
  const [head, ...rows] = await cellsWith('clip-sheet.html', 'clip.mp4');
  expect(head?.slice(1)).toEqual(['Article', 'Clip sheet', 'Film']);
  expect(rows.map((cells) => cells.at(-1))).toEqual([rows[0]?.[2], expect.any(String), 'absent']);
  expect(rows[1]?.at(-1)).not.toBe(rows[0]?.at(-1));
});

test('a film that is not there has no column', async () => {
  const [head] = await cellsWith('clip-sheet.html');
  expect(head?.slice(1)).toEqual(['Article', 'Clip sheet']);
});
