/**
 * The one telling: a cycle's article as an ordered list of parts. Whatever renders the reveal, and whatever
 * measures it, reads this same list, so that they cannot disagree about what stands where.
 */
import type { Root } from 'mdast';
import type { Cycle, Item } from './box.ts';

/** A run of the cycle's own body between placements. `tree` has the body's positions. */
export interface ProsePart {
  readonly part: 'prose';
  readonly tree: Root;
  /** The opening is the first run of prose. */
  readonly opening: boolean;
}
export interface ItemPart {
  readonly part: 'item';
  readonly item: Item;
}
export interface PlainPart {
  readonly part: 'box' | 'voices' | 'peek' | 'call';
}
export type Part = ProsePart | ItemPart | PlainPart;

export interface Telling {
  readonly cycle: Cycle;
  readonly parts: readonly Part[];
}
