/** What a cycle is called where its record does not say. */
export const cycle = {
  /** `things`: the names of what is in it. `month`: "March 2026". */
  title: (things: string, theme: string, month: string, trade?: string): string =>
    trade === undefined ? `${things}: ${theme}, ${month}` : `${things}: ${theme}, the ${month} ${trade} box`,
  themeTitle: (theme: string, things: string): string => `${theme}: ${things}`,
  bareTitle: (theme: string, month: string): string => `${theme}: the ${month} box`,
};
