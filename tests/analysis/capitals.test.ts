import { expect, test } from 'vitest';
import { capitalsIn, withCapitals } from '../../src/analysis/coverage/advice/capitals.ts';

test.each([
  ['danish dough whisk', ['Danish dough whisk', 'dough whisk'], 'Danish dough whisk'],
  // The capital of a title is none of the word's.
  ['harbor sock pattern', ['Harbor Sock pattern card', 'sock pattern'], 'Harbor sock pattern'],
])('“%s” has the capitals of its words alone', (typed, texts, written) => {
  expect(withCapitals(typed, capitalsIn(texts))).toBe(written);
});
