import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { evenings, judgeReveal } from '../../../src/analysis/parcels/reveal.ts';
import { momentOf } from '../../../src/model/calendar.ts';
import { dayOfDate } from '../../../src/text/days.ts';

const at = (text: string, zone = 'Europe/London'): number => momentOf(text, zone) as number;
const local = (moment: number | undefined, zone = 'Europe/London'): string | undefined =>
  moment === undefined
    ? undefined
    : Temporal.Instant.fromEpochMilliseconds(moment)
        .toZonedDateTimeISO(zone)
        .toPlainDateTime()
        .toString()
        .slice(0, 16);

describe('the evenings that a habit allows', () => {
  test('are at its time in the box’s zone, on both sides of a change of clocks', () => {
    // Europe/London goes from GMT to BST on 29 March 2026 (EU directive 2000/84/EC's rule, kept by the UK).
    const found = evenings(dayOfDate('2026-03-24'), 0, { weekdays: [4], time: '19:00' }, 'Europe/London');
    expect(found.map((one) => new Date(one).toISOString())).toEqual([
      '2026-03-26T19:00:00.000Z',
      '2026-04-02T18:00:00.000Z',
      '2026-04-09T18:00:00.000Z',
    ]);
  });

  test('are an hour later where the clocks skip the time', () => {
    const [only] = evenings(dayOfDate('2026-03-29'), 0, { time: '01:30' }, 'Europe/London', 1);
    expect(local(only)).toBe('2026-03-29T02:30');
  });

  test('fall on the weekdays of Temporal and the local time of Intl, after the moment given', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: dayOfDate('2025-01-01'), max: dayOfDate('2028-01-01') }),
        fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 3 }),
        fc.constantFrom('Europe/London', 'America/New_York', 'Australia/Lord_Howe', 'Pacific/Chatham'),
        fc.integer({ min: -3, max: 10 }),
        (from, weekdays, zone, ahead) => {
          const after = (from + ahead) * 86_400_000 + 43_200_000;
          for (const moment of evenings(from, after, { weekdays, time: '19:00' }, zone)) {
            const there = Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(zone);
            expect(weekdays).toContain(there.dayOfWeek);
            expect(moment).toBeGreaterThan(after);
            expect(dayOfDate(there.toPlainDate().toString())).toBeGreaterThanOrEqual(from);
            expect(
              new Intl.DateTimeFormat('en-GB', { timeZone: zone, timeStyle: 'short' }).format(moment),
            ).toBe('19:00');
          }
        },
      ),
    );
  });
});

describe('the planned reveal', () => {
  const judged = (planned: string, expected: { day?: number; lower?: number; upper?: number }) =>
    judgeReveal({
      planned: at(`${planned}T19:00`),
      asOf: at('2026-03-10T12:00'),
      habit: { weekdays: [4], time: '19:00' },
      timeZone: 'Europe/London',
      expected,
      share: 0.9,
    });
  const mid = {
    day: dayOfDate('2026-03-13'),
    lower: dayOfDate('2026-03-12'),
    upper: dayOfDate('2026-03-16'),
  };
  test.each([
    ['2026-03-12', mid, 'early'],
    ['2026-03-13', mid, 'early'],
    ['2026-03-14', mid, 'close'],
    ['2026-03-16', mid, 'close'],
    ['2026-03-17', mid, 'safe'],
    ['2026-03-19', mid, 'safe'],
    ['2026-03-25', mid, 'safe'],
    ['2026-03-26', mid, 'late'],
    ['2026-03-26', { day: mid.day }, 'close'],
    ['2026-03-26', {}, 'unknown'],
  ])('on %s is judged (%#)', (planned, expected, verdict) => {
    expect(judged(planned, expected).verdict).toBe(verdict);
  });

  test('is late only where an evening a week before is still to come', () => {
    // 13 March is over and 19 March is not: nothing earlier than the nineteenth can be taken any more.
    const asOf = at('2026-03-14T12:00');
    const on = (planned: string, habit: { weekdays: readonly number[]; time: string }) =>
      judgeReveal({
        planned: at(`${planned}T19:00`),
        asOf,
        habit,
        timeZone: 'Europe/London',
        expected: { day: dayOfDate('2026-03-08'), upper: dayOfDate('2026-03-09') },
        share: 0.9,
      });
    const thursdays = { weekdays: [4], time: '19:00' };
    const judgedOn = on('2026-03-19', thursdays);
    expect(judgedOn.verdict).toBe('safe');
    expect(local(judgedOn.proposed[0])).toBe('2026-03-19T19:00');
    expect(on('2026-03-26', thursdays).verdict).toBe('late');
  });

  test('that is past was early where too little had arrived, even if nobody can say when it will be enough', () => {
    const asOf = at('2026-03-27T12:00');
    const past = {
      planned: at('2026-03-19T19:00'),
      asOf,
      habit: {},
      timeZone: 'Europe/London',
      expected: {},
    };
    expect(judgeReveal({ ...past, before: 0.88, share: 0.9 }).verdict).toBe('early');
    expect(judgeReveal({ ...past, before: 0.88, share: 0.8 }).verdict).toBe('safe');
  });

  test('has three evenings beside it, the first after the share is expected', () => {
    expect(judged('2026-03-12', mid).proposed.map((one) => local(one))).toEqual([
      '2026-03-19T19:00',
      '2026-03-26T19:00',
      '2026-04-02T19:00',
    ]);
    expect(local(judged('2026-03-12', { ...mid, upper: dayOfDate('2026-03-19') }).surely)).toBe(
      '2026-03-26T19:00',
    );
  });
});
