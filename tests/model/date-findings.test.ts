import { describe, expect, test } from 'vitest';
import { openFindings } from '../../src/model/open-findings.ts';
import { sourcesOf, wholeBox } from '../support/whole-box.ts';

const box = (every = 'P1M'): string => `---
name: A Box
url: https://example.org/
lang: en
timeZone: Pacific/Auckland
currency: GBP
description: A box.
author: A. Writer
every: ${every}
calls: {join: {address: "https://example.org/join", text: Join}}
call: join
---
`;
const cycle = (shipped: string, reveal: string): string => `---
theme: First
summary: A teapot and a tin of tea, and how the two of them came to be in one box in the end.
shipped: ${shipped}
reveal: ${reveal}
---
`;
const ITEM = `---
name: Teapot
kind: teapot
lead: true
brand: A Potter
description: A teapot.
---
`;

const whole = (id: string, record: string, every?: string, item: string | undefined = ITEM) =>
  wholeBox(
    sourcesOf({
      'box.md': box(every),
      [`cycles/${id}/cycle.md`]: record,
      ...(item === '' ? {} : { [`cycles/${id}/items/01-teapot.md`]: item }),
    }),
  );
const found = (id: string, shipped: string, reveal: string, every?: string): readonly string[] =>
  whole(id, cycle(shipped, reveal), every).linking.map(
    ({ weight, rule, location }) => `${weight} ${rule} ${location.line}:${location.column}`,
  );

describe('a reveal before the parcels left', () => {
  test('must be fixed, where it is written', () =>
    expect(found('2026-02', '2026-03-03', '2026-02-19T19:00')).toContain(
      'must fix reveal-before-shipped 5:1',
    ));

  test('is told by the box’s own calendar', () => {
    // 20:00 in UTC is the next morning in Auckland.
    expect(found('2026-03', '2026-03-04', '2026-03-03T20:00:00Z')).toEqual([]);
    expect(found('2026-03', '2026-03-04', '2026-03-03T09:00:00Z')).toEqual([
      'must fix reveal-before-shipped 5:1',
    ]);
  });

  test.each([
    ['on the day', '2026-03-04T19:00'],
    ['later', '2026-03-20T19:00'],
    ['when the parcels tell', 'when-delivered'],
  ])('is none %s', (_, reveal) => expect(found('2026-03', '2026-03-04', reveal)).toEqual([]));
});

describe('a month far from its shipping', () => {
  test.each([
    ['2026-04', '2026-03-03', 'P1M'],
    ['2026-04', '2026-05-20', 'P1M'],
    ['2026-12', '2027-02-01', 'P1M'],
    ['2026-01', '2026-05-01', 'P3M'],
    ['2026-04', '2025-04-03', 'P1M'],
  ])('%s shipped on %s, every %s, is to be looked at', (id, shipped, every) =>
    expect(found(id, shipped, '2027-06-01T19:00', every)).toEqual(['look at month-shipped 4:1']),
  );

  test.each([
    ['2026-04', '2026-03-20', 'P1M'],
    ['2026-04', '2026-04-30', 'P1M'],
    ['2026-04', '2026-05-09', 'P1M'],
    ['2026-12', '2027-01-08', 'P1M'],
    ['2026-01', '2026-04-10', 'P3M'],
  ])('%s shipped on %s, every %s, is not', (id, shipped, every) =>
    expect(found(id, shipped, '2027-06-01T19:00', every)).toEqual([]),
  );
});

describe('a cycle without an item', () => {
  const made = whole('2026-03', cycle('2026-03-04', '2026-03-20T19:00'), 'P1M', '').value;
  if (!made) throw new Error('Expected a box');
  test('is a plan while it is sealed, and must be fixed once it may be shown', () => {
    expect(openFindings(made, Date.UTC(2026, 2, 19))).toEqual([]);
    expect(openFindings(made, Date.UTC(2026, 2, 21))).toMatchObject([
      { weight: 'must fix', rule: 'cycle-empty', location: { file: 'cycles/2026-03/cycle.md', line: 5 } },
    ]);
  });
  test('is none where there is one', () => {
    const { value } = whole('2026-03', cycle('2026-03-04', '2026-03-20T19:00'));
    expect(value && openFindings(value, Date.UTC(2026, 2, 21))).toEqual([]);
  });
});
