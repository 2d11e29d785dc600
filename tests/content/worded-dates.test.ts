import { expect, test } from 'vitest';
import { likelyValues } from '../../src/content/likely-values.ts';
import { dayNear, monthNear } from '../../src/workspace/begin/index.ts';

test.each([
  ['1 December 2026', '2026-12-01'],
  ['1st December 2026', '2026-12-01'],
  ['December 1, 2026', '2026-12-01'],
  ['1 Dec 2026', '2026-12-01'],
  // Set aside until the rule stood.
  ['Tuesday, 1 December 2026', '2026-12-01'],
  ['Dec. 1st 2026', '2026-12-01'],
  ['01-Dec-2026', '2026-12-01'],
  ['2026 December 1', '2026-12-01'],
  ['on the 2nd of March 2027', '2027-03-02'],
  ['Wed 3 Sept 2026', '2026-09-03'],
  // "Mar" is Tuesday in French and Spanish, and March in English.
  ['mardi 3 avril 2026', '2026-04-03'],
  ['Mar 3, 2026', '2026-03-03'],
  ['1. Dezember 2026', '2026-12-01'],
  ['1er décembre 2026', '2026-12-01'],
  ['martes 3 de marzo de 2026', '2026-03-03'],
])('“%s” is %s', (typed, date) => {
  expect(likelyValues(typed)).toContain(date);
});

test.each([
  '1 decoration 2026',
  'December 2026',
  '1 2 December 2026',
  '1 May June 2026',
  'box 1 December 2026',
  '12026',
])('“%s” is no date', (typed) => {
  expect(likelyValues(typed).filter((value) => /^\d{4}-\d{2}-\d{2}$/.test(String(value)))).toEqual([]);
});

test('a day or a month without a year is the nearest one', () => {
  expect(['4 January', '1st December', '3 Mar', 'soon'].map((typed) => dayNear(typed, '2026-12'))).toEqual([
    ...['2027-01-04', '2026-12-01', '2027-03-03', 'soon'],
  ]);
  expect(
    ['dec', 'January', '2027-02', 'June 2026', '13', 'soon'].map((typed) => monthNear(typed, '2026-11')),
  ).toEqual(['2026-12', '2027-01', '2027-02', '2026-06', undefined, undefined]);
});
