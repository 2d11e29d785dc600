/** What a cycle is called where its record does not say. */
export const cycle = {
  /** `things`: the names of what is in it, or its theme. `month`: "March 2026". */
  title: (things: string, month: string): string => `${things}: the ${month} box`,
};
