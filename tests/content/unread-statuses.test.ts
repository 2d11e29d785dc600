import { describe, expect, test } from 'vitest';
import { parcelsReader } from '../../src/content/parcels.ts';

const DAY = 20_000;
const read = (statuses: readonly string[], format = {}) => {
  const reader = parcelsReader({
    file: 'cycles/2026-03/parcels.csv',
    format,
    formatAt: undefined,
    timeZone: 'Europe/London',
    asOf: DAY,
  });
  const rows = statuses.map((status) => `2024-10-01,,"${status}"`);
  reader.write(`shipped,delivered,status\n${rows.join('\n')}\n`);
  const { value, diagnostics } = reader.end();
  return {
    travelling: value?.counts
      .filter(({ state }) => state === 'travelling')
      .reduce((n, { count }) => n + count, 0),
    found: diagnostics.filter(({ rule }) => rule === 'parcels-status'),
  };
};

describe('a status that no rule reads', () => {
  test('is named with its count and its first line, and its parcels count as on the way', () => {
    const { travelling, found } = read([
      'In transit',
      'Exception',
      'Held',
      'exception',
      'Action needed',
      'Customs',
    ]);
    expect(travelling).toBe(6);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ weight: 'look at', location: { line: 3 } });
    expect(found[0]?.message).toContain(
      '5 of 6 rows (`Exception` 2, `Held` 1, `Action needed` 1, `Customs` 1)',
    );
  });

  test('is none that is on its way as it should be, lost or sent back, or empty', () =>
    expect(
      read(['', 'In transit', 'OUT FOR DELIVERY', 'Label created', 'lost', 'Return to sender']).found,
    ).toEqual([]));

  test('is none once box.md says what it means', () =>
    expect(read(['Held', 'Exception'], { travelling: ['held'], lost: ['Exception'] }).found).toEqual([]));

  test('is not quoted where it may be about somebody', () => {
    const { found } = read(['Held for Mr Quill at number nine', 'Call 0131 496 0000', 'Held']);
    expect(found[0]?.message).toContain('3 of 3 rows (`Held` 1 and more)');
    expect(found[0]?.message).not.toMatch(/Quill|0131/);
  });

  test('is counted, and not named, where the column holds something else', () => {
    const { found } = read(
      Array.from({ length: 60 }, (_, i) => `Name ${String.fromCharCode(65 + (i % 26), 97 + i)}`),
    );
    expect(found[0]?.message).toMatch(/60 of 60 rows, expected/);
  });
});
