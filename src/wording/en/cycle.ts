/** What a cycle is called where its record does not say. */
export const cycle = {
  /** `things`: the names of what is in it. `month`: "March 2026". */
  title: (things: string, theme: string, month: string): string => `${things}: ${theme}, ${month}`,
  themeTitle: (theme: string, things: string): string => `${theme}: ${things}`,
  bareTitle: (theme: string, month: string): string => `${theme}: the ${month} box`,
};
