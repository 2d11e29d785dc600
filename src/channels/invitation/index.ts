/** The invitation to a live: a post in three lengths to copy, and the event for people's calendars. */
import type { PlanningChannel } from '../channel.ts';
import { planInvitations } from './plan.ts';

/** Two files for each live that somebody may still be invited to, of a box that makes the invitation. */
export const invitation: PlanningChannel<'backroom'> = {
  name: 'invitation',
  where: 'backroom',
  plan: planInvitations,
};
