import { describe, expect, test } from 'vitest';
import { forecastOf } from '../../../src/analysis/parcels/expected.ts';
import { histogramOf } from '../../../src/analysis/parcels/histogram.ts';
import { endingsOf } from '../../../src/analysis/parcels/incidence.ts';
import type { ParcelCount } from '../../../src/model/box.ts';
import { parcel, seeded } from './parcels.ts';

/** What becomes of a parcel: the day it leaves, how long it takes, and whether it never comes. */
type Sent = readonly { readonly shipped: number; readonly takes: number }[];
const sent = (count: number, random: () => number, over = 1): Sent =>
  Array.from({ length: count }, () => ({
    shipped: Math.floor(random() * over),
    takes: random() < 0.03 ? Number.POSITIVE_INFINITY : 2 + Math.floor(-Math.log(1 - random()) * 3),
  }));
const readOn = (day: number, parcels: Sent): readonly ParcelCount[] =>
  parcels.map(({ shipped, takes }) =>
    shipped > day
      ? parcel(0, 'toLeave', { shipped })
      : shipped + takes <= day
        ? parcel(takes, 'delivered', { shipped })
        : parcel(day - shipped, 'travelling', { shipped }),
  );
const shareBy = (day: number, parcels: Sent): number =>
  parcels.filter(({ shipped, takes }) => shipped + takes <= day).length / parcels.length;

describe('the limits of what is expected', () => {
  test.each([
    [20, 60],
    [100, 60],
    [200, 400],
  ])('hold for %i parcels told by %i earlier ones, in about nineteen of twenty lists', (count, earlier) => {
    const random = seeded(count + earlier);
    const lists = 600;
    let [held, apart] = [0, 0];
    for (let list = 0; list < lists; list += 1) {
      const own = sent(count, random, 4);
      const pool = endingsOf(histogramOf(readOn(60, sent(earlier, random))));
      const read = 3 + (list % 5);
      const by = read + 1 + (list % 4);
      const { share, lower = share, upper = share } = forecastOf(readOn(read, own), pool).by(by);
      const truth = shareBy(by, own);
      if (truth >= lower - 1e-9 && truth <= upper + 1e-9) held += 1;
      apart += share - truth;
    }
    expect(held / lists).toBeGreaterThan(0.93);
    // Limits that hold always would say nothing.
    expect(held / lists).toBeLessThan(0.99);
    expect(Math.abs(apart / lists)).toBeLessThan(0.01);
  });
});

test('what has waited is expected as those arrived that waited as long, by hand', () => {
  // Of ten, four arrive on day 2, three on day 5 and two on day 9; one is lost by day 20.
  const endings = endingsOf(
    histogramOf([
      parcel(2, 'delivered', { count: 4 }),
      parcel(5, 'delivered', { count: 3 }),
      parcel(9, 'delivered', { count: 2 }),
      parcel(20, 'lost'),
    ]),
  );
  const counts = [
    parcel(3, 'delivered', { count: 6 }),
    parcel(6, 'travelling', { count: 3 }),
    parcel(6, 'lost'),
  ];
  // After six days three in ten waited, of which two came.
  expect(forecastOf(counts, endings).by(9).share).toBeCloseTo((6 + 3 * (2 / 3)) / 10, 12);
  expect(forecastOf(counts, endings).by(8).share).toBeCloseTo(0.6, 12);
  expect(forecastOf(counts, endings).dateOf(0.8).day).toBe(9);
  expect(forecastOf(counts, endings).dateOf(0.81).day).toBeUndefined();
});

test('what has arrived is counted, and has no limits', () => {
  const { by, dateOf } = forecastOf([parcel(3, 'delivered', { count: 9 }), parcel(12)], []);
  expect([by(2), by(3), by(11), by(12)]).toEqual([
    { share: 0 },
    { share: 0.9 },
    { share: 0.9 },
    { share: 1 },
  ]);
  expect(dateOf(0.9)).toEqual({ day: 3, lower: 3, upper: 3 });
});

test('a handful that all arrived does not make it certain that as many others will', () => {
  const few = endingsOf(histogramOf([parcel(3, 'delivered', { count: 5 })]));
  const { share, lower, upper } = forecastOf([parcel(0, 'toLeave', { count: 20 })], few).by(3);
  expect([share, upper]).toEqual([1, 1]);
  // Jeffreys' 95 % limits of five of five begin at .62, the 2.5 % point of Beta(5.5, 0.5); from memory.
  expect(lower).toBeGreaterThan(0.5);
  expect(lower).toBeLessThan(0.85);
});
