import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Grade } from '../../src/analysis/coverage/coverage.ts';
import {
  FIRST_MENTION,
  gradeWorth,
  meanStanding,
  partsOf,
  standingOf,
  zoneShare,
} from '../../src/analysis/coverage/standing/standing.ts';
import { zones, zoneWorth } from '../../src/analysis/coverage/text/zones.ts';

const grade = fc.constantFrom<Exclude<Grade, 'absent'>>(
  'exact',
  'inflected',
  'same stem',
  'scattered',
  'head only',
);
const mention = fc.record({ zone: fc.constantFrom(...zones), grade });
const mentions = fc.array(mention, { maxLength: 60 });

describe('a standing', () => {
  test('lies between 0 and 1', () => {
    fc.assert(
      fc.property(mentions, (some) => {
        const standing = standingOf(some);
        expect(standing).toBeGreaterThanOrEqual(0);
        expect(standing).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('is never lowered by a mention more', () => {
    fc.assert(
      fc.property(mentions, mention, (some, one) => {
        expect(standingOf([...some, one])).toBeGreaterThanOrEqual(standingOf(some) - 1e-12);
      }),
    );
  });

  test('does not depend on the order of mentions', () => {
    fc.assert(
      fc.property(mentions, (some) => {
        expect(standingOf([...some].reverse())).toBeCloseTo(standingOf(some), 12);
      }),
    );
  });

  test('is the sum of what its parts give, at most 1, and no part gives more than its zone is worth', () => {
    fc.assert(
      fc.property(mentions, (some) => {
        const parts = partsOf(some);
        expect(parts.map(({ zone }) => zone)).toEqual(zones);
        const sum = parts.reduce((all, { gives }) => all + gives, 0);
        expect(standingOf(some)).toBeCloseTo(Math.min(1, sum), 12);
        for (const { gives, worth } of parts) expect(gives).toBeLessThanOrEqual(worth);
      }),
    );
  });

  test('is higher for one clear mention in two places than for ten in the better of them', () => {
    const ten = Array.from({ length: 10 }, () => ({ zone: 'section', grade: 'exact' }) as const);
    const two = [
      { zone: 'section', grade: 'exact' },
      { zone: 'picture text', grade: 'exact' },
    ] as const;
    expect(standingOf(two)).toBeGreaterThan(standingOf(ten));
  });

  // By hand: 7/8 of .2, and 7/8 of .25 with an eighth of that again.
  test('comes out as it does with a pencil', () => {
    const some = [
      { zone: 'heading', grade: 'exact' },
      { zone: 'section', grade: 'exact' },
      { zone: 'section', grade: 'exact' },
    ] as const;
    expect(standingOf(some)).toBeCloseTo(0.175 + 0.21875 + 0.02734375, 10);
  });

  test('reaches the usual aim with one clear mention where the thing itself is told', () => {
    const places = ['heading', 'section', 'body', 'picture text', 'link text', 'structured data'] as const;
    expect(standingOf(places.map((zone) => ({ zone, grade: 'exact' }) as const))).toBeGreaterThan(0.7);
  });

  test('is full without title and address', () => {
    const places = zones.filter((zone) => zone !== 'title' && zone !== 'address');
    expect(standingOf(places.map((zone) => ({ zone, grade: 'exact' }) as const))).toBe(1);
  });
});

describe('what places and grades are worth', () => {
  test('is more than a phrase can reach over all places, and never that in one', () => {
    const worths = Object.values(zoneWorth);
    expect(worths.reduce((sum, worth) => sum + worth, 0)).toBeGreaterThan(1);
    expect(Math.max(...worths)).toBeLessThan(0.5);
  });

  test('falls from exact to absent', () => {
    const worths = (['exact', 'inflected', 'same stem', 'scattered', 'head only', 'absent'] as const).map(
      (one) => gradeWorth[one],
    );
    expect([...worths].sort((a, b) => b - a)).toEqual(worths);
    expect(new Set(worths).size).toBe(worths.length);
  });

  test('comes nearer to the whole zone with each mention and never passes it', () => {
    const shares = [1, 2, 3, 10].map((count) => zoneShare(Array.from({ length: count }, () => 'exact')));
    expect(shares[0]).toBe(FIRST_MENTION);
    for (let i = 1; i < shares.length; i++) expect(shares[i]).toBeGreaterThan(shares[i - 1] as number);
    expect(shares[3]).toBeLessThanOrEqual(1);
  });
});

describe('an item’s standing', () => {
  test('is the mean of its phrases’ by their weights', () => {
    expect(
      meanStanding([
        { weight: 4, standing: 0.9 },
        { weight: 1, standing: 0.4 },
      ]),
    ).toBeCloseTo(0.8, 12);
  });

  test('is 0 where it has no phrases', () => {
    expect(meanStanding([])).toBe(0);
  });
});
