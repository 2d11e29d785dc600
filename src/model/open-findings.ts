/** What a page that can be read is missing, as of a moment. */
import { type Diagnostic, mustFix } from '../diagnostics/diagnostic.ts';
import type { Box, Moment } from './box.ts';
import { locationIn } from './location-in.ts';
import { isOpen } from './seal.ts';

/** A cycle that may be shown and has nothing in it is a page about nothing; while it is sealed, it is a plan. */
export const openFindings = ({ cycles }: Box, asOf: Moment): readonly Diagnostic[] =>
  cycles
    // Where its records are at fault, that is what has to be mended.
    .filter((cycle) => cycle.items.length === 0 && cycle.itemsAtFault === undefined && isOpen(cycle, asOf))
    .map(({ id, source }) =>
      mustFix(
        'cycle-empty',
        locationIn(source, 'reveal', 'theme'),
        `Unexpected reveal of ${id} without an item, expected at least one file in cycles/${id}/items/`,
        'Write its items, or move `reveal` to a later moment',
      ),
    );
