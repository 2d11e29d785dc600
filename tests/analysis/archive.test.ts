import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  articleOf,
  comparedCoverage,
  comparisonOf,
  decodeIndex,
  encodeIndex,
  indexArticle,
  ownCoverage,
  passagesOf,
  searchIndexOf,
  surroundingsOf,
} from '../../src/analysis/coverage/measure-coverage.ts';
import { placeIn } from '../../src/analysis/coverage/rivals/article-index.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { Cycle } from '../../src/model/box.ts';
import { cautionText } from '../support/telling-input.ts';
import { boxOf, cycleText, english, itemText, NOW } from './article.ts';
import { articleFrom } from './passages-sample.ts';

const japanese = await languageFor('ja');

/** A month's two files; `more` is told beside what every month tells. */
const month = (
  id: string,
  kind: string,
  more = '',
  title = `All about the ${kind}`,
): Readonly<Record<string, string>> => ({
  [`cycles/${id}/cycle.md`]: cycleText(
    `The house plants of ${id} stand in the window, and every one of them wants a drink before the week is out.

It is a *long* way to the [shelf of \`mugs\`](https://example.com/${'a'.repeat(300)}) &eacute;t&eacute;.
A second line, and a hard
third. ${more}`,
    { theme: `Month ${id}`, title, shipped: `${id}-03`, reveal: `${id}-04T19:00` },
  ),
  [`cycles/${id}/items/01-thing.md`]: itemText(
    `Green ${kind}`,
    kind,
    `A ${kind} for each houseplant. ${more} The [${kind}](../cycle.md) is deep.`,
    { lead: true, also: ['house-plant thing'] },
  ),
});
const box = boxOf({
  ...month('2026-01', 'seed tray', '', 'A box for the sill'),
  ...month('2026-02', 'watering can', 'A seed tray, a seed tray and a seed tray.'),
  ...month('2026-03', 'seed tray', 'One watering can.'),
  ...month('2026-04', 'mug', 'It is no tray.'),
  ...month('2026-05', 'trowel'),
  ...month('2026-06', 'trug', 'A mug would be too small, and a trowel in a mug too.'),
});
const readingOf = (cycle: Cycle) => passagesOf(cycle, surroundingsOf(box, cycle, NOW), english, cautionText);
const indexes = box.cycles.map((cycle) => indexArticle(articleOf(cycle, readingOf(cycle))));
const ownOf = (cycle: Cycle) =>
  ownCoverage({
    cycle,
    box: box.settings,
    passages: readingOf(cycle),
    searches: searchIndexOf(box.searches, english),
    aim: 0.7,
    language: english,
    otherNames: new Map([['mug', ['beaker']]]),
    strangers: [],
  });

describe('the index of an article', () => {
  test.each(indexes.map((index) => [index.cycle, index] as const))(
    'of %s comes back from its bytes as it was',
    (_, index) => {
      expect(decodeIndex(encodeIndex(index))).toEqual(index);
    },
  );

  test('comes back as it was without a word, and with words of another script', () => {
    for (const article of [
      articleFrom(english, '2026-01', []),
      articleFrom(japanese, '2026-01', ['毎朝、窓辺の鉢に水をやり、葉の裏を見る。', '如雨露']),
    ])
      expect(decodeIndex(encodeIndex(indexArticle(article)))).toEqual(indexArticle(article));
  });

  test('comes back from bytes that begin anywhere in their buffer', () => {
    const [index] = indexes;
    const bytes = encodeIndex(index as (typeof indexes)[number]);
    for (const before of [1, 2, 3, 4]) {
      const larger = new Uint8Array(bytes.length + 8);
      larger.set(bytes, before);
      expect(decodeIndex(larger.subarray(before, before + bytes.length))).toEqual(index);
    }
  });

  test('does not come back from bytes that are damaged, cut off, or something else', () => {
    const bytes = encodeIndex(indexes[0] as (typeof indexes)[number]);
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), (at, change) => {
        const damaged = bytes.slice();
        damaged[at] = (damaged[at] as number) ^ change;
        expect(decodeIndex(damaged)).toBeUndefined();
      }),
      { numRuns: 400 },
    );
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), (length) => {
        expect(decodeIndex(bytes.slice(0, length))).toBeUndefined();
      }),
    );
    expect(decodeIndex(new TextEncoder().encode('{"cycle": "2026-01"}'.repeat(4)))).toBeUndefined();
  });

  test('knows the line and the column of every word that can be made a link', () => {
    let places = 0;
    for (const [number, cycle] of box.cycles.entries()) {
      const index = indexes[number] as (typeof indexes)[number];
      for (const [passage, { form, written, field, words }] of readingOf(cycle).entries()) {
        if (form !== 'paragraph' || !written || field !== undefined) continue;
        const start = index.starts[passage] as number;
        for (const [at, { line, column }] of words.entries()) {
          expect(placeIn(index, passage, start + at)).toEqual({ line, column });
          places += 1;
        }
      }
    }
    expect(places).toBeGreaterThan(200);
  });
});

describe('what an article is beside the others', () => {
  test('is the same from indexes that were written and read back, in any order', async () => {
    const kept = indexes.map((index) => decodeIndex(encodeIndex(index)) ?? index);
    for (const cycle of box.cycles) {
      const own = await ownOf(cycle);
      const compared = comparedCoverage(own, comparisonOf(indexes, english));
      expect(comparedCoverage(own, comparisonOf([...kept].reverse(), english))).toEqual(compared);
      expect(comparedCoverage(own, comparisonOf(kept, english, new Set([cycle.id])))).toEqual(compared);
    }
  });

  test('finds rivals and paragraphs in common, so that the test above has something to compare', async () => {
    const compared = await Promise.all(
      box.cycles.map(async (cycle) => comparedCoverage(await ownOf(cycle), comparisonOf(indexes, english))),
    );
    expect(compared.flatMap(({ rivals }) => rivals).length).toBeGreaterThan(1);
    expect(compared.flatMap(({ shared }) => shared).length).toBeGreaterThan(1);
  });
});

test('a word more in one article leaves what other articles do not share with it as it was', async () => {
  const [first, ...others] = box.cycles as [Cycle, ...Cycle[]];
  const reading = readingOf(first);
  const [passage] = reading;
  if (!passage) throw new Error('Expected a passage');
  // A word that nobody else says makes every mean length another, and no score that is shown.
  const more = english
    .words('zyzzyva')
    .map((word) => ({ ...word, zone: 'body', sentence: 0, line: 1, column: 1 }) as const);
  const longer = [...reading, { ...passage, form: 'fact', text: 'zyzzyva', words: more } as const];
  const changed = comparisonOf([indexArticle(articleOf(first, longer)), ...indexes.slice(1)], english);
  for (const cycle of others) {
    const own = await ownOf(cycle);
    expect(comparedCoverage(own, changed)).toEqual(comparedCoverage(own, comparisonOf(indexes, english)));
  }
});

test('both halves of a proof survive JSON as they are', async () => {
  for (const cycle of box.cycles) {
    const own = await ownOf(cycle);
    const compared = comparedCoverage(own, comparisonOf(indexes, english));
    expect(JSON.parse(JSON.stringify(own))).toStrictEqual(own);
    expect(JSON.parse(JSON.stringify(compared))).toStrictEqual(compared);
  }
});
