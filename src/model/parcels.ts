/** A cycle's shipments as counts, and days as whole numbers. Plain data: no parcel is kept by itself. */
export { dateOfDay, dayOfDate } from '../content/days.ts';
export type { ParcelCount, ParcelState, Parcels } from '../content/parcel-count.ts';
