/** A cell that says how often something was typed. */

/** "1,204", "1.204", "1 204" and "1'204" are all one thousand two hundred and four; undefined where it is no whole number. */
export const countOf = (cell: string): number | undefined => {
  if (/^\d{1,3}(?:([,.'’\s])\d{3})(?:\1\d{3})*$/.test(cell)) return Number(cell.replace(/\D/g, ''));
  return /^\d{1,15}(?:[.,]0+)?$/.test(cell) ? Number.parseInt(cell, 10) : undefined;
};
