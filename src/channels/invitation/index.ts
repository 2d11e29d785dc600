/** The invitation to a live: a post in three lengths to copy, and the event for people's calendars. */
import type { PlanningChannel } from '../channel.ts';
import { planInvitations } from './plan.ts';

export const invitation: PlanningChannel = { name: 'invitation', where: 'backroom', plan: planInvitations };
