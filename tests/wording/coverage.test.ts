import { describe, expect, test } from 'vitest';
import type { Edit } from '../../src/analysis/coverage/coverage.ts';
import { type Judged, verdictOf } from '../../src/analysis/coverage/verdict.ts';
import { coverage } from '../../src/wording/en/coverage.ts';

const judged = (
  standings: readonly (readonly [standing: number, promised: number])[],
  edits: number,
  outOfReach: readonly string[] = [],
  thin: readonly string[] = [],
): Judged => ({
  aim: 0.7,
  items: standings.map(([standing, promised], i) => ({
    slug: `item-${i + 1}`,
    shortName: `Thing ${i + 1}`,
    standing,
    promised,
    thin: thin.includes(`item-${i + 1}`),
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
      judged([good, good], 0, [], ['item-2']),
      'Both items stand at the aim of 0.7, but one will not be found. Thin: Thing 2 says too little, whatever the text names.',
    ],
    [
      judged([good], 0, [], ['item-1']),
      'The one item stands at the aim of 0.7, but will not be found. Thin: Thing 1 says too little, whatever the text names.',
    ],
    [
      judged([good, good], 0, [], ['item-1', 'item-2']),
      'Both items stand at the aim of 0.7, but none will be found. Thin: Thing 1 and Thing 2 say too little, whatever the text names.',
    ],
    [
      judged([good, mended], 1, [], ['item-1']),
      'One of two items stands at the aim of 0.7; one edit brings the other there. Thin: Thing 1 says too little to be found, whatever the text names.',
    ],
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
      'Neither of the two items stands at the aim of 0.7; three edits bring both there.',
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
    [
      judged([stuck, stuck, stuck, stuck], 0),
      'None of the four items stands at the aim of 0.7, and there is no edit to propose for any of them.',
    ],
    [judged([[0.7 - 1e-12, 0.7]], 0), 'The one item stands at the aim of 0.7.'],
    [judged([], 0), 'There are no items to prove.'],
  ])('is one sentence: %#', (proof, words) => {
    expect(coverage.verdict(verdictOf(proof))).toBe(words);
  });
});

test('reading is told in plain words, and without ease where the language has no formula', () => {
  const reading = { words: 1243, sentences: 78, minutes: 6.2 };
  expect(coverage.reading(reading, 'en-GB')).toBe(
    '1,243 words in 78 sentences, about six minutes of reading.',
  );
  expect(coverage.reading({ ...reading, ease: 66.2, grade: 7.4 }, 'en-GB')).toContain(
    'Its reading ease is 66, which Flesch calls plain English; by Kincaid’s count somebody with seven years of school can follow it.',
  );
});

test('ranks are words', () => {
  expect([coverage.ordinal(2), coverage.ordinal(11)]).toEqual(['second', 'in place 11']);
});

test.each([
  [
    { kind: 'call by name', now: 'the tin' } as const,
    'Own section, line 14: call it by its name; now it is only “the tin”.',
  ],
  [{ kind: 'begin with it' } as const, 'Own section, line 14: begin with what the picture shows.'],
  [{ kind: 'name the things' } as const, 'Own section, line 14: name what is in the box.'],
])('an edit is something to do: %j', (action: Edit['action'], words) => {
  expect(
    coverage.instruction({ action, zone: 'section', at: { file: 'cycle.md', line: 14, column: 3 } }),
  ).toBe(words);
});

test('what was typed is told in counts, with what the text never says', () => {
  expect(coverage.typed({ all: 91, answered: 91, unanswered: [] })).toBe(
    'typed 91 times, always in words that the article has.',
  );
  expect(coverage.typed({ all: 351, answered: 0, unanswered: ['grow light for seedlings'] })).toBe(
    'typed 351 times, never in words that the article has; the text never says “grow light for seedlings”.',
  );
  expect(coverage.typed({ all: 9, answered: 4, unanswered: ['a'] })).toBe(
    'typed 9 times, 4 times in words that the article has; the text never says “a”.',
  );
});

describe('a phrase', () => {
  test.each([
    [{ from: 'kind' } as const, 'kind'],
    [{ from: 'name', part: 'name without its measure' } as const, 'name without its measure'],
    [{ from: 'also', value: 'seed box' } as const, 'also: seed box'],
    [{ from: 'search', count: 226 } as const, 'searches.csv, typed 226 times'],
    [
      { from: 'search', count: 95, as: 'watering can indoor' } as const,
      'searches.csv, typed 95 times as “watering can indoor”',
    ],
  ])('says what it was taken from: %j', (origin, words) => {
    expect(coverage.origin(origin)).toBe(words);
  });
  test('is named with few others, and the rest are counted', () => {
    expect(coverage.somePhrases(['a', 'b', 'c', 'd'])).toBe('“a”, “b”, “c” and “d”');
    expect(coverage.somePhrases(['a', 'b', 'c', 'd', 'e'])).toBe('“a”, “b”, “c” and two others');
  });
});
