import { expect, test } from 'vitest';
import { streakOf } from '../../../src/channels/back-room-index/streaks.ts';
import type { Piece } from '../../../src/model/box.ts';
import { cycle } from '../../support/box.ts';

/** Cycles from January 2026 on, each revealed on the 19th: `x` has a letter, `.` has none. As of 27 March. */
const streak = (letters: string) =>
  streakOf(
    [...letters].map((sign, i) =>
      cycle({
        id: `2026-0${i + 1}`,
        reveal: Date.UTC(2026, i, 19, 19),
        ...(sign === 'x' && { made: { letter: `2026-0${i + 1}-20` } }),
      }),
    ),
    'letter' satisfies Piece,
    Date.UTC(2026, 2, 27),
  );

test.each([
  ['', 0, false],
  ['...', 0, false],
  ['xxx', 3, true],
  ['.xx', 2, true],
  ['xx.', 2, false],
  ['x..', 0, false],
  ['x.x', 1, true],
  ['xxx.', 3, true],
  ['xxxx', 4, true],
  ['xx..', 2, false],
])('of “%s”, the third shown last, %i are in a row', (letters, length, upToDate) => {
  expect(streak(letters)).toEqual({ length, upToDate });
});
