/** What each piece must carry. */
import type { Piece } from '../../model/box.ts';
import { type Caution, isDanger } from '../../model/cautions.ts';

/** Of which things a piece must carry which. */
export interface Duty {
  readonly items: boolean;
  readonly caution: (caution: Pick<Caution, 'sort'>) => boolean;
  /** `begun`: its first sentence will do, where the piece has not the time for more. */
  readonly peek: 'whole' | 'begun' | 'no';
  readonly callText: boolean;
  readonly callAddress: boolean;
}

const nothing: Duty = {
  items: false,
  caution: () => false,
  peek: 'no',
  callText: false,
  callAddress: false,
};
const all: Duty = { items: true, caution: () => true, peek: 'whole', callText: true, callAddress: true };

/** By piece. */
export const duties: Readonly<Record<Piece, Duty>> = {
  // It keeps still: nothing in it may name what the box holds.
  invitation: nothing,
  // The owner's own words may ask for the same in other words; the address is on the card they hold up.
  live: { ...all, caution: isDanger, peek: 'begun', callText: false },
  article: all,
  letter: all,
  // Thirty seconds have no room for the peek.
  clip: { ...all, caution: isDanger, peek: 'no' },
  // What is kept for months has no use for a look at the next box.
  cards: { ...all, caution: isDanger, peek: 'no' },
};
