import { expect, test } from 'vitest';
import { defined, exact } from '../../src/text/defined.ts';
import { itemAt } from '../../src/text/item-at.ts';

interface Tin {
  readonly name: string;
  readonly lid?: string;
  readonly weight?: number;
}

test('what is undefined is left out, and what is merely empty stays', () => {
  expect(Object.keys(defined({ name: '', lid: undefined, weight: 0, full: false, made: null }))).toEqual([
    'name',
    'weight',
    'full',
    'made',
  ]);
  expect(Object.keys(exact<Tin>({ name: 'Tin', lid: undefined, weight: 0 }))).toEqual(['name', 'weight']);
});

test('a named type asks for all its keys and no others', () => {
  // @ts-expect-error A key that may be absent is written all the same.
  const forgotten: Tin = exact<Tin>({ name: 'Tin', lid: undefined });
  // @ts-expect-error One that the type does not know is not.
  const misspelt: Tin = exact<Tin>({ name: 'Tin', lid: undefined, weight: undefined, wieght: 3 });
  // @ts-expect-error One that must be there is not undefined.
  const nameless: Tin = exact<Tin>({ name: undefined, lid: undefined, weight: undefined });
  expect([forgotten, misspelt, nameless].map((tin) => Object.keys(tin))).toEqual([
    ['name'],
    ['name', 'wieght'],
    [],
  ]);
});

test('an item is given where there is one, and asked for in vain where not', () => {
  expect([itemAt(['a', 'b'], 1), itemAt(new Uint8Array([0]), 0)]).toEqual(['b', 0]);
  expect(() => itemAt(['a'], 1)).toThrow('Expected an item at 1 of a list of 1');
});
