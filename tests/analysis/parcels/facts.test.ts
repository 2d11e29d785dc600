import { describe, expect, test } from 'vitest';
import { compareBy } from '../../../src/analysis/parcels/compare.ts';
import { forecastOf } from '../../../src/analysis/parcels/expected.ts';
import { type ParcelsFactsInput, parcelsFacts } from '../../../src/analysis/parcels/facts.ts';
import { histogramOf } from '../../../src/analysis/parcels/histogram.ts';
import { curveBy, curveOf, dayOfShare, endingsOf, stepAt } from '../../../src/analysis/parcels/incidence.ts';
import { logRank } from '../../../src/analysis/parcels/log-rank.ts';
import { overdueOf } from '../../../src/analysis/parcels/overdue.ts';
import { continued, horizonOf } from '../../../src/analysis/parcels/pooled.ts';
import { sendingsOf } from '../../../src/analysis/parcels/sendings.ts';
import type { ParcelCount, Parcels } from '../../../src/model/box.ts';
import { dateOfDay, dayOfDate } from '../../../src/text/days.ts';
import { arrivedBy, PLACEBO, parcel, SIX_MP, seeded, times } from './parcels.ts';

const hist = histogramOf;
const LEFT = dayOfDate('2026-03-03');

/** How long each of 200 parcels takes: two days and a wait of some four, the same for a seed. */
const waits = (seed: number, count = 200): readonly number[] => {
  const random = seeded(seed);
  return Array.from({ length: count }, () => 2 + Math.floor(-Math.log(1 - random()) * 3));
};
/** The parcels of one sending, read so many days after it left. */
const sent = (seed: number, age: number, left = LEFT): Parcels => ({
  file: 'parcels.csv',
  asOf: left + age,
  counts: waits(seed).map((days) =>
    days <= age
      ? parcel(days, 'delivered', { shipped: left })
      : parcel(age, 'travelling', { shipped: left, lines: [9] }),
  ),
});
const facts = (age: number, more: Partial<ParcelsFactsInput> = {}) =>
  parcelsFacts({
    cycle: '2026-03',
    parcels: sent(3, age),
    earlier: [],
    asOf: (LEFT + age) * 86_400_000 + 72_000_000,
    asOfDay: LEFT + age,
    timeZone: 'Europe/London',
    habit: { share: 0.9, weekdays: [4], time: '19:00' },
    planned: dayOfDate('2026-03-19') * 86_400_000 + 68_400_000,
    ...more,
  });
const earlier = [1, 2].map((seed) => ({
  cycle: `2026-0${seed}`,
  parcels: sent(seed, 40, LEFT - 30 * (3 - seed)),
}));
const truth = waits(3).toSorted((a, b) => a - b)[179] as number;

describe('the log-rank test', () => {
  test('of the remission data is the published one', () => {
    // Kleinbaum & Klein, Survival Analysis, chapter 2: observed 9 and 21, expected 19.25 and 10.75, χ² 16.79.
    const { observed, expected, z } = logRank(hist(times(SIX_MP)), hist(times(PLACEBO)));
    expect([observed, expected.toFixed(2), (z * z).toFixed(3)]).toEqual([9, '19.25', '16.793']);
    const other = logRank(hist(times(PLACEBO)), hist(times(SIX_MP)));
    expect(other.z).toBeCloseTo(-z, 12);
    expect(other.observed + observed).toBeCloseTo(other.expected + expected, 12);
  });
});

describe('a cycle that is too young', () => {
  test('is told from earlier ones, conditional on what has arrived', () => {
    const { outlook } = facts(4, { earlier });
    expect(outlook).toMatchObject({ source: 'both', horizon: 4, cycles: ['2026-01', '2026-02'] });
    expect(Math.abs((outlook.days as number) - truth)).toBeLessThanOrEqual(1);
    expect(outlook.dates.day).toBe(LEFT + (outlook.days as number));
    expect(outlook.oldEnough).toBe(dateOfDay(LEFT + (outlook.days as number)));
  });

  test('says nothing without earlier ones, and says it by itself once it is old enough', () => {
    expect(facts(4)).toMatchObject({
      outlook: { source: 'none', dates: {} },
      reveal: { verdict: 'unknown', proposed: [] },
    });
    expect(facts(4).overdue).toBeUndefined();
    const grown = facts(truth + 4, { earlier });
    expect(grown.outlook).toMatchObject({ source: 'own', cycles: [], days: truth });
    expect(grown.outlook.oldEnough).toBeUndefined();
  });

  test('that has not left is told from earlier ones alone, from the day it leaves', () => {
    const { parcels: _, ...none } = { parcels: undefined };
    const { outlook, reveal } = parcelsFacts({
      ...none,
      cycle: '2026-04',
      leaves: dayOfDate('2026-04-07'),
      planned: dayOfDate('2026-04-23') * 86_400_000 + 64_800_000,
      earlier,
      asOf: dayOfDate('2026-03-27') * 86_400_000,
      asOfDay: dayOfDate('2026-03-27'),
      timeZone: 'Europe/London',
      habit: { weekdays: [4] },
    });
    expect(outlook.source).toBe('earlier');
    expect(outlook.dates.day).toBe(dayOfDate('2026-04-07') + (outlook.days as number));
    expect(reveal.verdict).toBe('safe');
  });

  test('continues its own curve in the proportion of the pool’s', () => {
    const [ownDays, poolDays] = [hist(sent(3, 4).counts), hist(sent(1, 40).counts)];
    const [own, pool] = [curveOf(ownDays), curveOf(poolDays)];
    const both = curveBy(continued(ownDays, poolDays, 4), 40);
    expect(arrivedBy(both, 4)).toBe(arrivedBy(own, 4));
    const left = (1 - arrivedBy(pool, 9)) / (1 - arrivedBy(pool, 4));
    expect(1 - arrivedBy(both, 9)).toBeCloseTo((1 - arrivedBy(own, 4)) * left, 12);
    // Greenwood's sum of the pool's days from the fifth to the ninth, by hand.
    const greenwood = pool.steps
      .filter(({ day }) => day > 4 && day <= 9)
      .reduce((sum, { atRisk, delivered }) => sum + delivered / (atRisk * (atRisk - delivered)), 0);
    const [before, travelling] = [stepAt(own, 4)?.variance ?? 0, 1 - arrivedBy(own, 4)];
    expect(stepAt(both, 9)?.variance).toBeCloseTo(
      left ** 2 * before + travelling ** 2 * left ** 2 * greenwood,
      12,
    );
  });

  test('continues only what is on the way: what was lost of it never comes', () => {
    const own = hist([
      parcel(3, 'delivered', { count: 4 }),
      parcel(4, 'travelling', { count: 4 }),
      parcel(2, 'lost', { count: 2 }),
    ]);
    const pool = hist([parcel(3, 'delivered', { count: 50 }), parcel(8, 'delivered', { count: 50 })]);
    expect(arrivedBy(curveBy(continued(own, pool, 4), 8), 8)).toBeCloseTo(0.8, 12);
  });

  test('is judged by itself only for as long as half its parcels were watched', () => {
    const two: readonly ParcelCount[] = [
      parcel(9, 'travelling', { count: 3 }),
      parcel(3, 'travelling', { shipped: 6, count: 4 }),
    ];
    expect(horizonOf(two, 9)).toBe(3);
    expect(horizonOf(two.slice(0, 1), 9)).toBe(9);
    expect(horizonOf([], 9)).toBe(-1);
  });
});

describe('parcels that leave on several days', () => {
  const endings = endingsOf(
    hist([parcel(2, 'delivered', { count: 3 }), parcel(4, 'delivered', { count: 1 })]),
  );
  const two = [parcel(0, 'toLeave', { count: 3 }), parcel(0, 'toLeave', { shipped: 5, count: 1 })];

  test('arrive each by the curve from its own day on', () => {
    expect(sendingsOf(two)).toEqual([
      { shipped: 0, count: 3 },
      { shipped: 5, count: 1 },
    ]);
    // Of the first three, 3/4 by day 2 and all by day 4; of the one that left on day 5, 3/4 by day 7.
    const { by, dateOf } = forecastOf(two, endings);
    expect([1, 2, 4, 6, 7, 9].map((date) => by(date).share)).toEqual([0, 0.5625, 0.75, 0.75, 0.9375, 1]);
    expect(dateOf(0.9).day).toBe(7);
    // Level at exactly three in four from day 4 to day 7: the first day by whose end it has arrived.
    expect(dateOf(0.75).day).toBe(4);
  });

  test('have, where they leave together, the day of the curve', () => {
    const waiting = [parcel(0, 'toLeave', { shipped: LEFT, count: 200 })];
    const own = curveOf(hist(sent(3, 30).counts));
    const { dateOf } = forecastOf(waiting, endingsOf(hist(sent(3, 30).counts)));
    for (const share of [0.25, 0.5, 0.9, 0.97])
      expect(dateOf(share).day).toBe(LEFT + (dayOfShare(own, share) as number));
  });

  test('are not told of by the few that left first', () => {
    const counts = [
      parcel(3, 'delivered', { shipped: LEFT, count: 5 }),
      parcel(1, 'travelling', { shipped: LEFT + 7, count: 95 }),
    ];
    const { outlook, curve } = facts(8, { parcels: { file: 'parcels.csv', asOf: LEFT + 8, counts } });
    expect(dayOfShare(curve, 0.9)).toBe(3);
    expect(outlook).toMatchObject({ source: 'none', horizon: 1 });
    expect([outlook.days, outlook.dates]).toEqual([undefined, {}]);
  });
});

describe('a reveal gone by', () => {
  test('is judged by what had arrived, counted', () => {
    const { atReveal, reveal } = facts(40);
    const eve = dayOfDate('2026-03-18') - LEFT;
    expect(atReveal).toMatchObject({
      isCounted: true,
      share: waits(3).filter((days) => days <= eve).length / 200,
    });
    expect(reveal).toMatchObject({ verdict: 'late', proposed: [] });
    expect(facts(40, { planned: (LEFT + 4) * 86_400_000 + 68_400_000 })).toMatchObject({
      atReveal: { share: waits(3).filter((days) => days <= 3).length / 200 },
      reveal: { verdict: 'early' },
    });
  });
});

describe('what is overdue', () => {
  test('is on its way for longer than 99 in a hundred that arrived, and named by line', () => {
    const arrived = hist([...Array.from({ length: 99 }, () => parcel(5)), parcel(12)]);
    const counts = [
      parcel(5, 'travelling', { shipped: 8, lines: [2] }),
      parcel(6, 'travelling', { shipped: 7, lines: [31, 7], count: 2 }),
      parcel(13, 'travelling', { shipped: 0, lines: [5] }),
      parcel(40, 'lost', { shipped: -27 }),
    ];
    expect(overdueOf(counts, arrived)).toEqual({
      limit: 5,
      count: 3,
      days: [
        { shipped: 0, days: 13, count: 1, lines: [5] },
        { shipped: 7, days: 6, count: 2, lines: [7, 31] },
      ],
    });
  });

  test('is unknown while nothing has arrived', () => {
    expect(overdueOf([parcel(5, 'travelling')], [])).toBeUndefined();
  });
});

describe('carriers side by side', () => {
  const by = (carrier: string, counts: readonly ParcelCount[]) => counts.map((one) => ({ ...one, carrier }));
  const usual = by('Finch & Daughters', sent(3, 12).counts);

  test('are named where one of them is stuck, and not where both are as fast', () => {
    const stuck = by('Skerry Ferries', [parcel(4), parcel(12, 'travelling', { count: 11 })]);
    const groups = compareBy('carrier', [...usual, ...stuck], 11);
    expect(groups.map(({ name, pace, overdue }) => [name, pace, overdue])).toEqual([
      ['Finch & Daughters', 'usual', expect.any(Number)],
      ['Skerry Ferries', 'stuck', 11],
    ]);
    const even = compareBy('carrier', [...usual, ...by('Other', sent(4, 12).counts)], 11);
    expect(even.map(({ pace }) => pace)).toEqual(['usual', 'usual']);
  });

  test('are slow where all arrives, and later', () => {
    const slow = by(
      'Cart',
      Array.from({ length: 40 }, (_, i) => parcel(8 + (i % 4))),
    );
    expect(compareBy('carrier', [...usual, ...slow], 11).find(({ name }) => name === 'Cart')?.pace).toBe(
      'slow',
    );
  });

  test('are slow, not stuck, where the newest came on the day of reading', () => {
    const behind = [parcel(4), parcel(12, 'travelling', { count: 11 })];
    const paceOf = (more: readonly ParcelCount[]) =>
      compareBy('carrier', [...usual, ...by('Packet', more)], 14).find(({ name }) => name === 'Packet')?.pace;
    expect(paceOf(behind)).toBe('stuck');
    // One that came on the day of reading shows that they still move.
    expect(paceOf([...behind, parcel(12)])).toBe('slow');
  });

  test('are not judged by a handful, nor compared where there is one', () => {
    expect(
      compareBy('carrier', [...usual, ...by('Two', [parcel(12, 'travelling', { count: 4 })])], 11)[1]?.pace,
    ).toBe('usual');
    expect(compareBy('carrier', usual, 11)).toEqual([]);
  });
});
