/** Amounts of money: the record's own digits, and sums that are exact. */
import { currencyDecimals } from '../content/codes.ts';
import type { Location, ReportFinding } from '../diagnostics/diagnostic.ts';
import type { Money } from './box.ts';

/** An amount as a record has it, filled up to the currency's own decimals; more of them are reported. */
export const moneyOf = (
  amount: string,
  currency: string,
  location: Location,
  report: ReportFinding,
): Money => {
  const decimals = currencyDecimals(currency) ?? 2;
  const [whole = '0', part = ''] = amount.split('.');
  if (part.length > decimals) {
    report({
      weight: 'must fix',
      rule: 'price-decimals',
      location,
      message: `Unexpected price \`${amount}\`, expected ${decimals === 0 ? 'no digits' : decimals === 1 ? 'at most 1 digit' : `at most ${decimals} digits`} after the point for ${currency}`,
      fix: 'Write the amount with the currency’s own decimals',
    });
  }
  return { amount: decimals === 0 ? whole : `${whole}.${part.padEnd(decimals, '0')}`, currency };
};

/** A decimal amount as a whole number of its last decimal: 18.50 with two is 1850. */
const minorUnits = (amount: string, decimals: number): bigint => {
  const [whole = '0', part = ''] = amount.split('.');
  return BigInt(whole + part.padEnd(decimals, '0'));
};

/** The sum of amounts in one currency, to the last digit; undefined where they are of several, or there is none. */
export const sumOfMoney = (amounts: readonly Money[]): Money | undefined => {
  const [first] = amounts;
  if (!first || amounts.some(({ currency }) => currency !== first.currency)) return undefined;
  // An amount that has too many decimals was reported, and is still summed as it is.
  const decimals = Math.max(...amounts.map(({ amount }) => amount.split('.')[1]?.length ?? 0));
  const sum = amounts.reduce((total, { amount }) => total + minorUnits(amount, decimals), 0n);
  const digits = String(sum).padStart(decimals + 1, '0');
  const amount = decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
  return { amount, currency: first.currency };
};

/** Whether two amounts are the same money, however many noughts they end in. */
export const sameMoney = (a: Money, b: Money): boolean =>
  a.currency === b.currency && minorUnits(a.amount, 9) === minorUnits(b.amount, 9);
