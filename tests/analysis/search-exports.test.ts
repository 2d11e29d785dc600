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
    const lines = [...(found[0]?.fix ?? '').matchAll(/`(phrase: [^`…]*)` and `(count: [^`…]*)`/g)];
    expect(lines.map(([, phrase, count]) => `${phrase}; ${count}`)).toEqual(proposed);
  }
};

describe('a list of what was typed with', () => {
  test.each(SEARCH_EXPORTS.filter((_, i) => i % 2 === 0))('$like', check);
  test.each(SEARCH_EXPORTS.filter((_, i) => i % 2 === 1))('$like (aside)', check);
});

test('what stands above the names of columns, a quote that stays open and a sum are told, and nothing else is lost', () => {
  const told = (text: string) =>
    readSearches({ path: 'searches.csv', text }).diagnostics.map(({ weight, rule, location }) => [
      ...[weight, rule, location.line],
    ]);
  expect(told('Report\n\nphrase,count\nseed tin,64\n')).toEqual([['note', 'searches-columns', 3]]);
  expect(told('Report\n\nWords,Times\n"seed tin,64\ndibber,3\n')).toEqual([
    ['note', 'searches-columns', 3],
    ['look at', 'searches-quote', 4],
  ]);
  expect(told('phrase,count\na,1\nb,2\nc,3\nAll,6\n')).toEqual([['note', 'searches-total', 5]]);
  expect(told('phrase,count\na,1\nb,2\nAll,3\n')).toEqual([]);
  const rows = Array.from({ length: 12 }, (_, i) => `pot ${i},${i === 5 ? 'x' : 9}`).join('\n');
  const { value, diagnostics } = readSearches({
    path: 'searches.csv',
    text: `Report\nWords,Times\n${rows}\n`,
  });
  expect(value).toHaveLength(11);
  expect(diagnostics.map(({ rule, location }) => [rule, location.line])).toContainEqual(['searches-row', 8]);
});
