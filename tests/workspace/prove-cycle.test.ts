import { expect, test } from 'vitest';
import { momentOf } from '../../src/model/calendar.ts';
import { type Proven, proveCycle } from '../../src/workspace/prove-cycle.ts';
import { BOX, cycleText, itemText } from '../analysis/article.ts';
import { temporary } from '../io/temporary.ts';
import { shortMemory } from '../support/short-memory.ts';

/** A list that cannot be relied on, so that whoever reads it has something to say. */
const BROKEN_LIST = 'sent,came\n2026-03-03,2026-03-05\n';

const prove = async (reveal: string, list: string): Promise<Proven> => {
  const dir = await temporary({
    'box.md': BOX,
    'cycles/2026-03/cycle.md': cycleText('It came in March.', { reveal }),
    'cycles/2026-03/items/01-seed-tray.md': itemText('Seed tray', 'seed tray', 'Fill it.', { lead: true }),
    'cycles/2026-03/parcels.csv': list,
  });
  return proveCycle({
    path: dir,
    memory: shortMemory(),
    program: 'this one',
    asOf: momentOf('2026-03-19T19:00', 'Europe/London') ?? 0,
  });
};
const rulesOf = ({ diagnostics }: Proven): readonly string[] => [
  ...new Set(diagnostics.map(({ rule }) => rule).filter((rule) => rule.startsWith('parcels'))),
];

test('a proof reads the list of parcels only where a reveal waits for it', async () => {
  const dated = await prove('2026-03-19T19:00', BROKEN_LIST);
  expect(dated.coverage?.cycle).toBe('2026-03');
  expect(rulesOf(dated)).toEqual([]);
  const waiting = await prove('when-delivered', BROKEN_LIST);
  expect(waiting.coverage?.cycle).toBe('2026-03');
  expect(rulesOf(waiting)).toEqual(['parcels-column']);
});

test('of a box without cycles there is no proof, and no mistake of ours', async () => {
  const dir = await temporary({ 'box.md': BOX });
  const asked = { path: dir, memory: shortMemory(), program: 'this one', asOf: 0 };
  expect(await proveCycle(asked)).toEqual({ cycles: [], diagnostics: [] });
  expect(await proveCycle({ ...asked, cycle: '2026-03' })).toEqual({ cycles: [], diagnostics: [] });
});
