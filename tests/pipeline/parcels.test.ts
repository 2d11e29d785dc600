import { describe, expect, test } from 'vitest';
import type { Parcels } from '../../src/model/box.ts';
import { factsByCycle, factsOfCycle, type ParcelsByCycle } from '../../src/pipeline/parcels.ts';
import { dayOfDate } from '../../src/text/days.ts';
import { parcel } from '../analysis/parcels/parcels.ts';
import { box, cycle } from '../support/box.ts';

const cycles = [
  cycle({ id: '2026-01', shipped: '2026-01-03', reveal: Date.UTC(2026, 0, 19, 19) }),
  cycle({ id: '2026-02', shipped: '2026-02-03', reveal: Date.UTC(2026, 1, 19, 19) }),
  cycle({ id: '2026-03', shipped: '2026-03-03' }),
];
const asOf = Date.UTC(2026, 2, 5, 12);

/** Ten parcels of a sending, of which those have arrived that took no longer than it is old. */
const list = (date: string): Parcels => {
  const shipped = dayOfDate(date);
  const age = dayOfDate('2026-03-05') - shipped;
  return {
    file: `${date}.csv`,
    asOf: shipped + age,
    counts: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((days) => ({
      ...(days <= age ? parcel(days) : parcel(age, 'travelling')),
      shipped,
    })),
  };
};
const parcels: ParcelsByCycle = new Map(
  cycles.map(({ id, shipped }) => [id, { value: list(shipped), diagnostics: [] }]),
);

describe('a cycle that is too young to tell by itself', () => {
  test('is told by all earlier cycles, and neither by itself nor by a later one', () => {
    const facts = (id: string) =>
      factsOfCycle({ box: box({ cycles }), asOf, parcels }, cycles.find((one) => one.id === id) ?? cycle());
    expect(facts('2026-03').outlook).toMatchObject({ source: 'both', cycles: ['2026-01', '2026-02'] });
  });

  test('has nothing to go by where it is the first', () => {
    const only = cycles.slice(2);
    const { outlook } = factsOfCycle({ box: box({ cycles: only }), asOf, parcels }, only[0] ?? cycle());
    expect(outlook).toMatchObject({ source: 'none', cycles: [] });
  });
});

test('a cycle without a list has facts while it is sealed and an earlier one has a list', () => {
  const lists = (...ids: readonly string[]): ParcelsByCycle =>
    new Map([...parcels].filter(([id]) => ids.includes(id)));
  const known = (some: ParcelsByCycle): readonly string[] => [
    ...factsByCycle({ box: box({ cycles }), asOf, parcels: some }).keys(),
  ];
  expect(known(lists('2026-01'))).toEqual(['2026-01', '2026-03']);
  expect(known(lists('2026-03'))).toEqual(['2026-03']);
  expect(known(lists())).toEqual([]);
});
