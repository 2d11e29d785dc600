/**
 * BM25 as Robertson & Zaragoza have it (2009, "The Probabilistic Relevance Framework: BM25 and Beyond", 3.2), with the
 * k1 and b that are usual, and without BM25+'s delta (Lv & Zhai 2011).
 */

/** How fast more of the same word comes to say nothing new, and how much of a text's length is held against it. */
const K1 = 1.2;
const B = 0.75;

/**
 * What a word is worth that so many of all documents have. The 1 under the logarithm keeps the worth of a word which
 * most of them have above nought (common practice, Lucene's).
 */
export const worthOf = (having: number, documents: number): number =>
  Math.log(1 + (documents - having + 0.5) / (having + 0.5));

/** How much of a word's worth a text gets for having it so many times; lengths in words. */
export const shareOf = (times: number, length: number, averageLength: number): number =>
  (times * (K1 + 1)) / (times + K1 * (1 - B + (B * length) / averageLength));
