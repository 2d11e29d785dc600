import { expect, test } from 'vitest';
import { percent } from '../../src/text/counting-words.ts';

test.each([
  [0.911, 1, '91%'],
  [0.915, 1, '92%'],
  [1, 1, '100%'],
  [0.999, 1, 'over 99%'],
  [0, 1, '0%'],
  [0.001, 1, 'under 1%'],
  [0.899, 0.9, '89%'],
  [0.9, 0.9, '90%'],
  [0.894, 0.9, '89%'],
])('a share of %f, %f being wanted, is %s', (share, wanted, words) => {
  expect(percent(share, wanted)).toBe(words);
});
