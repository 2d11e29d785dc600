import { describe, expect, test } from 'vitest';
import { cellsOf, tableLines, wrappedInCells } from '../../src/cli/cells.ts';
import { proofReport } from '../../src/cli/proof-report.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { coverageSample } from '../support/coverage-sample.ts';

const diagnostics: readonly Diagnostic[] = [
  {
    weight: 'look at',
    rule: 'summary-long',
    location: { file: 'cycles/2026-03/cycle.md', line: 4, column: 10 },
    message: 'Unexpected summary of 171 characters, expected at most 160',
  },
  {
    weight: 'must fix',
    rule: 'allergens-missing',
    location: { file: 'cycles/2026-03/items/05-chamomile-tea.md', line: 11, column: 1 },
    message: 'Unexpected food without `allergens`, expected a list',
    fix: 'Write `allergens: []` if there are none',
  },
];
const report = (width: number, more: Partial<typeof coverageSample> = {}): string =>
  proofReport({ ...coverageSample, ...more }, diagnostics, { width, showFile: (file) => `content/${file}` });

describe('the report', () => {
  test.each([60, 80, 120])('reads so at %i cells', (width) => {
    expect(report(width)).toMatchSnapshot();
  });
  test.each([40, 60, 61, 79, 80, 97, 120, 140, 400])('has no line wider than %i cells', (width) => {
    const most = Math.min(140, Math.max(60, width));
    const wide = report(width)
      .split('\n')
      .filter((line) => cellsOf(line) > most);
    expect(wide).toEqual([]);
  });
  test('begins with the weakest item and ends with the verdict', () => {
    const lines = report(100).trimEnd().split('\n');
    const table = lines.slice(lines.findIndex((line) => line.startsWith('Standing')) + 1);
    expect(table[0]).toMatch(/^ +0\.59 +0\.75 {2}3\. Brass plant mister/);
    expect(lines.slice(-2).join(' ')).toContain('1 finding must be fixed first.');
  });
  test('leaves out what there is nothing to say of', () => {
    const none = report(100, { overRepeated: [], shared: [], advice: [] });
    for (const heading of ['Crowded', 'Said before', 'Advice'])
      expect(none).not.toMatch(new RegExp(`^${heading}`, 'm'));
  });
  test('says how many more there are than it shows', () => {
    const [crowding] = coverageSample.overRepeated;
    const crowded = Array.from({ length: 8 }, () => crowding as NonNullable<typeof crowding>);
    expect(report(100, { overRepeated: crowded })).toContain('  and three more, on the page\n');
  });
});

describe('cells', () => {
  // UAX #11, East Asian Width: W and F take two columns, a combining mark none.
  test.each([
    ['tin', 3],
    ['園芸ナイフ', 10],
    ['칼', 2],
    ['Ｔ', 2],
    ['e\u0301', 1],
    ['“tin”', 5],
  ])('of %s are %i', (text, cells) => expect(cellsOf(text)).toBe(cells));
  test('lines break at spaces, and within a word that fits on none', () => {
    expect(wrappedInCells('a seed tin', 6)).toEqual(['a seed', 'tin']);
    expect(wrappedInCells('a 園芸ナイフ', 6)).toEqual(['a', '園芸ナ', 'イフ']);
    expect(wrappedInCells('', 6)).toEqual(['']);
  });
  test('a table keeps its columns apart when one of them is in another script', () => {
    const lines = tableLines(
      [
        { head: 'Item', wraps: true, cells: ['園芸', 'tin'] },
        { head: 'At', cells: ['1', '2'] },
      ],
      20,
    );
    expect(lines).toEqual(['Item  At', '園芸  1', 'tin   2']);
  });
});
