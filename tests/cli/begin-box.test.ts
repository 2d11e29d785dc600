import { expect, test } from 'vitest';
import { readMoney } from '../../src/cli/begin-box.ts';

const guess = { language: 'en-GB', zone: 'Europe/London', currency: 'GBP' };
const currencyOf = (typed: string, of = guess): string => {
  const read = readMoney(typed, of);
  return 'value' in read ? read.value.currency : read.expected;
};

test.each([
  ['GBP', 'GBP'],
  ['eur', 'EUR'],
  ['euro', 'EUR'],
  ['US dollars', 'USD'],
  ['British pounds', 'GBP'],
  ['€', 'EUR'],
  // Set aside until the rule stood.
  ['Euros', 'EUR'],
  ['Swiss francs', 'CHF'],
  ['yen', 'JPY'],
  ['Canadian Dollar', 'CAD'],
  ['US$', 'USD'],
  ['zł', 'PLN'],
  ['Danish kroner', 'DKK'],
  ['rand', 'ZAR'],
])('“%s” is the currency %s', (typed, code) => {
  expect(currencyOf(typed)).toBe(code);
});

test.each([
  ['pounds', /^one of GBP \(British Pound\), .*or another by its three letters$/],
  ['£', /^one of GBP/],
  ['kr', /^one of DKK \(Danish Krone\), ISK .*NOK .*SEK \(Swedish Krona\)$/],
  ['dollars', /^one of AUD .* or another by its three letters$/],
  ['shells', /^a currency, a time zone or a language/],
  ['silver', /^a currency, a time zone or a language/],
])('“%s” may be several or none, and none is taken', (typed, asked) => {
  expect(currencyOf(typed)).toMatch(asked);
});

test('of several the one that is paid with here comes first; names in the owner’s own language are known', () => {
  expect(currencyOf('kr', { ...guess, language: 'sv', currency: 'SEK' })).toMatch(/^one of SEK \(/);
  expect(currencyOf('svenska kronor', { ...guess, language: 'sv' })).toBe('SEK');
  expect(readMoney('US dollars Europe/Berlin de', guess)).toEqual({
    value: { currency: 'USD', zone: 'Europe/Berlin', language: 'de' },
  });
});
