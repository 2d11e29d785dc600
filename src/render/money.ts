/** Amounts as a reader of the box's language writes them. */
import type { Money } from '../model/box.ts';

/** "£18.50": the record's own digits, with the currency's sign where the language puts it. */
export const priceText = ({ amount, currency }: Money, lang: string): string => {
  const decimals = amount.split('.')[1]?.length ?? 0;
  return new Intl.NumberFormat(lang, {
    style: 'currency',
    currency,
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  }).format(Number(amount));
};
