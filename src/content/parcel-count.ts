/** What is kept of a list of shipments: how many parcels are alike, never whose they are. */

/** What may have become of a parcel by a day. */
export const PARCEL_STATES = ['delivered', 'travelling', 'lost', 'returned', 'toLeave'] as const;

/**
 * `delivered`: it arrived. `travelling`: neither arrived nor given up. `lost` and `returned`: it will never
 * arrive. `toLeave`: it leaves after the day as of which the list was read.
 */
export type ParcelState = (typeof PARCEL_STATES)[number];

/** Parcels that are alike in all of this. */
export interface ParcelCount {
  /** Day it left, in days since 1970-01-01, in the box's zone. */
  readonly shipped: number;
  /**
   * Whole days from leaving to arriving, or to coming back where a date says so; of all else to the day as of which the
   * file was read, and 0 of what has yet to leave.
   */
  readonly days: number;
  readonly state: ParcelState;
  /** Empty where the file does not say. */
  readonly carrier: string;
  readonly region: string;
  readonly count: number;
  /** Lines of the file where the first few of them stand; kept for what is on its way alone. */
  readonly lines: readonly number[];
}

/** One file of shipments as of a day. */
export interface Parcels {
  /** Path in the content folder, or as it was named. */
  readonly file: string;
  /** The day as of which it was read, in days since 1970-01-01. */
  readonly asOf: number;
  /** In no order that means anything. */
  readonly counts: readonly ParcelCount[];
}
