import { describe, expect, test } from 'vitest';
import { paceOf } from '../../../src/analysis/parcels/pace.ts';
import type { ParcelCount } from '../../../src/model/box.ts';
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
