import { describe, expect, test } from 'vitest';
import { archiveOf } from '../../src/analysis/coverage/rivals/archive.ts';
import { indexArticle } from '../../src/analysis/coverage/rivals/article-index.ts';
import { numbersOf } from '../../src/analysis/coverage/rivals/compounds.ts';
import { placeOf, spotsOf, writtenAt } from '../../src/analysis/coverage/rivals/text-stream.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { articleFrom, type Run } from './passages-sample.ts';

const english = await languageFor('en');

/** Where an article says a phrase, when another article has written `one` as one word. */
const spotsIn = (runs: readonly (Run | string)[], phrase: string, one: string) => {
  const articles = [articleFrom(english, '2026-01', runs), articleFrom(english, '2026-02', [one])];
  const { streamOf, compounds, vocabulary } = archiveOf(articles.map(indexArticle));
  const keys = english.words(phrase).map(({ key }) => key);
  const numbers = numbersOf(keys, compounds, vocabulary).map(({ number }) => number);
  return spotsOf(streamOf(0), numbers).map((spot) => ({
    text: writtenAt(streamOf(0), spot),
    at: placeOf(streamOf(0), spot),
  }));
};

describe('two words that somebody writes as one', () => {
  test('are that one, each place as it is written there and where it is', () => {
    const runs = [
      { text: 'A house plant and a house-plant.', file: 'a.md' },
      { text: 'Houseplants. A house plant', file: 'b.md' },
      { text: 'A house plant', file: 'c.md' },
    ];
    expect(
      spotsIn(runs, 'houseplant', 'Houseplant').map(({ text, at }) => [text, at.file, at.column]),
    ).toEqual([
      ['house plant', 'a.md', 3],
      ['house-plant', 'a.md', 21],
      ['Houseplants', 'b.md', 1],
      ['house plant', 'b.md', 16],
      ['house plant', 'c.md', 3],
    ]);
  });

  test('are not, where a stop or a passage stands between', () => {
    expect(spotsIn(['A house. Plant it.', 'A house', 'Plant it.'], 'houseplant', 'houseplant')).toEqual([]);
  });

  test('are not, where they are short: "a way" is not "away", "to day" not "today"', () => {
    expect(spotsIn(['a way to day'], 'away', 'away')).toEqual([]);
    expect(spotsIn(['a way to day'], 'today', 'today')).toEqual([]);
  });

  test('are joined from the left, where a word could go with either neighbour', () => {
    expect(spotsIn(['hand rail road'], 'handrail', 'handrail railroad').map(({ text }) => text)).toEqual([
      'hand rail',
    ]);
    expect(spotsIn(['hand rail road'], 'railroad', 'handrail railroad')).toEqual([]);
    expect(spotsIn(['hand rail road'], 'road', 'handrail railroad')).toHaveLength(1);
  });
});

test('one word that nobody writes as one is its two halves', () => {
  expect(spotsIn(['A house plant.'], 'houseplant', 'nothing').map(({ text }) => text)).toEqual([
    'house plant',
  ]);
});

test('a word that nobody has is nowhere', () => {
  expect(spotsIn(['A house plant.'], 'hori', 'nothing')).toEqual([]);
});

test('an article that writes a pair is ranked as if it wrote the one word, whatever the field', () => {
  const scoresOf = (pair: string): readonly number[] => {
    const articles = [
      articleFrom(english, '2026-01', [
        { text: `A ${pair} for the sill`, form: 'title', zone: 'title' },
        `Every ${pair} wants a drink, and the ${pair} by the house door wants two.`,
        { text: `The ${pair}`, form: 'heading', zone: 'heading' },
      ]),
      articleFrom(english, '2026-02', ['A houseplant, a house and another plant. The house.']),
      articleFrom(english, '2026-03', [`No ${pair} at all, and none of the others either.`]),
    ];
    const { scorer, compounds, vocabulary } = archiveOf(articles.map(indexArticle));
    return ['houseplant', 'house', 'plant', 'drink', 'sill', 'plant door'].flatMap((phrase) => {
      const keys = english.words(phrase).map(({ key }) => key);
      const terms = numbersOf(keys, compounds, vocabulary).map(({ number }) => number);
      return [...articles.keys()].map((article) => scorer.score(terms, article));
    });
  };
  const joined = scoresOf('houseplant');
  expect(joined.filter((score) => score > 0).length).toBeGreaterThan(8);
  for (const pair of ['house plant', 'house-plant']) expect(scoresOf(pair)).toEqual(joined);
});
