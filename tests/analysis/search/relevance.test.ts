/** Our search beside a textbook BM25 over the invented collection: a guard, not a measure (see its README). */
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { languageFor } from '../../../src/analysis/language/language.ts';
import { find } from '../../../src/analysis/search/find.ts';
import { TEXT_FIELDS } from '../../../src/analysis/search/options.ts';
import { driftingCollection } from '../../support/drifting-collection.ts';
import { bm25Scores, measure, rankApart, rankByBm25, rankOurs, readCollection } from '../../support/trec.ts';
import { indexInParts } from '../../support/whole-index.ts';

const english = await languageFor('en');
const collection = readCollection(join(import.meta.dirname, '../../fixtures/relevance'));

test('the collection is read whole', () => {
  expect(collection.documents).toHaveLength(60);
  expect(collection.documents[0]).toMatchObject({ id: 'w1', title: 'Enamel watering can' });
  expect(collection.documents[0]?.text).toMatch(/^A small watering can/);
  expect(collection.queries).toHaveLength(25);
  expect(collection.queries[0]).toEqual({ id: '1', text: 'watering can' });
  expect(collection.judgments.get('1')?.get('w1')).toBe(2);
});

// Worked by hand: relevant at ranks 1 and 3 of 3 known, so (1/1 + 2/3) / 3.
test('average precision and discounted gain are those of a ranking worked by hand', () => {
  const judged = {
    ...collection,
    judgments: new Map([
      [
        '1',
        new Map([
          ['a', 2],
          ['b', 1],
          ['c', 1],
          ['d', 0],
        ]),
      ],
    ]),
  };
  const { map, ndcg10 } = measure(new Map([['1', ['a', 'd', 'b', 'x']]]), judged);
  expect(map).toBeCloseTo((1 + 2 / 3) / 3, 10);
  expect(ndcg10).toBeCloseTo((2 + 1 / 2) / (2 + 1 / Math.log2(3) + 1 / 2), 10);
});

// Robertson & Zaragoza 2009, 3.2, by the textbook's own arithmetic in tests/support/trec.ts.
test.each([
  ['in one part', [60]],
  ['in parts', [7, 20, 21, 55, 60]],
])('the text of a document, %s, is scored to the last digit as BM25 by the book', (_, ends) => {
  const texts = collection.documents.map(({ title, text }) => ({ text: `${title}\n${text}` }));
  const indexes = [indexInParts(texts, TEXT_FIELDS, english, ends)];
  const book = bm25Scores(collection.documents, english);
  for (const { text } of collection.queries) {
    const ours = find(indexes, english, text, { slips: false, beginnings: false }).found;
    const expected = book(text);
    expect(ours).toHaveLength(expected.size);
    for (const { id, score } of ours) expect(score).toBeCloseTo(expected.get(id) as number, 10);
  }
});

test.each([
  ['as published', undefined],
  ['in small parts', [7, 20, 21, 55, 60]],
])('our search %s ranks no worse than BM25 by the book', (_, ends) => {
  const ours = measure(rankOurs(collection, english, ends), collection);
  const book = measure(rankByBm25(collection, english), collection);
  expect(ours.map).toBeGreaterThanOrEqual(book.map);
  expect(ours.ndcg10).toBeGreaterThanOrEqual(book.ndcg10);
});

test('where subjects drift, parts counted together rank as one part does, and better than each by itself', () => {
  const drifting = driftingCollection();
  const published = rankOurs(drifting, english);
  expect(published).toEqual(rankOurs(drifting, english, [drifting.documents.length]));
  const apart = rankApart(drifting, english);
  expect(measure(published, drifting).map - measure(apart, drifting).map).toBeGreaterThan(0.02);
});
