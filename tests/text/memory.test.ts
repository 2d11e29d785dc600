import { expect, test } from 'vitest';
import { memoryFor } from '../../src/text/memory.ts';
import { shortMemory } from '../support/short-memory.ts';

test('what one program remembers is nothing to another, nor to whoever asks the whole memory', () => {
  const whole = shortMemory();
  const [one, other] = [memoryFor('one', whole), memoryFor('other', whole)];
  one.keep('key', new Uint8Array([1]));
  expect(one.has('key')).toBe(true);
  expect(one.recall('key')).toEqual(new Uint8Array([1]));
  expect(other.has('key')).toBe(false);
  expect(other.recall('key')).toBeUndefined();
  expect(whole.has('key')).toBe(false);
  expect(memoryFor('one', whole).recall('key')).toEqual(new Uint8Array([1]));
});
