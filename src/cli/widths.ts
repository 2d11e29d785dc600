/** How many cells of a terminal a line takes. */

/** Columns of help, and of a report that goes to a file. */
export const HELP_WIDTH = 80;
export const FILE_WIDTH = 100;

const NARROWEST = 60;
const WIDEST = 140;

/** The width of a report on a terminal of so many columns: below 60 and above 140 it is set as for those. */
export const reportWidth = (columns: number): number => Math.min(WIDEST, Math.max(NARROWEST, columns));
