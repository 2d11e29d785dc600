import { describe, expect, test } from 'vitest';
import { browserFor } from '../../src/wording/en/browser.ts';

const browser = browserFor('en-GB');

describe('what the search says of an answer', () => {
  const read = [{ typed: 'secaturs', as: ['secateurs', 'secretary'] }];
  test.each([
    [browser.nothing(1), 'Nothing found among 1 piece.'],
    [browser.found(2, 2, 60, 1, []), '2 of 60 pieces.'],
    [browser.found(11, 2, 60, 2, []), '2 of 60 pieces, and 9 with some of the words.'],
    [browser.found(9, 0, 60, 2, []), '9 of 60 pieces with some of the words, none with all.'],
    [browser.found(1, 1, 60, 1, read), '1 of 60 pieces. “secaturs” read as “secateurs” or “secretary”.'],
  ])('is %j', (said, expected) => {
    expect(said).toBe(expected);
  });
});
