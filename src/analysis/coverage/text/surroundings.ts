/** What an article shows of the rest of its box, found once, so that its passages need no other cycle. */
import type { Box, BoxSettings, Cycle, Item, Moment } from '../../../model/box.ts';
import { type Call, callFor, spareOnSale } from '../../../model/calls.ts';
import { hasKindPage } from '../../../model/kinds.ts';
import { earlierOfKind } from '../../../model/relations.ts';

/** What stands with one item. */
export interface ItemSurroundings {
  /** Items of its kind from earlier cycles that its section links to. Their names are read, and nothing else. */
  readonly earlier: readonly Item[];
  /** Whether a spare piece can be bought. */
  readonly onSale: boolean;
  /** Whether its kind has a page that its section links to. */
  readonly hasKindPage: boolean;
}

/** What an article shows beside its own records. */
export interface Surroundings {
  readonly settings: BoxSettings;
  /** One for each of the cycle's items, in their order. */
  readonly items: readonly ItemSurroundings[];
  readonly call: Call | undefined;
}

/** What stands around a cycle at a moment: plain data of the box, all that its article depends on beside its own records. */
export const surroundingsOf = (box: Box, cycle: Cycle, asOf: Moment): Surroundings => ({
  settings: box.settings,
  items: cycle.items.map((item) => ({
    earlier: earlierOfKind(box, item),
    onSale: spareOnSale(item, asOf, box.settings.timeZone),
    // A cycle that is still sealed is read as on the day of its reveal.
    hasKindPage: hasKindPage(
      box,
      item.kind,
      cycle.reveal === undefined ? undefined : Math.max(asOf, cycle.reveal),
    ),
  })),
  call: callFor(box, cycle, asOf),
});
