import { describe, expect, test } from 'vitest';
import { phrasesOf } from '../../src/analysis/coverage/phrases/phrases.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { item } from '../support/box.ts';
import { type TradeName, tradeNames } from '../support/trade-names.ts';

const english = await languageFor('en-GB');
const keyOf = (text: string): string =>
  english
    .words(text)
    .map(({ key }) => key)
    .join('');

const offeredFor = ({ name, kind, material = [], color, brand = '' }: TradeName) =>
  phrasesOf(item({ name, kind, brand, material, ...(color !== undefined && { color }) }), [], english);

/** Of what a shopper would type, the share that is offered; and what is offered that nobody would. */
const measured = (
  names: readonly TradeName[],
): { readonly share: number; readonly silly: readonly string[] } => {
  let [found, sought] = [0, 0];
  const silly: string[] = [];
  for (const name of names) {
    const keys = new Set(offeredFor(name).map(({ text }) => keyOf(text)));
    sought += name.typed.length;
    found += name.typed.filter((text) => keys.has(keyOf(text))).length;
    silly.push(...name.never.filter((text) => keys.has(keyOf(text))));
  }
  return { share: found / sought, silly };
};

describe('names of twelve trades', () => {
  test('are six of each', () => {
    expect(tradeNames).toHaveLength(72);
    expect(new Set(tradeNames.map(({ trade }) => trade)).size).toBe(12);
  });

  test('that the rules were written with are offered as people type them', () => {
    const { share, silly } = measured(tradeNames.filter((_, i) => i % 2 === 0));
    // Reached: 82 of 83.
    expect(share).toBeGreaterThanOrEqual(0.97);
    expect(silly).toEqual([]);
  });

  test('that were kept aside are, nine times in ten', () => {
    const { share, silly } = measured(tradeNames.filter((_, i) => i % 2 === 1));
    // Reached: 81 of 88.
    expect(share).toBeGreaterThanOrEqual(0.9);
    expect(silly).toEqual([]);
  });

  test.each(tradeNames.map((name) => [name.name, name] as const))(
    '%s gives a dozen at most, none above its kind',
    (_, name) => {
      const phrases = offeredFor(name);
      expect(phrases.length).toBeLessThanOrEqual(12);
      expect(phrases[0]?.weight).toBe(4);
    },
  );
});
