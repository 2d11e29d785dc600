/** The habit: how many boxes in a row got each piece. */
import type { Cycle, Moment, Piece } from '../../model/box.ts';
import { isSealed } from '../../model/seal.ts';

/** How a piece has been kept up. */
export interface Streak {
  /** Cycles in a row that have the piece, up to the newest that has it or could have had it. */
  readonly length: number;
  /** Whether the newest cycle that was shown has it; if not yet, the streak can still go on. */
  readonly upToDate: boolean;
}

/**
 * The present streak of a piece. A cycle that is to come is not counted against it, nor is the one that was shown last:
 * its piece may be made tomorrow. Anything missing before that ends it.
 */
export const streakOf = (cycles: readonly Cycle[], piece: Piece, asOf: Moment): Streak => {
  const has = (cycle: Cycle | undefined): boolean => cycle?.made?.[piece] !== undefined;
  const newest = cycles.findLastIndex((cycle) => !isSealed(cycle, asOf));
  const last = cycles.findLastIndex((cycle, i) => has(cycle) || i < newest);
  const gap = cycles.findLastIndex((cycle, i) => i <= last && !has(cycle));
  return {
    length: last - gap,
    upToDate: has(cycles[newest]),
  };
};
