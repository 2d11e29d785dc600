/**
 * Structural similarity of two grey pictures of one size: Z. Wang, A. C. Bovik, H. R. Sheikh, E. P. Simoncelli, "Image
 * Quality Assessment: From Error Visibility to Structural Similarity", IEEE Transactions on Image Processing 13 (2004),
 * equation 13 with K1 = 0.01, K2 = 0.03, over windows of 8 × 8 pixels (as Wang and Bovik 2002), a window every 4 pixels.
 */
const C1 = (0.01 * 255) ** 2;
const C2 = (0.03 * 255) ** 2;
const SIDE = 8;
const STEP = 4;

/** Mean SSIM, 1 for equal pictures. `a` and `b` hold one byte a pixel, row by row. */
export const meanSsim = (a: Uint8Array, b: Uint8Array, width: number): number => {
  const height = a.length / width;
  let sum = 0;
  let count = 0;
  for (let top = 0; top + SIDE <= height; top += STEP)
    for (let left = 0; left + SIDE <= width; left += STEP) {
      let [sa, sb, saa, sbb, sab] = [0, 0, 0, 0, 0];
      for (let y = top; y < top + SIDE; y++)
        for (let x = left; x < left + SIDE; x++) {
          const [p, q] = [a[y * width + x] as number, b[y * width + x] as number];
          sa += p;
          sb += q;
          saa += p * p;
          sbb += q * q;
          sab += p * q;
        }
      const n = SIDE * SIDE;
      const [ma, mb] = [sa / n, sb / n];
      const [va, vb, cov] = [saa / n - ma * ma, sbb / n - mb * mb, sab / n - ma * mb];
      sum += ((2 * ma * mb + C1) * (2 * cov + C2)) / ((ma * ma + mb * mb + C1) * (va + vb + C2));
      count++;
    }
  return sum / count;
};
