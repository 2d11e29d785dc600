import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Box } from '../../src/model/box.ts';
import { hasKindPage, kindGroupOf, kindGroups, kindKey, kindsWithPage } from '../../src/model/kinds.ts';
import { earlierOfKind } from '../../src/model/relations.ts';
import { unsealed } from '../../src/model/seal.ts';
import { box, cycle, item, settings } from '../support/box.ts';
import { checksFile } from '../support/checks-folder.ts';

/** A box with one cycle a month, each with items of these kinds. */
const boxOf = (...months: readonly (readonly string[])[]): Box =>
  box({
    cycles: months.map((kinds, i) => {
      const id = `2026-0${i + 1}`;
      return cycle({
        id,
        month: i + 1,
        reveal: Date.UTC(2026, i, 19),
        items: kinds.map((kind, n) => item({ kind, cycle: id, slug: `thing-${n}`, number: n + 1 })),
      });
    }),
  });

describe('a kind', () => {
  test.each([
    ['box', 'boxes'],
    ['shoe', 'Shoes'],
    ['candy', 'candies'],
    ['plant tie', 'plant ties'],
    ['potting knife', 'potting knives'],
    ['crocus bulb', 'Crocus bulbs'],
    ['iris', 'irises'],
    ['hand-tool', 'hand tools'],
    ['gardener’s glove', "gardener's gloves"],
  ])('is the same in the singular and the plural: %s, %s', (one, many) => {
    expect(kindKey(many, 'en-GB')).toBe(kindKey(one, 'en-GB'));
  });
  test.each([
    ['can', 'cane'],
    ['tub', 'tube'],
    ['glass', 'glasshouse'],
    ['plant pot', 'plant'],
  ])('is another: %s, %s', (one, other) => {
    expect(kindKey(one, 'en')).not.toBe(kindKey(other, 'en'));
  });
  test('in another language is told apart by all but capitals and signs', () => {
    expect(kindKey('Blumentöpfe', 'de')).not.toBe(kindKey('Blumentopf', 'de'));
    expect(kindKey('Vas', 'de')).not.toBe(kindKey('Va', 'de'));
    expect(kindKey('Gießkanne', 'de')).toBe(kindKey('gießkanne', 'de'));
    expect(kindKey('じょうろ', 'ja')).toBe('じょうろ');
  });

  // Plurals of goods, written by hand for this project, rich in -ves, -ses and -ies.
  const pairs = checksFile('language/goods-plurals.tsv');
  test.skipIf(!pairs)('meets its plural, also where a noun changes within', () => {
    const lines = readFileSync(pairs as string, 'utf8')
      .split('\n')
      .filter((line) => line.includes('\t') && !line.startsWith('#'));
    const missed = lines.filter((line) => {
      const [many = '', one = ''] = line.split('\t');
      return kindKey(many, 'en') !== kindKey(one, 'en');
    });
    expect(lines.length).toBeGreaterThan(80);
    expect(missed).toEqual([]);
  });
});

describe('kinds of a box', () => {
  const tools = boxOf(['Hand tool', 'mug'], ['hand tools', 'apron'], ['hand tool']);
  test('gather items whatever the spelling, under the oldest one', () => {
    expect(kindGroups(tools).map(({ kind, slug, items }) => [kind, slug, items.length])).toEqual([
      ['apron', 'apron', 1],
      ['Hand tool', 'hand-tool', 3],
      ['mug', 'mug', 1],
    ]);
  });
  test('have a page where three items share them', () => {
    expect(kindsWithPage(tools).map(({ slug }) => slug)).toEqual(['hand-tool']);
    expect(hasKindPage(tools, 'HAND TOOLS')).toBe(true);
    expect(hasKindPage(tools, 'mug')).toBe(false);
    expect(hasKindPage(tools, 'never packed')).toBe(false);
    expect(kindGroupOf(tools, 'never packed')).toBeUndefined();
  });
  test('count what is sealed for nothing', () => {
    expect(hasKindPage(unsealed(tools, Date.UTC(2026, 2, 18)), 'hand tool')).toBe(false);
    expect(hasKindPage(unsealed(tools, Date.UTC(2026, 2, 19)), 'hand tool')).toBe(true);
    expect(hasKindPage(tools, 'hand tool', Date.UTC(2026, 2, 18))).toBe(false);
    expect(hasKindPage(tools, 'hand tool', Date.UTC(2026, 2, 19))).toBe(true);
  });
  test('have no page where no address can be made of their name', () => {
    expect(hasKindPage(boxOf(['!!!'], ['!!!'], ['!!!']), '!!!')).toBe(false);
  });
  test('are told apart by language', () => {
    const german = boxOf(['Vase'], ['Vasen'], ['Vase']);
    const there = box({ ...german, settings: settings({ lang: 'de' }) });
    expect(kindsWithPage(there)).toEqual([]);
  });
  test('give the last three earlier items of an item’s kind, newest cycle first, each cycle in its order', () => {
    const many = boxOf(['mug', 'mugs'], ['mug'], ['mug']);
    const last = many.cycles[2]?.items[0];
    expect(last && earlierOfKind(many, last).map((one) => `${one.cycle} ${one.slug}`)).toEqual([
      '2026-02 thing-0',
      '2026-01 thing-0',
      '2026-01 thing-1',
    ]);
    const more = boxOf(['mug'], ['mug'], ['mug'], ['mug'], ['mug']);
    const newest = more.cycles[4]?.items[0];
    expect(newest && earlierOfKind(more, newest).map((one) => one.cycle)).toEqual([
      '2026-04',
      '2026-03',
      '2026-02',
    ]);
  });
  test('of a long archive take no longer for each item than of a short one', () => {
    const months = Array.from({ length: 6000 }, (_, i) => {
      const id = `${1500 + Math.floor(i / 12)}-${String((i % 12) + 1).padStart(2, '0')}`;
      return cycle({ id, items: [item({ cycle: id })] });
    });
    const long = box({ cycles: months });
    const began = performance.now();
    for (const { items } of months)
      for (const one of items) {
        earlierOfKind(long, one);
        hasKindPage(long, one.kind, Date.UTC(2026, 2, 19));
      }
    // Looking through the whole kind for each of its items took minutes; this takes a tenth of a second.
    expect(performance.now() - began).toBeLessThan(5000);
    const [first, second, third, fourth] = months.map(({ items }) => items[0]);
    expect(fourth && earlierOfKind(long, fourth)).toEqual([third, second, first]);
  });
});
