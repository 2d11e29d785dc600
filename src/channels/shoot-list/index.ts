/** The shoot list: the photographs that a cycle's pieces want, taken once for all of them. */
import type { PlanningChannel } from '../channel.ts';
import { planShootLists } from './plan.ts';

/** One page for each cycle that is being photographed. */
export const shootList: PlanningChannel<'backroom'> = {
  name: 'shoot-list',
  where: 'backroom',
  plan: planShootLists,
};
