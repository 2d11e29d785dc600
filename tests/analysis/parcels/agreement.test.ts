/** The figures that are told of one list, beside one another: none may say what another denies. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deliveredOf } from '../../../src/analysis/parcels/delivered.ts';
import { type ParcelsFacts, parcelsFacts } from '../../../src/analysis/parcels/facts.ts';
import type { ParcelCount } from '../../../src/model/box.ts';
import { dayOfDate, MS_A_DAY } from '../../../src/text/days.ts';
import { parcels as words } from '../../../src/wording/en/parcels.ts';
import { parcel } from './parcels.ts';

const LEFT = dayOfDate('2026-03-03');
const THURSDAYS = { share: 0.9, weekdays: [4], time: '19:00' };
const on = (date: string): number => dayOfDate(date);

const pool = [
  {
    cycle: '2026-02',
    parcels: {
      file: 'p.csv',
      asOf: LEFT - 1,
      counts: Array.from({ length: 100 }, (_, i) => parcel(2 + (i % 9), 'delivered', { shipped: LEFT - 30 })),
    },
  },
];

/** The facts of parcels that left from 3 March on, read so many days later. */
const factsOf = (counts: readonly ParcelCount[], age: number, planned = '2026-03-19', earlier = pool) =>
  parcelsFacts({
    cycle: '2026-03',
    parcels: { file: 'parcels.csv', asOf: LEFT + age, counts },
    earlier,
    asOf: (LEFT + age) * MS_A_DAY + MS_A_DAY / 2,
    asOfDay: LEFT + age,
    timeZone: 'UTC',
    habit: THURSDAYS,
    planned: on(planned) * MS_A_DAY + 19 * 3_600_000,
  });
const left = (days: number, state: ParcelCount['state'] = 'delivered', count = 1, after = 0): ParcelCount =>
  parcel(days, state, { shipped: LEFT + after, count });
const said = (facts: ParcelsFacts): string =>
  [
    words.state(facts),
    ...words.outlook(facts, 'en-GB'),
    words.never(facts),
    ...words.reveal(facts, 'en-GB'),
  ].join(' ');

describe('what is told of a list', () => {
  test('names the day that opens the box, where exactly nine in ten had arrived by it', () => {
    const counts = [left(3, 'delivered', 9), left(12)];
    const facts = factsOf(counts, 14);
    expect(facts.outlook.dates).toEqual({ day: LEFT + 3, lower: LEFT + 3, upper: LEFT + 3 });
    expect(deliveredOf(counts, 0.9).day).toBe(LEFT + 3);
    expect(said(facts)).toContain('Nine in ten had arrived by 6 March 2026, 3 days after they left.');
  });

  test('counts the parcels that have yet to leave, as the seal does', () => {
    const counts = [left(3, 'delivered', 9), parcel(0, 'toLeave', { shipped: LEFT + 10, count: 5 })];
    const facts = factsOf(counts, 4);
    expect([facts.parcels, facts.reached, deliveredOf(counts, 0.9).day]).toEqual([14, false, undefined]);
    expect(words.state(facts)).toBe('9 of 14 parcels have arrived, 64%; 5 have yet to leave.');
    // They leave on 13 March, and by the earlier cycle the fourth of five is there on 13 + 8.
    expect(facts.outlook.dates.day).toBeGreaterThan(LEFT + 10);
  });

  test('says at once that nine in ten can no longer arrive, and judges by those that can', () => {
    const counts = [left(3, 'delivered', 70), left(4, 'travelling', 10), left(4, 'lost', 20)];
    const young = factsOf(counts, 4, '2026-03-19', []);
    expect(said(young)).toContain(
      'Nine in ten can no longer arrive: 20 of 100 parcels were lost or sent back, so that at most 80% can.',
    );
    // 72 of 80 are waited for, and 70 are there.
    expect([young.aim, young.reached]).toEqual([0.9 * 0.8, false]);
    const later = factsOf(
      [left(3, 'delivered', 70), left(5, 'delivered', 4), left(9, 'travelling', 6), left(9, 'lost', 20)],
      9,
      '2026-03-12',
    );
    expect(later.outlook.dates.day).toBe(LEFT + 5);
    expect(later.reveal.verdict).toBe('safe');
    expect(said(later)).toContain(
      'Nine in ten of those that can arrive had arrived by 8 March 2026, 5 days after they left.',
    );
    expect(said(later)).not.toMatch(/cannot be said|too young/);
  });

  test('gives each carrier the share of its parcels that has arrived', () => {
    const counts = [
      ...[left(3, 'delivered', 10), left(2, 'travelling', 10, 5)].map((one) => ({ ...one, carrier: 'Cart' })),
      { ...left(3, 'delivered', 5), carrier: 'Boat' },
    ];
    expect(factsOf(counts, 7).carriers.map(({ name, share }) => [name, share])).toEqual([
      ['Cart', 0.5],
      ['Boat', 1],
    ]);
  });

  test('expects from today on no less than has arrived, and never more than can', () => {
    // Nobody arrived as the earlier cycle did: by its curve alone eight in nine would be there.
    const counts = [left(10, 'delivered', 10), left(13, 'travelling', 90)];
    const { evenings, atReveal } = factsOf(counts, 13, '2026-03-26');
    for (const { share } of [...evenings, ...(atReveal ? [atReveal] : [])]) {
      expect(share).toBeGreaterThanOrEqual(0.1);
      expect(share).toBeLessThan(0.2);
    }
  });

  test('in any list agrees with the seal and with itself', () => {
    const rows = fc.array(
      fc.record({
        after: fc.integer({ min: 0, max: 12 }),
        takes: fc.integer({ min: 0, max: 20 }),
        fate: fc.constantFrom('arrives', 'arrives', 'arrives', 'arrives', 'lost', 'returned'),
        count: fc.integer({ min: 1, max: 20 }),
      }),
      { minLength: 1, maxLength: 25 },
    );
    fc.assert(
      fc.property(
        rows,
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 0, max: 30 }),
        (list, age, plan) => {
          const counts = list.map(({ after, takes, fate, count }) =>
            after > age
              ? left(0, 'toLeave', count, after)
              : fate !== 'arrives'
                ? left(age - after, fate as 'lost', count, after)
                : after + takes <= age
                  ? left(takes, 'delivered', count, after)
                  : left(age - after, 'travelling', count, after),
          );
          const planned = new Date((LEFT + plan) * MS_A_DAY).toISOString().slice(0, 10);
          const facts = factsOf(counts, age, planned);
          const sum = (...states: readonly string[]): number =>
            counts.filter(({ state }) => states.includes(state)).reduce((all, { count }) => all + count, 0);
          const all = sum('delivered', 'travelling', 'lost', 'returned', 'toLeave');
          const { dates, past, atMost } = facts.outlook;
          expect(facts.parcels).toBe(all);
          expect(facts.isOutOfReach).toBe(all - sum('lost', 'returned') < 0.9 * all - 1e-9);
          const seal = deliveredOf(counts, 0.9).day;
          if (!facts.isOutOfReach) expect(facts.reached ? dates.day : undefined).toBe(seal);
          expect(past).toBe(facts.reached);
          if (dates.day !== undefined && !facts.reached) {
            expect(dates.day).toBeGreaterThan(LEFT + age);
            expect(dates.lower).toBeLessThanOrEqual(dates.day);
            expect(dates.upper ?? dates.day).toBeGreaterThanOrEqual(dates.day);
          }
          expect(atMost).toBeGreaterThanOrEqual(sum('delivered') / all - 1e-12);
          expect(atMost).toBeLessThanOrEqual(1 - sum('lost', 'returned') / all + 1e-12);
          const shares = facts.evenings.map(({ share }) => share);
          expect(shares).toEqual(shares.toSorted((a, b) => a - b));
          for (const share of shares) expect(share).toBeGreaterThanOrEqual(facts.aim - 1e-9);
          const { verdict, proposed, planned: moment = 0 } = facts.reveal;
          // What is needlessly late has an evening to take instead.
          if (verdict === 'late' && !facts.reveal.past)
            expect(moment - (proposed[0] as number)).toBeGreaterThanOrEqual(7 * MS_A_DAY);
          expect(said(facts)).not.toMatch(/NaN|undefined|Infinity/);
        },
      ),
      { numRuns: 400 },
    );
  });
});
