import { describe, expect, test } from 'vitest';
import type { Box, Cycle, Item } from '../../src/model/box.ts';
import { callFor } from '../../src/model/calls.ts';
import { nextChange } from '../../src/model/next-change.ts';
import { unsealed } from '../../src/model/seal.ts';
import * as sample from '../support/box.ts';

const terms = (text: string) => ({ address: `https://example.org/${text}`, text });
const calls = { join: terms('join'), waitList: terms('wait'), spare: terms('spare') };
const spare = (until: string) => ({
  count: 2,
  price: { amount: '4.00', currency: 'GBP' },
  address: 'https://example.org/s',
  until,
});
const cycleOf = (id: string, more: Partial<Cycle> = {}, item: Partial<Item> = {}): Cycle =>
  sample.cycle({
    id,
    reveal: Date.parse(`${id}-20T19:00Z`),
    items: [sample.item({ cycle: id, ...item })],
    ...more,
  });
const boxOf = (call: 'join' | 'spare', ...cycles: readonly Cycle[]): Box => ({
  ...sample.box(),
  settings: sample.settings({ calls, call }),
  cycles,
});
const NOW = Date.parse('2026-02-25T12:00Z');

describe('the next change', () => {
  test('is not the end of a sale that nobody saw begin', () => {
    // Its last day is past when the cycle is revealed.
    const box = boxOf('join', cycleOf('2026-03', {}, { spare: spare('2026-03-01') }));
    expect(nextChange(box, NOW)).toMatchObject({
      at: Date.parse('2026-03-20T19:00Z'),
      changes: [{ change: 'reveal' }],
    });
  });

  test('names the box’s call once, and not that of every page which follows it', () => {
    const box = boxOf(
      'spare',
      cycleOf('2026-01', { call: 'join' }),
      cycleOf('2026-02', {}, { spare: spare('2026-02-28') }),
    );
    expect(nextChange(box, NOW)).toEqual({
      at: Date.parse('2026-03-01T00:00Z'),
      changes: [
        { change: 'spare', cycle: '2026-02', item: 'plant-mister', name: 'Brass plant mister' },
        { change: 'call', call: 'waitList' },
      ],
    });
  });

  test('is none where all is shown and nothing ends, and none that parcels will bring', () => {
    expect(nextChange(boxOf('join', cycleOf('2026-01')), NOW)).toBeUndefined();
    const waiting = cycleOf('2026-03', { reveal: undefined, whenDelivered: {} });
    expect(nextChange(boxOf('join', waiting), NOW)).toBeUndefined();
  });
});

describe('the call for spare pieces', () => {
  test('of the whole box does not count what is sealed, so that papers and pages say the same', () => {
    const box = boxOf('spare', cycleOf('2026-01'), cycleOf('2026-03', {}, { spare: spare('2026-12-31') }));
    expect(callFor(box, undefined, NOW)?.kind).toBe('waitList');
    expect(callFor(unsealed(box, NOW), undefined, NOW)?.kind).toBe('waitList');
    expect(callFor(box, undefined, Date.parse('2026-03-20T19:00Z'))?.kind).toBe('spare');
  });
});

test('a cycle without a moment is never taken for one that was revealed', () => {
  const waiting = cycleOf('2026-03', { reveal: undefined });
  expect(unsealed(boxOf('join', waiting), Number.MAX_SAFE_INTEGER).cycles).toEqual([]);
});
