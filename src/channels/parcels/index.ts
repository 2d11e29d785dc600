/** A paper on each cycle's parcels. */
export { parcels } from './plan.ts';
