import { describe, expect, test } from 'vitest';
import { readItemList } from '../../src/content/item-list/read-item-list.ts';
import * as cases from './item-list-cases.ts';

describe.each(Object.entries(cases))('lists %s', (_, list) => {
  test.each(list)('$what', ({ text, names, values = {}, passed = [], notes = [] }) => {
    const read = readItemList(text, { currency: 'GBP' });
    expect(read.things.map(({ name }) => name)).toEqual(names);
    for (const [name, wanted] of Object.entries(values))
      expect(read.things.find((thing) => thing.name === name)?.values).toMatchObject(wanted);
    expect(read.passed.map(({ why }) => why)).toEqual(passed);
    const kept = read.things.flatMap((thing) => thing.notes.map((note) => note.text));
    expect(kept).toEqual(expect.arrayContaining([...notes]));
  });
});

test('a maker that stands in the first of several rows is named where it may go on, and never filled in', () => {
  const text =
    'Maker,Soap,Price\nSuds & Sons,Oat bar,£5\n,Charcoal bar,£5\nPebble Bay,Bath bomb,£8\n,Soap dish,£4\n';
  const { gaps, things } = readItemList(text, { currency: 'GBP' });
  expect(gaps).toEqual([{ title: 'Maker', lines: [3, 5] }]);
  expect(things.map(({ values }) => values.brand)).toEqual([
    'Suds & Sons',
    undefined,
    'Pebble Bay',
    undefined,
  ]);
});
