import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Grade } from '../../src/analysis/coverage/coverage.ts';
import type { Phrase } from '../../src/analysis/coverage/phrases/phrase.ts';
import {
  gradeWorth,
  ownWorth,
  placesOf,
  standingOf,
  strengthOf,
} from '../../src/analysis/coverage/standing/standing.ts';
import { isOwnZone, type Zone, zones, zoneWorth } from '../../src/analysis/coverage/text/zones.ts';
import { english } from './article.ts';

type Given = Pick<Phrase, 'origins' | 'weight' | 'words'>;
const given = (text: string, weight: number, ...origins: Phrase['origins']): Given => ({
  origins,
  weight,
  words: english.words(text),
});
const KIND = given('seed tin', 4, { from: 'kind' });
const BROADER = given('hand tool', 1, { from: 'kind' });
const ALSO = given('pricker', 0.5, { from: 'also', value: 'pricker' });
const HEAD = given('spoon', 2, { from: 'name', part: 'kind in the name' });
const NAME = given('olive spoon', 2, { from: 'name', part: 'kind in the name' });

const grade = fc.constantFrom<Exclude<Grade, 'absent'>>(
  'exact',
  'inflected',
  'same stem',
  'scattered',
  'head only',
);
const mention = fc.record({ zone: fc.constantFrom(...zones), grade });
const met = fc.record({
  phrase: fc.constantFrom(KIND, BROADER, ALSO, HEAD, NAME),
  mentions: fc.array(mention, { maxLength: 12 }),
});
const item = fc.record({ hasPicture: fc.boolean() });
const phrases = fc.array(met, { maxLength: 6 });
const exactIn = (...places: readonly Zone[]) => ({
  phrase: KIND,
  mentions: places.map((zone) => ({ zone, grade: 'exact' }) as const),
});
const pictured = { hasPicture: true };

describe('a standing', () => {
  test('lies between 0 and 1, and is what its places give of what the item’s own are worth', () => {
    fc.assert(
      fc.property(phrases, item, (some, one) => {
        const places = placesOf(some, one);
        expect(places.map(({ zone }) => zone)).toEqual(zones);
        const given = places.reduce((all, { gives }) => all + gives, 0);
        expect(standingOf(some, one)).toBeCloseTo(Math.min(1, given / ownWorth(one)), 12);
        expect(standingOf(some, one)).toBeGreaterThanOrEqual(0);
        for (const { gives, worth } of places) expect(gives).toBeLessThanOrEqual(worth);
      }),
    );
  });

  test('is never lowered by a mention more, nor by an honest other name', () => {
    fc.assert(
      fc.property(phrases, met, mention, fc.nat(5), item, (some, other, more, at, one) => {
        const before = standingOf(some, one) - 1e-12;
        expect(standingOf([...some, other], one)).toBeGreaterThanOrEqual(before);
        const again = some.map((each, i) =>
          i === at ? { ...each, mentions: [...each.mentions, more] } : each,
        );
        expect(standingOf(again, one)).toBeGreaterThanOrEqual(before);
      }),
    );
  });

  test('does not depend on the order of phrases and mentions', () => {
    fc.assert(
      fc.property(phrases, item, (some, one) => {
        const turned = some.map((each) => ({ ...each, mentions: each.mentions.toReversed() })).toReversed();
        expect(standingOf(turned, one)).toBeCloseTo(standingOf(some, one), 12);
      }),
    );
  });

  test('is the same however often and by however many of its names a thing is named in a place', () => {
    const once = standingOf([exactIn('section')], pictured);
    expect(
      standingOf([exactIn('section', 'section'), { ...exactIn('section'), phrase: ALSO }], pictured),
    ).toBe(once);
  });

  // By hand: .2 for the heading, .45 of .3 for the section, .1 for the data: .435 of 1; of .8 without a picture.
  test('comes out as it does with a pencil', () => {
    const some = [
      exactIn('heading', 'structured data'),
      { phrase: KIND, mentions: [{ zone: 'section', grade: 'scattered' } as const] },
    ];
    expect(standingOf(some, pictured)).toBeCloseTo(0.435, 12);
    expect(standingOf(some, { hasPicture: false })).toBeCloseTo(0.435 / 0.8, 12);
  });

  test('does not ask for the title, the opening, an address or a picture that is not there', () => {
    const own = exactIn('summary', 'heading', 'section', 'structured data');
    expect(standingOf([own], { hasPicture: false })).toBe(1);
    expect(standingOf([own], pictured)).toBeCloseTo(0.8, 12);
    expect(standingOf([exactIn('title', 'opening', 'address')], pictured)).toBeGreaterThan(0.2);
  });

  test('reaches the usual aim by the thing’s own section, heading, record and picture', () => {
    expect(
      standingOf([exactIn('section', 'heading', 'structured data', 'picture text')], pictured),
    ).toBeGreaterThan(0.7);
    expect(standingOf([exactIn('heading', 'structured data', 'picture text')], pictured)).toBeLessThan(0.7);
  });
});

describe('what places, grades and phrases are worth', () => {
  test('is 1 over the places that an item with a picture has for itself', () => {
    expect(ownWorth(pictured)).toBeCloseTo(1, 12);
    expect(zones.filter(isOwnZone).length).toBe(5);
    for (const zone of zones) if (!isOwnZone(zone)) expect(zoneWorth[zone]).toBeLessThanOrEqual(0.1);
  });

  test('falls from exact to absent', () => {
    const worths = (['exact', 'inflected', 'same stem', 'scattered', 'head only', 'absent'] as const).map(
      (one) => gradeWorth[one],
    );
    expect([...worths].sort((a, b) => b - a)).toEqual(worths);
    expect(new Set(worths).size).toBe(worths.length);
  });

  test('is half for a kind wider than the thing, and whole for its own kind and for any other name', () => {
    expect([KIND, BROADER, ALSO, HEAD, NAME].map(strengthOf)).toEqual([1, 0.5, 1, 0.5, 1]);
    expect(strengthOf(given('spoon', 4, { from: 'kind' }))).toBe(1);
  });
});
