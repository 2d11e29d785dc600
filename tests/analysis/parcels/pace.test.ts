import { describe, expect, test } from 'vitest';
import { compareBy } from '../../../src/analysis/parcels/compare.ts';
import { inDeliveryDays } from '../../../src/analysis/parcels/delivery-days.ts';
import { paceOf } from '../../../src/analysis/parcels/pace.ts';
import type { ParcelCount } from '../../../src/model/box.ts';
import { weekdayOf } from '../../../src/text/days.ts';
import { parcel, seeded } from './parcels.ts';

/** A list of parcels that left over three days, as it is read on a day. `takes` gives each one's days; infinite never comes. */
type Sent = readonly { readonly shipped: number; readonly takes: number }[];

const sent = (count: number, random: () => number, takes: () => number): Sent =>
  Array.from({ length: count }, () => ({ shipped: Math.floor(random() * 3), takes: takes() }));

const readOn = (day: number, parcels: Sent): readonly ParcelCount[] =>
  parcels
    .filter(({ shipped }) => shipped <= day)
    .map(({ shipped, takes }) =>
      shipped + takes <= day
        ? parcel(takes, 'delivered', { shipped })
        : parcel(day - shipped, 'travelling', { shipped }),
    );

/** Two days and an exponential wait. */
const waiting = (random: () => number, mean: number) => (): number =>
  2 + Math.floor(-Math.log(1 - random()) * mean);

describe('carriers that are alike', () => {
  test('are called slow or stuck in fewer than one in 200 lists, each read on all of its days', () => {
    const random = seeded(11);
    const lists = 400;
    let called = 0;
    for (let list = 0; list < lists; list += 1) {
      const carriers = [60, 40, 20].map((count) => sent(count, random, waiting(random, 2.5)));
      let any = false;
      for (let day = 3; day <= 16; day += 1) {
        const read = carriers.map((one) => readOn(day, one));
        for (const [at, own] of read.entries())
          any ||= paceOf(own, read.filter((_, other) => other !== at).flat(), 3) !== 'usual';
      }
      if (any) called += 1;
    }
    expect(called / lists).toBeLessThan(1 / 200);
  });
});

/** The day on which so many days of delivery have gone by: Monday to Saturday, or to Friday. */
const afterDays = (from: number, days: number, week: number): number => {
  let day = from;
  for (let gone = 0; gone < days; ) {
    day += 1;
    if (weekdayOf(day) <= week) gone += 1;
  }
  return day;
};

describe.each([5, 6])('carriers that are alike and bring nothing after day %i of a week', (week) => {
  test('are called slow or stuck in fewer than one in 200 lists, each read on all of its days', () => {
    const random = seeded(20 + week);
    const lists = 400;
    let called = 0;
    for (let list = 0; list < lists; list += 1) {
      // Each carrier fetches on a day of its own, so that a weekend falls on other days of its wait.
      const parcels = [60, 40, 20].flatMap((count, at) => {
        const shipped = 4 + Math.floor(random() * 4);
        return Array.from({ length: count }, () => ({
          ...{ carrier: `Carrier ${at}`, shipped },
          arrives: afterDays(shipped, waiting(random, 2)(), week),
        }));
      });
      let any = false;
      for (let day = 8; day <= 26; day += 1) {
        const counts = parcels.flatMap(({ shipped, arrives, carrier }): readonly ParcelCount[] =>
          arrives <= day
            ? [parcel(arrives - shipped, 'delivered', { shipped, carrier })]
            : [parcel(day - shipped, 'travelling', { shipped, carrier })],
        );
        any ||= compareBy('carrier', counts, undefined).some(({ pace }) => pace !== 'usual');
      }
      if (any) called += 1;
    }
    expect(called / lists).toBeLessThan(1 / 200);
  });
});

test('days of delivery leave out a weekend on which nothing comes, and no day on which something does', () => {
  // 1970-01-05 was a Monday: day 4. Arrivals from Tuesday to Friday, the newest on the Monday after.
  const week = [5, 6, 7, 8, 11].map((day) => parcel(day - 4, 'delivered', { shipped: 4, count: 10 }));
  expect(inDeliveryDays(week).map(({ days }) => days)).toEqual([1, 2, 3, 4, 5]);
  const saturdays = [...week, parcel(5, 'delivered', { shipped: 4, count: 10 })];
  expect(inDeliveryDays(saturdays).map(({ days }) => days)).toEqual([1, 2, 3, 4, 6, 5]);
  // What has waited since Friday has waited no day on Sunday.
  expect(inDeliveryDays([...week, parcel(2, 'travelling', { shipped: 8 })]).at(-1)?.days).toBe(0);
});

describe('a carrier that is behind', () => {
  test('is found slow in nine of ten lists, where 60 parcels take three days more on the average', () => {
    const random = seeded(12);
    let slow = 0;
    for (let list = 0; list < 200; list += 1) {
      const own = readOn(12, sent(60, random, waiting(random, 5.5)));
      const rest = readOn(12, sent(120, random, waiting(random, 2.5)));
      if (paceOf(own, rest, 3) === 'slow') slow += 1;
    }
    expect(slow / 200).toBeGreaterThan(0.9);
  });

  test('is found stuck in nine of ten lists within six days of its last arrival, and never on the day itself', () => {
    const random = seeded(13);
    let stuck = 0;
    for (let list = 0; list < 200; list += 1) {
      const rest = sent(120, random, waiting(random, 2.5));
      // Nothing of it moves from the fifth day on.
      const own = sent(40, random, waiting(random, 2.5)).map((one) =>
        one.shipped + one.takes > 4 ? { ...one, takes: Number.POSITIVE_INFINITY } : one,
      );
      const newest = Math.max(
        0,
        ...own.filter(({ takes }) => Number.isFinite(takes)).map(({ shipped, takes }) => shipped + takes),
      );
      if (paceOf(readOn(newest + 6, own), readOn(newest + 6, rest), 3) === 'stuck') stuck += 1;
      expect(paceOf(readOn(newest, own), readOn(newest, rest), 3)).not.toBe('stuck');
    }
    expect(stuck / 200).toBeGreaterThan(0.9);
  });

  test('is slow and not stuck for as long as it brings something every day', () => {
    const random = seeded(14);
    const rest = readOn(14, sent(200, random, waiting(random, 2)));
    const own = Array.from({ length: 60 }, (_, at) => ({ shipped: 0, takes: 3 + (at % 24) }));
    expect(paceOf(readOn(14, own), rest, 3)).toBe('slow');
  });
});
