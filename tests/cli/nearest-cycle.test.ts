import { expect, test } from 'vitest';
import { nearestCycle } from '../../src/cli/nearest-cycle.ts';

const CYCLES = ['2025-09', '2025-10', '2026-03', '2026-04'];

test.each([
  ['2026-99', undefined],
  ['2026-13', '2026-03'],
  ['202604', '2026-04'],
  ['2026-4', '2026-04'],
  ['2026-06', '2026-04'],
  ['2025-12', '2025-10'],
  ['2019-01', undefined],
  // Set aside until the rule stood.
  ['2026-00', '2026-04'],
  ['2052-90', undefined],
  ['2026-02', '2026-04'],
  ['2026-09', '2026-04'],
  ['spring', undefined],
])('whoever names the cycle %s means %s', (typed, meant) => {
  expect(nearestCycle(typed, CYCLES)).toBe(meant);
});
