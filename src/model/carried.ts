/** What a cycle's pieces have to carry, and whether they do, as their finished files say. */
import type { Piece } from './box.ts';
import type { Caution } from './cautions.ts';

/** One thing that pieces carry. `address` is the call's. */
export type CarriedThing =
  | { readonly kind: 'item'; readonly name: string }
  | { readonly kind: 'caution'; readonly sort: Caution['sort'] }
  | { readonly kind: 'peek' }
  | { readonly kind: 'call'; readonly text: string }
  | { readonly kind: 'address' };

/** How a piece stands to one thing: `not asked` is one that it need not carry, `kept still` one that it must not name. */
export type PieceState =
  | 'there'
  | 'absent'
  | 'sealed'
  | 'not made'
  | 'not asked'
  | 'kept still'
  | 'given away';

/** States that somebody has to look at. */
export const WRONG_STATES: ReadonlySet<PieceState> = new Set(['absent', 'given away']);

/** How each piece stands to one thing. */
export interface CarriedRow {
  readonly thing: CarriedThing;
  /** One for each of the cycle's pieces. */
  readonly states: readonly PieceState[];
}

/** What each chosen piece of a cycle carries. */
export interface CycleCompleteness {
  /** The cycle's id. */
  readonly cycle: string;
  readonly pieces: readonly Piece[];
  /** An item is followed by its cautions; peek, call and address come last. */
  readonly rows: readonly CarriedRow[];
}

/** Of every cycle, in the order of the box. */
export type Completeness = readonly CycleCompleteness[];
