import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SharedPassage } from '../../src/analysis/coverage/coverage.ts';
import type { Article } from '../../src/analysis/coverage/rivals/article.ts';
import { indexArticle } from '../../src/analysis/coverage/rivals/article-index.ts';
import { comparisonOf } from '../../src/analysis/coverage/rivals/comparison.ts';
import { resemblance } from '../../src/analysis/coverage/rivals/resemblance.ts';
import { SHARED_FROM } from '../../src/analysis/coverage/rivals/shared-passages.ts';
import { SHARED_LEAST_WORDS } from '../../src/analysis/coverage/rivals/shingles.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { articleFrom } from './passages-sample.ts';

const english = await languageFor('en');
const japanese = await languageFor('ja');

/** Resemblance of two texts as sets of shingles (Broder's second option), with words of any length. */
const resemblanceOf = (a: readonly string[], b: readonly string[], width: number): number => {
  const shingles = (words: readonly string[]) =>
    new Set(words.slice(width - 1).map((_, at) => words.slice(at, at + width).join('\n')));
  return resemblance(shingles(a), [...shingles(b)]);
};

const sharedOf = (article: Article, articles: readonly Article[]): readonly SharedPassage[] =>
  comparisonOf(articles.map(indexArticle), english).sharedOf(article.cycle);

describe('resemblance', () => {
  const a = 'a rose is a rose is a rose'.split(' ');
  const b = 'a rose is a flower which is a rose'.split(' ');

  test.each([
    [1, 0.6],
    [2, 0.5],
    [3, 3 / 7],
  ])('of Broder’s two roses (1997) at width %d is %d as sets', (width, sets) => {
    expect(resemblanceOf(a, b, width)).toBeCloseTo(sets, 12);
  });

  const words = fc.array(fc.constantFrom('a', 'rose', 'is', 'flower'), { maxLength: 20 });
  test('is the same both ways and between 0 and 1', () => {
    fc.assert(
      fc.property(words, words, fc.integer({ min: 1, max: 4 }), (one, other, width) => {
        const alike = resemblanceOf(one, other, width);
        expect(alike).toBe(resemblanceOf(other, one, width));
        expect(alike).toBeGreaterThanOrEqual(0);
        expect(alike).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('of a text with itself is 1, and 0 where it is too short for a shingle', () => {
    fc.assert(
      fc.property(words, (one) => {
        expect(resemblanceOf(one, one, 2)).toBe(one.length < 2 ? 0 : 1);
      }),
    );
  });
});

const opening =
  'Every month the same van comes up the lane, and every month the dog pretends that it has never seen a van before in its life.';
const other =
  'The kettle was on before the rain began, and nobody said a word about the weather until the second cup had been poured out.';

describe('a passage is shared', () => {
  test('when an earlier article has it word for word, and the place of each is given', () => {
    const articles = [
      articleFrom(english, '2026-01', [other, opening]),
      articleFrom(english, '2026-02', [opening]),
    ];
    const [shared, ...rest] = sharedOf(articles[1] as Article, articles);
    expect(rest).toEqual([]);
    expect(shared).toMatchObject({
      passage: 0,
      at: { file: '2026-02.md', line: 10, column: 1 },
      text: opening,
      other: { cycle: '2026-01', at: { file: '2026-01.md', line: 11, column: 1 }, text: opening },
      resemblance: 1,
    });
  });

  test('when a word is changed here and there, with the resemblance that Broder’s measure has', () => {
    const changed = opening.replace('lane', 'hill').replace('before', 'until now');
    const articles = [articleFrom(english, '2026-01', [opening]), articleFrom(english, '2026-02', [changed])];
    const [shared] = sharedOf(articles[1] as Article, articles);
    const folded = (text: string) => english.words(text).map((word) => word.folded);
    expect(shared?.resemblance).toBeCloseTo(resemblanceOf(folded(opening), folded(changed), 3), 12);
    expect(shared?.resemblance).toBeGreaterThan(SHARED_FROM);
    expect(shared?.resemblance).toBeLessThan(1);
  });

  test('with the oldest of equals, and never with a later article or itself', () => {
    const articles = ['2026-01', '2026-02', '2026-03'].map((cycle) => articleFrom(english, cycle, [opening]));
    expect(articles.map((article) => sharedOf(article, articles).map((one) => one.other.cycle))).toEqual([
      [],
      ['2026-01'],
      ['2026-01'],
    ]);
  });

  test('with the nearest one, though an older and longer one was the first to have most of its turns', () => {
    const near = opening.replace('lane', 'hill');
    const articles = [
      articleFrom(english, '2026-01', [
        `${opening} Then it stops, and somebody has to find the key to the gate.`,
      ]),
      articleFrom(english, '2026-02', [near]),
      articleFrom(english, '2026-03', [near]),
    ];
    const [shared] = sharedOf(articles[2] as Article, articles);
    expect(shared).toMatchObject({ other: { cycle: '2026-02' }, resemblance: 1 });
  });

  test('in a language without spaces', () => {
    const text =
      '毎朝、窓辺の鉢に水をやり、葉の裏を見て、土が乾いていないかを指で確かめるのが私の日課になっています。';
    const articles = [articleFrom(japanese, '2026-01', [text]), articleFrom(japanese, '2026-02', [text])];
    expect(sharedOf(articles[1] as Article, articles)).toHaveLength(1);
  });
});

describe('a passage is not shared', () => {
  const first = (text: string, written = true) => articleFrom(english, '2026-01', [{ text, written }]);
  const sharedBeside = (runs: readonly string[], earlier: readonly Article[]) => {
    const own = articleFrom(english, '2026-02', runs);
    return sharedOf(own, [...earlier, own]);
  };

  test('when it speaks of something else', () => {
    expect(sharedBeside([other], [first(opening)])).toEqual([]);
  });

  test('when it is short, made from a record, or no paragraph', () => {
    const short = opening
      .split(' ')
      .slice(0, SHARED_LEAST_WORDS - 1)
      .join(' ');
    expect(sharedBeside([short], [first(short)])).toEqual([]);
    const made = first(opening, false);
    expect(sharedBeside([opening], [made])).toEqual([]);
    const caption = articleFrom(english, '2026-02', [{ text: opening, form: 'caption' }]);
    expect(sharedOf(caption, [first(opening), caption])).toEqual([]);
  });

  test('when there is no text or no other article', () => {
    expect(sharedBeside([], [])).toEqual([]);
    expect(sharedBeside([opening], [])).toEqual([]);
    expect(sharedBeside(['Seeds'], [first(opening)])).toEqual([]);
  });
});
