/**
 * Where a photo's things are: a small map of how hard each place is to reach from the photo's border without crossing
 * an edge. Pure mathematics over a small copy; `crop-window.ts` crops by it.
 *
 * Minimum barrier distance to the border, in three channels, by raster scans: J. Zhang, S. Sclaroff, Z. Lin, X. Shen,
 * B. Price, R. Měch, "Minimum Barrier Salient Object Detection at 80 FPS", ICCV 2015. A thing comes out filled and
 * whole, where measures of contrast alone find its rim and its label. Whole numbers until the last step, so that the
 * same small copy gives the same map on every machine.
 */

/** How much each place of a photo asks to be looked at. */
export interface Attention {
  readonly width: number;
  readonly height: number;
  /** From 0 to 1, row by row. */
  readonly weights: Float64Array;
}

/** Pixels of the small copy's longer side: things come out whole, and the grain of wood and cloth is gone. */
export const ATTENTION_SIDE = 96;

/** Forward and backward scans, in turn: three come as near as is of use (Zhang et al., section 3.2). */
const SCANS = 4;

/**
 * Shares of places that may lie above what counts as full attention: so many that one glint does not dim the rest; and
 * where the thing itself is smaller than that, fewer, at half of what they reach.
 */
const ABOVE_FULL = 0.05;
const ABOVE_SMALL = 0.01;

/** Levels of difference below which a photo has nothing that stands out: grain and shadow. */
const LEAST_DIFFERENCE = 24;

type Plane = Int32Array;

/** Brightness and two differences of colours, whole numbers from 0 to 255 (JPEG's own colour space, ITU-T T.871). */
const planesOf = (data: Uint8Array, channels: number, pixels: number): readonly Plane[] => {
  const planes = [new Int32Array(pixels), new Int32Array(pixels), new Int32Array(pixels)] as const;
  for (let i = 0; i < pixels; i++) {
    const r = data[i * channels] as number;
    const g = data[i * channels + 1] as number;
    const b = data[i * channels + 2] as number;
    planes[0][i] = (299 * r + 587 * g + 114 * b) / 1000;
    planes[1][i] = 128 + (-168_736 * r - 331_264 * g + 500_000 * b) / 1_000_000;
    planes[2][i] = 128 + (500_000 * r - 418_688 * g - 81_312 * b) / 1_000_000;
  }
  return planes;
};

/** For each place the least range of levels that a way to the border has to cross. */
const barriers = (plane: Plane, width: number, height: number): Int32Array => {
  const distance = new Int32Array(plane.length).fill(1 << 16);
  const highest = plane.slice();
  const lowest = plane.slice();
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      if (x === 0 || y === 0 || x === width - 1 || y === height - 1) distance[y * width + x] = 0;
  const goThrough = (at: number, from: number): void => {
    const level = plane[at] as number;
    const high = Math.max(highest[from] as number, level);
    const low = Math.min(lowest[from] as number, level);
    if (high - low >= (distance[at] as number)) return;
    distance[at] = high - low;
    highest[at] = high;
    lowest[at] = low;
  };
  for (let scan = 0; scan < SCANS; scan++) {
    const step = scan % 2 === 0 ? 1 : -1;
    for (let row = 1; row < height - 1; row++) {
      const y = step > 0 ? row : height - 1 - row;
      for (let column = 1; column < width - 1; column++) {
        const at = y * width + (step > 0 ? column : width - 1 - column);
        goThrough(at, at - step);
        goThrough(at, at - step * width);
      }
    }
  }
  return distance;
};

/** From 0 to 1 with soft ends. */
const smoothstep = (share: number): number => {
  const within = Math.min(1, Math.max(0, share));
  return within * within * (3 - 2 * within);
};

/** The map of a small copy in sRGB, eight bits a channel; all 0 where nothing stands out. */
export const attentionOf = (copy: {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly channels: number;
}): Attention => {
  const { data, width, height, channels } = copy;
  const pixels = width * height;
  const sum = new Int32Array(pixels);
  for (const plane of planesOf(data, channels, pixels))
    barriers(plane, width, height).forEach((distance, i) => {
      sum[i] = (sum[i] as number) + distance;
    });
  const sorted = Int32Array.from(sum).sort();
  const level = (above: number): number => sorted[Math.floor((pixels - 1) * (1 - above))] as number;
  const full = Math.max(level(ABOVE_FULL), level(ABOVE_SMALL) / 2);
  const weights = new Float64Array(pixels);
  if (full >= LEAST_DIFFERENCE)
    sum.forEach((distance, i) => {
      weights[i] = smoothstep(distance / full);
    });
  return { width, height, weights };
};
