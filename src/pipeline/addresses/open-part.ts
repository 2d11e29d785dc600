/** The part of a box whose pages are made as of a moment. */
import type { Box, Moment } from '../../model/box.ts';
import { isOpen } from '../../model/seal.ts';

/** The box with its open cycles alone, for what asks only where pages stand: no story is looked into. */
export const openPart = (box: Box, asOf: Moment): Box => ({
  ...box,
  cycles: box.cycles.filter((cycle) => isOpen(cycle, asOf)),
});
