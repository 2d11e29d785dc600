/** How well an article carries a phrase, 0 to 1, as a sum that anybody can check with a pencil. */
import type { Grade, Mention, StandingPart } from '../coverage.ts';
import { type Zone, zones, zoneWorth } from '../text/zones.ts';

/**
 * What a mention of each grade is worth beside an exact one. Common practice, no source: singular for plural is
 * all but the phrase itself; a word of the same stem is often another thing; words that merely stand in one
 * sentence say it to a patient reader; the head alone says what it is and not which.
 */
export const gradeWorth: Readonly<Record<Grade, number>> = {
  exact: 1,
  inflected: 0.95,
  'same stem': 0.6,
  scattered: 0.45,
  'head only': 0.2,
  absent: 0,
};

/**
 * What the first mention in a place gives of what the place is worth; each one after it gives an eighth of the
 * one before. One clear mention in each good place so brings more than any number in one.
 */
export const FIRST_MENTION = 7 / 8;
const NEXT_MENTION = 1 - FIRST_MENTION;

/** Share of a place's worth of mentions that are worth so much each, 0 to 1. */
const shareOf = (worths: number[]): number => {
  worths.sort((a, b) => b - a);
  let sum = 0;
  for (const [i, worth] of worths.entries()) sum += worth * FIRST_MENTION * NEXT_MENTION ** i;
  return sum;
};

/** Share of a place's worth, 0 to 1: mentions by grade, the best first. One mention more never lowers it. */
export const zoneShare = (grades: readonly Grade[]): number =>
  shareOf(grades.map((grade) => gradeWorth[grade]));

const bestOf = (grades: readonly Grade[]): Grade =>
  grades.reduce<Grade>((best, grade) => (gradeWorth[grade] > gradeWorth[best] ? grade : best), 'absent');

/** What each place gives, one for each place in their order. */
export const partsOf = (mentions: readonly Pick<Mention, 'zone' | 'grade'>[]): readonly StandingPart[] =>
  zones.map((zone) => {
    const grades = mentions.filter((mention) => mention.zone === zone).map(({ grade }) => grade);
    const worth = zoneWorth[zone];
    return {
      zone,
      worth,
      gives: worth * zoneShare(grades),
      mentions: grades.length,
      grade: bestOf(grades),
    };
  });

/** The most a phrase can stand at: what its places give beyond it is not needed. */
const FULL_STANDING = 1;

/** A phrase's standing: the sum of what its places give, at most 1. What `partsOf` gives in full is summed here, because it is asked for every change that is tried. */
export const standingOf = (mentions: readonly Pick<Mention, 'zone' | 'grade'>[]): number => {
  const worths = new Map<Zone, number[]>();
  for (const { zone, grade } of mentions) {
    const here = worths.get(zone);
    if (here) here.push(gradeWorth[grade]);
    else worths.set(zone, [gradeWorth[grade]]);
  }
  let sum = 0;
  // In the order of the places, since sums of fractions depend on it.
  for (const zone of zones) {
    const here = worths.get(zone);
    if (here) sum += zoneWorth[zone] * shareOf(here);
  }
  return Math.min(FULL_STANDING, sum);
};

/** An item's standing: the mean of its phrases', each by its weight; 0 for an item without phrases. */
export const meanStanding = (
  phrases: readonly { readonly weight: number; readonly standing: number }[],
): number => {
  const weight = phrases.reduce((sum, phrase) => sum + phrase.weight, 0);
  if (weight === 0) return 0;
  return phrases.reduce((sum, phrase) => sum + phrase.weight * phrase.standing, 0) / weight;
};
