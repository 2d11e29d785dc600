/** What is kept of a list of shipments: how many parcels are alike, never whose they are. */

/**
 * `delivered`: it arrived. `travelling`: neither arrived nor given up. `lost` and `returned`: it will never
 * arrive.
 */
export type ParcelState = 'delivered' | 'travelling' | 'lost' | 'returned';

/** Parcels that are alike in all of this. */
export interface ParcelCount {
  /** Day it left, in days since 1970-01-01, in the box's zone. */
  readonly shipped: number;
  /** Whole days from leaving to arriving; for what has not arrived, to the day as of which the file was read. */
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
  /** Rows of parcels that leave after that day; absent where there is none. */
  readonly toLeave?: number;
  /** In no order that means anything. */
  readonly counts: readonly ParcelCount[];
}
