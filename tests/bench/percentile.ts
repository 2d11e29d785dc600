/** The value that such a share of the values does not exceed (nearest rank); NaN of none. */
export const percentile = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.ceil(values.length * share) - 1] ?? Number.NaN;
