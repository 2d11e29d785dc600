import { describe, expect, test } from 'vitest';
import { stemmerFor } from '../../src/analysis/language/stemmer.ts';
import { checksFile } from '../support/checks-folder.ts';
import { rowsOf } from '../support/language-checks.ts';

const stem = (await stemmerFor('en')) as (word: string) => string;

describe('a stem', () => {
  test('is Porter’s (1980, the paper’s own examples)', () => {
    expect(
      [
        'caresses',
        'ponies',
        'plastered',
        'motoring',
        'hopping',
        'relational',
        'adjustable',
        'controlling',
      ].map(stem),
    ).toEqual(['caress', 'poni', 'plaster', 'motor', 'hop', 'relat', 'adjust', 'control']);
  });

  test('is wanting where natural has no stemmer', async () => {
    expect(await stemmerFor('ja')).toBeUndefined();
  });

  // Snowball's voc.txt and output.txt for Porter's own stemmer (snowballstem/snowball-data, BSD-3-Clause).
  const sample = checksFile('language/porter-sample-300.tsv');
  test.skipIf(sample === undefined)('is the published one for 300 of 300 sample words', () => {
    const rows = rowsOf(sample as string);
    expect(rows).toHaveLength(300);
    expect(rows.filter(([word = '', expected]) => stem(word) !== expected)).toEqual([]);
  });

  // Later rules of Porter's own (-bli, -logi) and words of two letters, which natural takes and leaves.
  const departures = checksFile('language/porter-natural-departures.tsv');
  test.skipIf(departures === undefined)('departs from the published one only where it is known to', () => {
    const rows = rowsOf(departures as string);
    expect(rows.length).toBeGreaterThan(60);
    expect(rows.filter(([word = '', published, ours]) => stem(word) !== ours || ours === published)).toEqual(
      [],
    );
    expect(
      rows
        .filter(([word = '']) => word.length > 2 && !/(?:bly|bli|ogy|ogi|ogies)$/.test(word))
        .map(([word]) => word),
    ).toEqual(EXPECTED_ODD);
  });
});

/** Departures of neither sort. */
const EXPECTED_ODD: readonly string[] = ['assemblies', 'lyell'];
