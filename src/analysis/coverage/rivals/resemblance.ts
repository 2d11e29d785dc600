/**
 * How much two texts are alike: Broder (1997), "On the resemblance and containment of documents". A shingle is a run
 * of neighbouring words; the resemblance of two texts is the number of different shingles they share divided by the
 * number that either has, from 0 to 1. Two texts too short for a shingle have none to share: 0. `others` has each
 * shingle once.
 */
export const resemblance = <T>(own: ReadonlySet<T>, others: ArrayLike<T>): number => {
  let shared = 0;
  for (let at = 0; at < others.length; at += 1) if (own.has(others[at] as T)) shared += 1;
  return shared === 0 ? 0 : shared / (own.size + others.length - shared);
};
