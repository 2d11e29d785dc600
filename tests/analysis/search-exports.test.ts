import { describe, expect, test } from 'vitest';
import { readSearches } from '../../src/content/searches.ts';
import { SEARCH_EXPORTS, type SearchExport } from './search-exports.ts';

const check = ({ text, rows, proposed }: SearchExport): void => {
  const { value, diagnostics } = readSearches({ path: 'searches.csv', text });
  const found = diagnostics.filter(({ rule }) => rule !== 'searches-total');
  if (rows) {
    expect(value.map(({ phrase, count }) => [phrase, count])).toEqual(rows);
    // Each row is told with the line that it stands on.
    const lines = text.split('\n');
    for (const { phrase, location } of value) expect(lines[location.line - 1]).toContain(phrase);
    expect(found.filter(({ weight }) => weight !== 'note')).toEqual([]);
    expect(found.length).toBeLessThan(2);
  } else {
    expect(value).toEqual([]);
    expect(found.map(({ weight, rule }) => [weight, rule])).toEqual([['look at', 'searches-column']]);
    const lines = [...(found[0]?.fix ?? '').matchAll(/`(searches: \{[^`…]*\})`/g)].map(([, line]) => line);
    expect(lines).toEqual(proposed);
  }
};

describe('a list of what was typed with', () => {
  test.each(SEARCH_EXPORTS.filter((_, i) => i % 2 === 0))('$like', check);
  test.each(SEARCH_EXPORTS.filter((_, i) => i % 2 === 1))('$like (aside)', check);
});
