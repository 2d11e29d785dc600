/**
 * How well the search ranks, beside a textbook BM25. `LIDLORE_TREC` names folders in the layout of TREC, divided
 * by colons (see `tests/support/trec.ts`); without it, the invented collection of the repository.
 */
import { basename, join } from 'node:path';
import { expect, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import { measure, rankByBm25, rankOurs, readCollection } from '../support/trec.ts';

const folders = (process.env.LIDLORE_TREC ?? join(import.meta.dirname, '../fixtures/relevance')).split(':');

test.each(folders)('relevance over %s', async (folder) => {
  const language = await languageFor('en');
  const collection = readCollection(folder);
  const { documents, queries } = collection;
  const line = ({ map, ndcg10 }: { map: number; ndcg10: number }): string =>
    `MAP ${map.toFixed(3)}, nDCG@10 ${ndcg10.toFixed(3)}`;
  console.log(`${basename(folder)}: ${documents.length} documents, ${queries.length} queries`);
  console.log(
    `  our search, slips and beginnings off: ${line(measure(rankOurs(collection, language), collection))}`,
  );
  console.log(
    `  textbook BM25:                        ${line(measure(rankByBm25(collection, language), collection))}`,
  );
  expect(documents.length).toBeGreaterThan(0);
});
