import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { languageFor } from '../../../src/analysis/language/language.ts';
import { type Answer, find } from '../../../src/analysis/search/find.ts';
import { HEAD_FIELDS, TEXT_FIELDS } from '../../../src/analysis/search/options.ts';
import { openPart } from '../../../src/analysis/search/part.ts';
import { nearestForms } from '../../../src/analysis/search/spelling.ts';
import { stemsBeginning, wholeIndex } from '../../../src/analysis/search/whole-index.ts';
import { buildIndex } from '../../support/build-index.ts';
import { indexInParts } from '../../support/whole-index.ts';

const english = await languageFor('en-GB');

/** Few words, near to one another, so that they meet whole, as beginnings and by slips, and scores are often close. */
const word = fc.constantFrom(
  ...'lamp lamps lampshade lampoon lmap shade shades oak oaken twine twines twin zinnia terracotta terrace can'.split(
    ' ',
  ),
);
const words = (most: number) =>
  fc.array(word, { minLength: 1, maxLength: most }).map((some) => some.join(' '));
const items = fc.array(fc.record({ name: words(3), about: words(2), story: words(30) }), {
  minLength: 1,
  maxLength: 30,
});
const query = fc
  .array(
    fc.oneof(
      word,
      fc.constantFrom('la', 'lam', 'lampsh', 'terr', 'teracotta', 'twime', 'o', 'shadse', 'the'),
    ),
    {
      minLength: 1,
      maxLength: 3,
    },
  )
  .map((some) => some.join(' '));
/** Where items are cut, as shares of them: parts may be empty, of one item, or all. */
const cuts = fc.array(fc.nat(100), { maxLength: 5 });

const endsOf = (shares: readonly number[], count: number): readonly number[] => [
  ...shares.map((share) => Math.floor((share / 101) * count)).sort((a, b) => a - b),
  count,
];

const textsOf = (some: readonly { name: string; about: string; story: string }[]) =>
  some.map(({ name, about, story }) => ({ name, about, text: `${name}\n${about}\n${story}` }));

/** All that an answer says, scores to the last digit. */
const told = ({ asked, found, metBy }: Answer) => ({
  asked,
  found: found.map((one) => ({ ...one, met: metBy(one.id) })),
});

describe('an index in parts', () => {
  test('answers as one of the same items does, with the same scores', () => {
    fc.assert(
      fc.property(items, cuts, query, (some, shares, asked) => {
        const texts = textsOf(some);
        const head = indexInParts(texts, HEAD_FIELDS, english);
        const [one, parts] = [undefined, endsOf(shares, texts.length)].map((ends) =>
          told(find([head, indexInParts(texts, TEXT_FIELDS, english, ends)], english, asked)),
        );
        expect(parts).toEqual(one);
      }),
      { numRuns: 300 },
    );
  });

  test('answers, before all parts have come, as one of the items that have', () => {
    fc.assert(
      fc.property(items, cuts, query, fc.nat(5), (some, shares, asked, come) => {
        const texts = textsOf(some);
        const head = indexInParts(texts, HEAD_FIELDS, english);
        const ends = endsOf(shares, texts.length).slice(0, come + 1);
        const [one, parts] = [
          indexInParts(texts.slice(0, ends.at(-1)), TEXT_FIELDS, english),
          indexInParts(texts, TEXT_FIELDS, english, ends),
        ].map((stories) => told(find([head, stories], english, asked)));
        expect(parts).toEqual(one);
      }),
      { numRuns: 200 },
    );
  });

  test('answers otherwise where each part counts for itself, so the tests above can fail', () => {
    // In its own part "oak" is common, in the other "lamp" is.
    const texts = ['oak', 'oak', 'oak', 'oak lamp', 'lamp', 'lamp', 'lamp', 'lamp oak'].map((text) => ({
      text,
    }));
    const stories = indexInParts(texts, TEXT_FIELDS, english, [4, 8]);
    const scoresIn = (indexes: Parameters<typeof find>[0]) =>
      find(indexes, english, 'lamp').found.map(({ id, score }) => [id, score]);
    expect(scoresIn(stories.parts.map((part) => wholeIndex([part])))).not.toEqual(scoresIn([stories]));
  });

  test('begins a word by the same few stems, wherever it is cut', () => {
    // More words than a beginning stands for, the short ones among the last items.
    const texts = Array.from({ length: 80 }, (_, i) => ({
      text: `bax${'bcdfghklmn'[Math.floor(i / 10)]}${'bcdfghklmn'[i % 10]}${'o'.repeat(i < 40 ? 2 : 1)}`,
    }));
    const [one, parts] = [[80], [7, 33, 80]].map((ends) => indexInParts(texts, TEXT_FIELDS, english, ends));
    if (!one || !parts) throw new Error('Expected two indexes');
    expect(stemsBeginning(parts, 'bax')).toEqual(stemsBeginning(one, 'bax'));
    expect(find([parts], english, 'bax').found).toEqual(find([one], english, 'bax').found);
    expect(find([one], english, 'bax').found).toHaveLength(48);
  });

  test('guesses a misspelt word alike, wherever it is cut', () => {
    const texts = ['lamps', 'clamp', 'lambs', 'damp', 'lames'].map((text) => ({ text }));
    const [one, parts] = [[5], [1, 2, 4, 5]].map((ends) => [indexInParts(texts, TEXT_FIELDS, english, ends)]);
    expect(nearestForms(parts ?? [], 'lamqs', true)).toEqual(nearestForms(one ?? [], 'lamqs', true));
    expect(nearestForms(one ?? [], 'lamqs', true).map(({ word }) => word)).toEqual([
      'lambs',
      'lames',
      'lamps',
    ]);
  });

  test('has a part unchanged when items of another change', () => {
    const texts = ['oak lamp', 'elm lamp', 'ash shade', 'oak shade'].map((text) => ({ text }));
    const partsOf = (all: typeof texts) =>
      [0, 2].map((from) => buildIndex(all.slice(from, from + 2), TEXT_FIELDS, english, from));
    const [, before] = partsOf(texts);
    const [first, after] = partsOf([{ text: 'oak oak oak lamp and a mister' }, ...texts.slice(1)]);
    expect(after).toEqual(before);
    expect(first).not.toEqual(partsOf(texts)[0]);
  });

  test('takes no part with other fields', () => {
    const open = (fields: readonly string[]) => openPart(buildIndex([{ name: 'Oak' }], fields, english));
    expect(() => wholeIndex([open(['name']), open(['text'])])).toThrow(
      'Expected a part with the fields name',
    );
  });

  test('of no parts yet answers nothing', () => {
    expect(find([wholeIndex([])], english, 'lamp').found).toEqual([]);
  });
});
