/**
 * How much two texts are alike: Broder (1997), "On the resemblance and containment of documents". A shingle is a
 * run of `width` neighbouring words; the resemblance of two texts is the number of shingles they share divided by
 * the number that either has, from 0 to 1. Two texts too short for a shingle have none to share: 0.
 */

/** Words of a shingle do not hold this sign, so that no two shingles look the same. */
const BETWEEN = '\n';

/** All shingles in the order of the text, as often as they occur. */
export const shinglesOf = (words: readonly string[], width: number): readonly string[] =>
  Array.from({ length: Math.max(0, words.length - width + 1) }, (_, at) =>
    words.slice(at, at + width).join(BETWEEN),
  );

/** Shared by either, of two sets. */
export const jaccard = <T>(a: ReadonlySet<T>, b: ReadonlySet<T>): number => {
  const [fewer, more] = a.size < b.size ? [a, b] : [b, a];
  let shared = 0;
  for (const one of fewer) if (more.has(one)) shared += 1;
  return shared === 0 ? 0 : shared / (a.size + b.size - shared);
};

/** Each shingle with the number of its occurrence, so that saying a thing twice is not saying it once. */
const labelled = (shingles: readonly string[]): ReadonlySet<string> => {
  const seen = new Map<string, number>();
  return new Set(
    shingles.map((shingle) => {
      const count = (seen.get(shingle) ?? 0) + 1;
      seen.set(shingle, count);
      return `${count}${BETWEEN}${shingle}`;
    }),
  );
};

/** Resemblance of two texts as sets of shingles (Broder's second option). */
export const resemblance = (a: readonly string[], b: readonly string[], width: number): number =>
  jaccard(new Set(shinglesOf(a, width)), new Set(shinglesOf(b, width)));

/** Resemblance with shingles labelled by their occurrence (Broder's first option). */
export const labelledResemblance = (a: readonly string[], b: readonly string[], width: number): number =>
  jaccard(labelled(shinglesOf(a, width)), labelled(shinglesOf(b, width)));
