/** How sharp a photo is where it is sharpest. Pure mathematics over a small copy in grey. */

/**
 * Pixels of the copy's longer side. Larger ones see slighter blur and take longer: a photo of 12 million pixels is
 * decoded to this size as quickly as to a stamp.
 */
export const SHARPNESS_SIDE = 768;

/** Parts a side: what lies out of focus behind a thing does not count against it. */
const PARTS = 4;

/** Variance of the Laplacian in columns `left` to `right` and rows `top` to `bottom`, the ends left out. */
const varianceIn = (
  grey: Uint8Array,
  width: number,
  { left, top, right, bottom }: { left: number; top: number; right: number; bottom: number },
): number => {
  let count = 0;
  let sum = 0;
  let squares = 0;
  for (let y = top; y < bottom; y++)
    for (let x = left; x < right; x++) {
      const at = y * width + x;
      const value =
        (grey[at - 1] as number) +
        (grey[at + 1] as number) +
        (grey[at - width] as number) +
        (grey[at + width] as number) -
        4 * (grey[at] as number);
      count += 1;
      sum += value;
      squares += value * value;
    }
  return count === 0 ? 0 : squares / count - (sum / count) ** 2;
};

/**
 * Variance of the Laplacian (J. L. Pech-Pacheco, G. Cristóbal, J. Chamorro-Martínez, J. Fernández-Valdivia, "Diatom
 * autofocusing in brightfield microscopy: a comparative study", ICPR 2000), in the sharpest of sixteen parts, in squared
 * levels of 256, a whole number. 0 for a picture too small to tell.
 */
export const sharpnessOf = ({
  data,
  width,
  height,
}: {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
}): number => {
  const edge = (part: number, length: number): number =>
    Math.min(length - 1, Math.max(1, Math.round((part * length) / PARTS)));
  let sharpest = 0;
  for (let row = 0; row < PARTS; row++)
    for (let column = 0; column < PARTS; column++)
      sharpest = Math.max(
        sharpest,
        varianceIn(data, width, {
          left: edge(column, width),
          right: edge(column + 1, width),
          top: edge(row, height),
          bottom: edge(row + 1, height),
        }),
      );
  return Math.round(sharpest);
};
