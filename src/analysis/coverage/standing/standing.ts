/** How well an article carries a thing, 0 to 1, as a sum that anybody can check with a pencil. */
import type { Grade, Mention, PlaceStanding } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import { isOwnZone, type Zone, zones, zoneWorth } from '../text/zones.ts';

/**
 * What a mention of each grade is worth beside an exact one. Common practice, no source: singular for plural is
 * all but the phrase itself; a word of the same stem is often another thing; words that merely stand near each other
 * say it to a patient reader; the head alone says what it is and not which.
 */
export const gradeWorth: Readonly<Record<Grade, number>> = {
  exact: 1,
  inflected: 0.95,
  'same stem': 0.6,
  scattered: 0.45,
  'head only': 0.2,
  absent: 0,
};

/** Phrases of less weight, where they come from the kind or the name, are wider than the thing or half of its name. */
const NAMES_IT = 2;

/**
 * How well a phrase by itself names its thing: 1, or half for a kind that names a shelf ("hand tool" of a dibber), for
 * what is but a part of the name, and for its one last word where the kind is not that word ("spoon" of an olive wood
 * spoon). Other names and what was typed name it as well as its kind does. Common practice, no source.
 */
export const strengthOf = ({
  origins,
  weight,
  words,
}: Pick<Phrase, 'origins' | 'weight' | 'words'>): number => {
  const given = new Set(origins.map(({ from }) => from));
  if (!(given.has('kind') || given.has('name')) || given.has('also') || given.has('search')) return 1;
  return weight >= NAMES_IT && (given.has('kind') || words.length > 1) ? 1 : 0.5;
};

/** A phrase of an item, and where it is met. */
interface Met {
  readonly phrase: Pick<Phrase, 'origins' | 'weight' | 'words'>;
  readonly mentions: readonly Pick<Mention, 'zone' | 'grade'>[];
}

/** What places an item has. */
interface Pictured {
  /** Whether it has a picture: without one it has no picture text either. */
  readonly hasPicture: boolean;
}

/** The places that are asked of an item. */
const ownZonesOf = ({ hasPicture }: Pictured): readonly Zone[] =>
  zones.filter((zone) => isOwnZone(zone) && (hasPicture || zone !== 'picture text'));

/** What the places are worth that are asked of an item. */
export const ownWorth = (item: Pictured): number =>
  ownZonesOf(item).reduce((sum, zone) => sum + zoneWorth[zone], 0);

/**
 * What each place gives an item, one for each place in their order: its worth times that of the best match there. The
 * thing is asked for, not each of its phrases: who names it well by one of them needs no other there.
 */
export const placesOf = (phrases: readonly Met[], item: Pictured): readonly PlaceStanding[] => {
  const own = ownZonesOf(item);
  const best = new Map<Zone, { phrase: number; grade: Grade; gives: number }>();
  const counts = new Map<Zone, number>();
  for (const [phrase, { phrase: given, mentions }] of phrases.entries()) {
    const strength = strengthOf(given);
    for (const { zone, grade } of mentions) {
      counts.set(zone, (counts.get(zone) ?? 0) + 1);
      const gives = zoneWorth[zone] * strength * gradeWorth[grade];
      if (gives > (best.get(zone)?.gives ?? 0)) best.set(zone, { phrase, grade, gives });
    }
  }
  return zones.map((zone): PlaceStanding => {
    const found = best.get(zone);
    return {
      zone,
      worth: zoneWorth[zone],
      isOwn: own.includes(zone),
      mentions: counts.get(zone) ?? 0,
      grade: found?.grade ?? 'absent',
      gives: found?.gives ?? 0,
      ...(found && { phrase: found.phrase }),
    };
  });
};

/**
 * An item's standing: what all places give of what its own are worth, at most 1. Places that are not its own (the title
 * of a box of five things, the opening) add to it and are never asked for.
 */
export const standingOf = (phrases: readonly Met[], item: Pictured): number => {
  const given = placesOf(phrases, item).reduce((sum, { gives }) => sum + gives, 0);
  return Math.min(1, given / ownWorth(item));
};
