/**
 * Fast hashes of words that are compared within one run and never written down. Fowler, Noll & Vo's FNV-1a, over UTF-16
 * units where theirs is over octets.
 */

/** Where a hash of 32 bits begins. */
export const FNV_BASIS = 0x811c9dc5;
/** What each unit is multiplied by. */
export const FNV_PRIME = 0x01000193;

/**
 * 64 bits of a text in two halves from 0 on. The second begins elsewhere and takes bits of the first in, because the low
 * bits of two plain ones would agree far too often.
 */
export const hash64 = (text: string): readonly [number, number] => {
  let [a, b] = [FNV_BASIS, 0x9747b28c];
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i);
    a = Math.imul(a ^ unit, FNV_PRIME);
    b = Math.imul(b ^ unit, FNV_PRIME) ^ (a >>> 15);
  }
  return [a >>> 0, b >>> 0];
};
