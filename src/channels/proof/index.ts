/** The proof as a page of the back room. */
import type { PlanningChannel } from '../channel.ts';
import { planProofs } from './plan.ts';

/** An article read for whether it will be found, before it is published. */
export const proof: PlanningChannel<'backroom'> = { name: 'proof', where: 'backroom', plan: planProofs };
