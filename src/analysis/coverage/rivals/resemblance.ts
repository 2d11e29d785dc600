/**
 * How much two texts are alike: Broder (1997), "On the resemblance and containment of documents". A shingle is a
 * run of neighbouring words; the resemblance of two texts is the number of shingles they share divided by the
 * number that either has, from 0 to 1. Two texts too short for a shingle have none to share: 0.
 */
export const jaccard = <T>(a: ReadonlySet<T>, b: ReadonlySet<T>): number => {
  const [fewer, more] = a.size < b.size ? [a, b] : [b, a];
  let shared = 0;
  for (const one of fewer) if (more.has(one)) shared += 1;
  return shared === 0 ? 0 : shared / (a.size + b.size - shared);
};
