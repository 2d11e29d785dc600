/** A paper on each cycle's parcels. */
import type { PlanningChannel } from '../channel.ts';
import { planParcels } from './plan.ts';

/** How many parcels have arrived, and when the box may be shown. */
export const parcels: PlanningChannel<'backroom'> = { name: 'parcels', where: 'backroom', plan: planParcels };
