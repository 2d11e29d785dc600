/**
 * How well the search ranks over its parts as they are published, beside one part, parts that count each for itself,
 * and a textbook BM25. `LIDLORE_TREC` names folders in the layout of TREC, divided by colons (see
 * `tests/support/trec.ts`); without it, the invented collection of the repository.
 */
import { basename, join } from 'node:path';
import { expect, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import { driftingCollection } from '../support/drifting-collection.ts';
import {
  type Collection,
  measure,
  type Ranking,
  rankApart,
  rankByBm25,
  rankOurs,
  readCollection,
} from '../support/trec.ts';

const folders = (process.env.LIDLORE_TREC ?? join(import.meta.dirname, '../fixtures/relevance')).split(':');

const compare = async (collection: Collection) => {
  const language = await languageFor('en');
  const { documents, queries } = collection;
  expect(documents.length).toBeGreaterThan(0);
  console.log(`  ${documents.length} documents, ${queries.length} queries; slips and beginnings off`);
  const measured = (how: string, ranking: Ranking) => {
    const found = measure(ranking, collection);
    console.log(`  ${how.padEnd(32)} MAP ${found.map.toFixed(4)}, nDCG@10 ${found.ndcg10.toFixed(4)}`);
    return found;
  };
  const published = measured('in parts as published', rankOurs(collection, language));
  const onePart = measured('in one part', rankOurs(collection, language, [documents.length]));
  measured('parts that count for themselves', rankApart(collection, language));
  const book = measured('textbook BM25', rankByBm25(collection, language));
  expect(published).toEqual(onePart);
  return { published, book };
};

test.each(folders)('relevance over %s', async (folder) => {
  console.log(basename(folder));
  const { published, book } = await compare(readCollection(folder));
  expect(published.map).toBeGreaterThanOrEqual(book.map);
});

test('what parts would cost that do not know of each other', async () => {
  console.log('a made-up archive whose subjects drift');
  await compare(driftingCollection());
});
