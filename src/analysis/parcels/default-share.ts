/** Share of the parcels, from 0 to 1, that should have arrived before a box is shown: nine in ten. Common practice, no source. */
export const DEFAULT_SHARE = 0.9;
