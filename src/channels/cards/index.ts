/** Picture cards: tall ones that are posted and then kept as a way in, with pins and squares of the same. */
import type { PlanningChannel } from '../channel.ts';
import { planCards } from './plan.ts';

/** Two papers and their pictures for the cycles that are to be posted, of a box that makes the cards. */
export const cards: PlanningChannel<'backroom'> = {
  name: 'cards',
  where: 'backroom',
  plan: planCards,
};
