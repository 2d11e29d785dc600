/**
 * What a cycle's items come to, each bought by itself. The claim is checked, since a comparison that is not true may
 * break the law where it is read (in the US 16 CFR 233.2, "retail price comparisons; comparable value comparisons").
 */
import type { Written } from '../content/read.ts';
import type { CycleRecord } from '../content/schemas.ts';
import type { ReportFinding } from '../diagnostics/diagnostic.ts';
import type { BoxValue, Item, Money } from './box.ts';
import { moneyOf, sameMoney, sumOfMoney } from './money.ts';

const written = ({ amount, currency }: Money): string => `${amount} ${currency}`;

/** The stated value; whatever keeps it from being the sum of the items' own prices is reported. */
export const boxValueOf = (
  record: Written<CycleRecord>,
  stated: NonNullable<CycleRecord['value']>,
  items: readonly Item[],
  boxCurrency: string,
  report: ReportFinding,
): BoxValue => {
  const location = record.locationOf(['value', 'amount']);
  const total = moneyOf(stated.amount, stated.currency ?? boxCurrency, location, report);
  const prices = items.flatMap(({ price }) => (price ? [price] : []));
  const unpriced = items.filter(({ price }) => !price).map(({ name }) => name);
  const currencies = [...new Set(prices.map(({ currency }) => currency))];
  const sum = sumOfMoney(prices);
  const mustFix = (rule: string, message: string, fix: string): void =>
    report({ weight: 'must fix', rule, location, message, fix });
  if (currencies.length > 1)
    mustFix(
      'value-currencies',
      `Unexpected value over prices in ${currencies.join(' and ')}, expected one currency: they cannot be summed`,
      'Give every item its price in one currency, or take `value` out',
    );
  else if (unpriced.length > 0)
    mustFix(
      'value-sum',
      `Unexpected value of ${written(total)}, expected the sum of the items’ own prices, ${sum ? `${written(sum)} so far` : 'of which there is none'}; without a price: ${unpriced.join(', ')}`,
      'Give these items their own `price`, or take `value` out',
    );
  else if (sum && !sameMoney(sum, total))
    mustFix(
      'value-sum',
      `Unexpected value of ${written(total)}, expected the sum of the items’ own prices, ${written(sum)}`,
      `Write \`amount: ${sum.amount}\`${sum.currency === boxCurrency ? '' : ` and \`currency: ${sum.currency}\``}, or mend the prices`,
    );
  return { total, on: stated.on };
};
