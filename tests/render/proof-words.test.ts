import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import {
  addingUp,
  alsoLine,
  briefName,
  broughtWords,
  isAtAim,
  type Judged,
  linkMarkdown,
  ordinalWord,
  readingWords,
  standingText,
  verdictWords,
} from '../../src/render/proof-words.ts';

const judged = (
  standings: readonly (readonly [standing: number, promised: number])[],
  edits: number,
  outOfReach: readonly string[] = [],
): Judged => ({
  aim: 0.7,
  items: standings.map(([standing, promised], i) => ({
    slug: `item-${i + 1}`,
    name: `Thing ${i + 1}, 300 ml`,
    standing,
    promised,
  })),
  advice: Array.from({ length: edits }),
  outOfReach,
});

const good = [0.8, 0.8] as const;
const mended = [0.5, 0.72] as const;
const stuck = [0.2, 0.4] as const;

describe('the verdict', () => {
  test.each([
    [judged([good, good, good], 0), 'All three items stand at the aim of 0.7.'],
    [judged([good], 0), 'The one item stands at the aim of 0.7.'],
    [
      judged([good, good, good, good, mended], 2),
      'Four of five items stand at the aim of 0.7; two edits bring the other there.',
    ],
    [
      judged([good, mended, mended], 1),
      'One of three items stands at the aim of 0.7; one edit brings the other two there.',
    ],
    [
      judged([mended, mended], 3),
      'None of the two items stands at the aim of 0.7; three edits bring both there.',
    ],
    [judged([mended], 1), 'The one item stands below the aim of 0.7; one edit brings it there.'],
    [
      judged([good, mended, stuck], 2, ['item-3']),
      'One of three items stands at the aim of 0.7; two edits bring one of them there, and Thing 3 stays below it.',
    ],
    [
      judged([good, stuck, stuck], 2, ['item-2', 'item-3']),
      'One of three items stands at the aim of 0.7; two edits would help, but Thing 2 and Thing 3 stay below it.',
    ],
    [
      judged([good, stuck], 0, ['item-2']),
      'One of two items stands at the aim of 0.7, and there is no edit to propose for Thing 2.',
    ],
    [
      judged([stuck, stuck, stuck, stuck], 9),
      'None of the four items stands at the aim of 0.7; nine edits would help, but not as far as that.',
    ],
    [judged([], 0), 'There are no items to prove.'],
  ])('is one sentence: %#', (proof, words) => {
    expect(verdictWords(proof)).toBe(words);
  });
});

describe('a standing', () => {
  test('has two decimals', () => expect(standingText(0.456, 0.7)).toBe('0.46'));
  test('below the aim is not rounded up to it', () => expect(standingText(0.6971, 0.7)).toBe('0.69'));
  test('that an edit brings is told only where its figures differ', () => {
    expect(broughtWords({ before: 0.6971, after: 0.701 }, 0.7)).toEqual({
      before: '0.69',
      after: '0.70',
      there: true,
    });
    expect(broughtWords({ before: 0.721, after: 0.724 }, 0.7)).toBeUndefined();
    expect(broughtWords({ before: 0.6895, after: 0.69957 }, 0.7)).toEqual({
      before: '0.689',
      after: '0.699',
      there: false,
    });
  });
  test('at the aim is not pushed below it by the order of an addition', () => {
    const standing = 0.1 + 0.2 + 0.3 + 0.1 - 1e-16;
    expect([isAtAim(standing, 0.7), standingText(standing, 0.7)]).toEqual([true, '0.70']);
  });
});

describe('figures that add up', () => {
  test('do so where plain rounding would not', () => {
    expect(addingUp([1 / 3, 1 / 3, 1 / 3], 1)).toEqual(['0.334', '0.333', '0.333']);
  });
  test('do so where the total is a hair less than it seems', () => {
    const [one, other] = addingUp([0.090322, 0.083178], 0.090322 + 0.083178);
    expect([one, other, (0.090322 + 0.083178).toFixed(3)]).toEqual(['0.090', '0.083', '0.173']);
  });
  test('do so for any amounts, each within a thousandth of what it is, and none out of nothing', () => {
    // Millionths rather than doubles: those would be near nothing, most of them.
    const amount = fc.integer({ min: 0, max: 200_000 }).map((millionths) => millionths / 1e6);
    const amounts = fc.array(amount, { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(amounts, (some) => {
        const total = some.reduce((sum, one) => sum + one, 0);
        const shown = addingUp(some, total);
        const sum = shown.reduce((all, one) => all + Math.round(Number(one) * 1000), 0);
        expect(sum).toBe(Math.round(Number(total.toFixed(3)) * 1000));
        shown.forEach((one, i) => {
          expect(Math.abs(Number(one) - (some[i] as number))).toBeLessThan(0.0010001);
          if (some[i] === 0) expect(one).toBe('0.000');
        });
      }),
    );
  });
});

test('reading is told in plain words, and without ease where the language has no formula', () => {
  const reading = { words: 1243, sentences: 78, minutes: 6.2 };
  expect(readingWords(reading, 'en-GB')).toBe('1,243 words in 78 sentences, about six minutes of reading.');
  expect(readingWords({ ...reading, ease: 66.2, grade: 7.4 }, 'en-GB')).toContain(
    'Its reading ease is 66, which Flesch calls plain English; by Kincaid’s count somebody with seven years of school can follow it.',
  );
});

test('a link is written from the folder of its file', () => {
  const link = { to: '2025-09', anchor: 'mister' };
  expect(
    ['cycles/2026-03/cycle.md', 'cycles/2026-03/items/01-tin.md'].map((file) =>
      linkMarkdown({ ...link, at: { file } }),
    ),
  ).toEqual(['[mister](../2025-09/cycle.md)', '[mister](../../2025-09/cycle.md)']);
});

test('a line of other names is YAML that gives them back', () => {
  const names = [
    'seed tin',
    'tin: the good one',
    'no',
    '12',
    'jardinière',
    '園芸ナイフ',
    '- a',
    "gardener's soap",
    '#1',
  ];
  expect(parse(alsoLine(names))).toEqual({ also: names });
});

test('names are cut to the thing, ranks are words', () => {
  expect(['Brass plant mister, 300 ml', 'Garden knife (bare), 18 cm', ', odd'].map(briefName)).toEqual([
    'Brass plant mister',
    'Garden knife',
    ', odd',
  ]);
  expect([ordinalWord(2), ordinalWord(11)]).toEqual(['second', 'in place 11']);
});
