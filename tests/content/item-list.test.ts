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
