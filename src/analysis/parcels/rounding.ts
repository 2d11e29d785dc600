/** Two shares, or two numbers of parcels, closer than this are one: a product with a share is rounded. */
export const ROUNDING = 1e-9;
