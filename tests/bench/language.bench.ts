/** How well names and texts are read, beside annotated data: `npm run bench -- language`. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, test } from 'vitest';
import { nounPhrases } from '../../src/analysis/language/chunks.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { singularOf } from '../../src/text/singular.ts';
import { checksFile } from '../support/checks-folder.ts';
import { readBracketed, readIob, type Score, scoreChunks } from '../support/chunk-checks.ts';
import { measureHeads, rowsOf } from '../support/language-checks.ts';

const ownFile = (name: string): string => join(import.meta.dirname, '../fixtures/language', name);

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

const scoreWords = ({ right, found, gold, precision, recall, f1 }: Score): string =>
  `P ${percent(precision)}, R ${percent(recall)}, F1 ${percent(f1)} (${right} right of ${found} found and ${gold} annotated)`;

/** Runs a measurement of a file outside the repository, or says that it is not there. */
const withFile = (path: string, name: string, measure: (file: string) => Promise<string> | string): void => {
  const file = checksFile(path);
  if (file === undefined) test.skip(`${name}: skipped, ${path} is not there`, () => {});
  else
    test(name, async () => {
      console.log(`${name}: ${await measure(file)}`);
    });
};

const english = await languageFor('en');

describe('language', () => {
  // WANDS query set (Chen et al. 2022, ECIR), every second query.
  withFile('language/wands-queries-even.tsv', 'Heads of shoppers’ phrases', (file) => {
    const { qualify, right, share, wrong } = measureHeads(file, english);
    const some = wrong
      .slice(0, 10)
      .map(({ query, head, expected }) => `\n    ${query}: ${head}, expected ${expected}`);
    return `${percent(share)} (${right} of ${qualify})${some.join('')}`;
  });

  // Universal Dependencies English EWT, reviews of the development set.
  withFile('language/ewt-dev-reviews-200.iob.tsv', 'Noun phrases of reviews', async (file) =>
    scoreWords(await scoreChunks(readIob(readFileSync(file, 'utf8')), nounPhrases)),
  );

  test('our own sentences', async () => {
    const own = readBracketed(readFileSync(ownFile('own-chunks.tsv'), 'utf8'));
    for (const half of new Set(own.map((sentence) => sentence.half))) {
      const sentences = own.filter((sentence) => sentence.half === half);
      console.log(
        `Noun phrases of our own sentences, ${half}: ${scoreWords(await scoreChunks(sentences, nounPhrases))}`,
      );
    }
  });

  const plurals = (file: string): string => {
    const rows = rowsOf(file);
    const one = rows.filter(([plural = '', singular = '']) => singularOf(plural) === singularOf(singular));
    return `${one.length} of ${rows.length} share a key with their singular`;
  };
  test('plurals of goods', () => {
    console.log(`Plurals of goods: ${plurals(ownFile('goods-plurals.tsv'))}`);
  });
  withFile('language/ewt-dev-plurals.tsv', 'Plurals of running text', plurals);

  // snowball-data: Porter's own word list and his stems of it.
  withFile('language/porter-sample-300.tsv', 'Porter stems', async (file) => {
    const { default: porter } = await import('natural/lib/natural/stemmers/porter_stemmer.js');
    const rows = rowsOf(file);
    return `${rows.filter(([word = '', stem]) => porter.stem(word) === stem).length} of ${rows.length} as published`;
  });
});
