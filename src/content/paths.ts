/** Where records and lists stand in a content folder. */

/** Names of folders in `cycles/`: months, as ISO 8601 writes them. */
export const MONTH = /^[1-9]\d{3}-(?:0[1-9]|1[0-2])$/;

/** Records of items. One whose name begins with a dot is hidden, and is none. */
export const ITEM_FILE = /^cycles\/[^/]+\/items\/[^/.][^/]*\.md$/;

/** Lists of shipments; the cycle is captured. Carriers' exports come with capitals. */
export const PARCELS_FILE = /^cycles\/([^/]+)\/parcels\.csv$/i;
