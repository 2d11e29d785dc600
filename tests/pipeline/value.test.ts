/** What a box is said to be worth is what its items cost, to the penny. */

import { describe, expect, test } from 'vitest';
import { sameMoney, sumOfMoney } from '../../src/model/money.ts';
import { type BuiltSite, siteOf } from '../support/built.ts';
import { smallBox } from '../support/small-box.ts';

const build = (value: string, prices: readonly string[], currency = 'GBP'): Promise<BuiltSite> =>
  siteOf(
    {
      'box.md': smallBox(
        `calls: {join: {address: "https://crumb.example/join", text: Join us}}
`,
        '',
        { currency },
      ),
      'cycles/2026-03/cycle.md': `---
theme: Rising
summary: A spoon, and how it came to be in a box after a year in which nobody could find a good one at all.
shipped: 2026-03-03
reveal: 2026-03-19T19:00
value: ${value}
---
`,
      ...Object.fromEntries(
        prices.map((price, i) => [
          `cycles/2026-03/items/0${i + 1}-spoon-${i + 1}.md`,
          `---
name: Spoon ${i + 1}
kind: spoon
lead: ${i === 0}
brand: A Turner
description: A spoon.
category: none
goesWith: It is another.
${price}
---
`,
        ]),
      ),
    },
    Date.UTC(2026, 2, 27),
  );

const findings = ({ diagnostics }: BuiltSite): readonly string[] =>
  diagnostics
    .filter(({ rule }) => /^(?:value|price)/.test(rule))
    .map(({ weight, rule, location: place, message }) => `${weight} ${rule} ${place.line}: ${message}`);

const THREE = ['price: 16.00', 'price: 40.10', 'price: 18.5'];

describe('a stated value', () => {
  test('that is the sum is shown with the date of its prices, on the page and in the feeds', async () => {
    const result = await build('{amount: 74.60, on: 2026-03-03}', THREE);
    expect(findings(result)).toEqual([]);
    const texts = result.site;
    expect(texts.get('boxes/2026-03-rising.html')).toContain(
      'Bought one by one, these would come to £74.60 at prices of <time datetime="2026-03-03">3 March 2026</time>.',
    );
    for (const text of texts.values())
      if (text.includes('74.60')) expect(text).toMatch(/74\.60 at prices of [^.]*3 March 2026/);
    expect(texts.get('feed.xml')).toContain('£74.60');
  });

  test('that is another stops the build, with both sums', async () => {
    const result = await build('{amount: 80, on: 2026-03-03}', THREE);
    expect(findings(result)).toEqual([
      'must fix value-sum 6: Unexpected value of 80.00 GBP, expected the sum of the items’ own prices, 74.60 GBP',
    ]);
    expect([...result.site, ...result.backroom]).toEqual([]);
  });

  test('over items without a price names them', async () => {
    expect(findings(await build('{amount: 34.5, on: 2026-03-03}', ['price: 16', '', 'price: 18.5']))).toEqual(
      [
        'must fix value-sum 6: Unexpected value of 34.50 GBP, expected the sum of the items’ own prices, 34.50 GBP so far; without a price: Spoon 2',
      ],
    );
  });

  test('over prices in two currencies cannot be', async () => {
    const prices = ['price: 16', 'price: 18.5\npriceCurrency: EUR'];
    expect(findings(await build('{amount: 34.5, on: 2026-03-03}', prices))).toEqual([
      'must fix value-currencies 6: Unexpected value over prices in GBP and EUR, expected one currency: they cannot be summed',
    ]);
  });

  test('has the currency of its items, which need not be the box’s', async () => {
    const prices = ['price: 16\npriceCurrency: EUR', 'price: 18.5\npriceCurrency: EUR'];
    expect(findings(await build('{amount: 34.5, currency: EUR, on: 2026-03-03}', prices))).toEqual([]);
    expect(findings(await build('{amount: 34.5, on: 2026-03-03}', prices))).toEqual([
      'must fix value-sum 6: Unexpected value of 34.50 GBP, expected the sum of the items’ own prices, 34.50 EUR',
    ]);
  });

  test('needs the date of its prices', async () => {
    const { diagnostics } = await build('{amount: 74.60}', THREE);
    const faults = diagnostics.filter(({ weight }) => weight === 'must fix');
    expect(faults.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([
      'missing-key: Unexpected `value` without `on`, expected a line for it',
    ]);
  });
});

describe('sums of money', () => {
  const of = (currency: string, ...amounts: readonly string[]) =>
    sumOfMoney(amounts.map((amount) => ({ amount, currency })))?.amount;
  test('are exact where binary fractions are not', () => {
    expect(of('GBP', '0.10', '0.20')).toBe('0.30');
    expect(of('JPY', '1200', '80')).toBe('1280');
    expect(of('KWD', '1.005', '0.100')).toBe('1.105');
    expect(of('GBP', '99999999999999999.99', '0.01')).toBe('100000000000000000.00');
    expect(of('GBP', '0.01', '0.02')).toBe('0.03');
    expect(of('GBP')).toBeUndefined();
  });
  test('are the same with and without noughts', () => {
    expect(sameMoney({ amount: '18.5', currency: 'GBP' }, { amount: '18.50', currency: 'GBP' })).toBe(true);
    expect(sameMoney({ amount: '18.50', currency: 'GBP' }, { amount: '18.50', currency: 'EUR' })).toBe(false);
  });
});
