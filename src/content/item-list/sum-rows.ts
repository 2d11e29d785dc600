/** Rows of a list that add the others up, by their words and by their figures. */
import type { ListRow } from '../list-rows.ts';
import { readPrice } from './money.ts';

/** Words that a line of sums begins with, and what may follow them. */
const SUM =
  /^(?:(?:grand |sub-?\s?|sous-)?(?:totals?|sum|summe|(?:gesamt|zwischen|end)summe|gesamt(?:betrag)?|somme|somma|totale|totales|suma|totaal|subtotaal|summa|totalt|samlet|sammanlagt|i alt|yhteensä|razem|łącznie|ogółem|soma)(?![\p{L}\p{N}])[\s:]*(?:\(.*\)|of .*|cost|price|value|retail|per box|for .*|inc.*|ex.*|général|generale?|geral|general|[\d.,£$€][\d.,£$€\s]*)?|合計|小計|総計)$/iu;

const BEGINS_SUM = /^\P{L}*(?:grand |sub-?\s?)?(?:tot|sum|som|gesamt|razem|łącznie|合計)/iu;

/** A figure of a cell, whatever currency it is in. */
const amountOf = (cell: string): number =>
  Number(readPrice(cell.replace(/[^\d.,'’\s-]/g, ''), { own: 'EUR' })?.amount ?? Number.NaN);

/** Whether a row's figures are the sums of those above it, in one column at least that has two or more. */
const addsUp = ({ cells }: ListRow, above: readonly ListRow[]): boolean =>
  cells.some((cell, i) => {
    const figures = above.map((row) => amountOf(row.cells[i] ?? '')).filter((one) => !Number.isNaN(one));
    const sum = figures.reduce((all, one) => all + one, 0);
    return figures.length >= 2 && Math.abs(sum - amountOf(cell)) < 0.005;
  });

/** Whether a row adds the others up: it says so where a name would be, or anywhere in a row without one. */
export const isSum = (row: ListRow, nameAt: number, above: readonly ListRow[]): boolean => {
  const name = row.cells[nameAt] ?? '';
  return name === ''
    ? row.cells.some((cell) => SUM.test(cell))
    : SUM.test(name) || (BEGINS_SUM.test(name) && addsUp(row, above));
};
