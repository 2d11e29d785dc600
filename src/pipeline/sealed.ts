/** What may not be shown yet, for who built. */
import type { Box, Moment } from '../model/box.ts';
import { isSealed } from '../model/seal.ts';

/** A cycle that is not shown yet. */
export interface SealedCycle {
  readonly cycle: string;
  readonly theme: string;
  /** Absent while it waits for its parcels. */
  readonly reveal?: Moment;
}

/** The cycles of a box that are sealed as of a moment, the oldest first. */
export const sealedIn = ({ cycles }: Box, asOf: Moment): readonly SealedCycle[] =>
  cycles
    .filter((cycle) => isSealed(cycle, asOf))
    .map(({ id, theme, reveal }) => ({ cycle: id, theme, ...(reveal !== undefined && { reveal }) }));
