/** A cycle's cards as they are posted, for who shows them elsewhere than on their paper. */
import { type PostedCard, postedCardsOf } from '../channels/cards/page.ts';
import { cardsTold } from '../channels/cards/plan.ts';
import type { Wording } from '../wording/wording.ts';
import type { BuildInput } from './build.ts';

export type { PostedCard } from '../channels/cards/page.ts';

/** The cards of a cycle of what is drawn; none where it has no such cycle. */
export const postedCards = (
  { box, asOf }: Pick<BuildInput, 'box' | 'asOf'>,
  id: string,
  wording: Wording,
): readonly PostedCard[] => {
  const cycle = box.cycles.find((one) => one.id === id);
  return cycle ? postedCardsOf(cardsTold(box, asOf)(cycle), wording) : [];
};
