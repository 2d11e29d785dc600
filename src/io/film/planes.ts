/**
 * Frames as an encoder takes them: a plane of light and two of colour at half its width and height (4:2:0), in the limited
 * range of ITU-R BT.709, which players expect of a picture of this size.
 */
import type { Part } from '../../drawing/film/motion.ts';

/** A picture in planes; width and height in pixels, both even. */
export interface Planes {
  readonly width: number;
  readonly height: number;
  readonly y: Uint8Array;
  readonly u: Uint8Array;
  readonly v: Uint8Array;
}

/** Planes over one row of bytes: light first, then both colours. */
export const planesOver = (bytes: Uint8Array, width: number, height: number): Planes => {
  const size = width * height;
  return {
    width,
    height,
    y: bytes.subarray(0, size),
    u: bytes.subarray(size, (size * 5) / 4),
    v: bytes.subarray((size * 5) / 4, (size * 3) / 2),
  };
};

export const bytesOfFrame = (width: number, height: number): number => (width * height * 3) / 2;

const emptyPlanes = (width: number, height: number): Planes =>
  planesOver(new Uint8Array(bytesOfFrame(width, height)), width, height);

/** ITU-R BT.709-6, 3: how much of each colour makes light. */
const [RED, GREEN, BLUE] = [0.2126, 0.7152, 0.0722];
/** BT.709-6, 3: what blue and red differences are divided by. */
const BLUE_SPAN = 1.8556;
const RED_SPAN = 1.5748;

/** Light (16 to 235) and both colours (16 to 240) of red, green and blue (0 to 255). */
const yuvOf = (r: number, g: number, b: number): readonly [number, number, number] => {
  const light = RED * r + GREEN * g + BLUE * b;
  return [
    16 + (light * 219) / 255,
    128 + ((b - light) / BLUE_SPAN) * (224 / 255),
    128 + ((r - light) / RED_SPAN) * (224 / 255),
  ];
};

/** Red, green and blue of a pixel in planes, 0 to 255. */
export const rgbAt = ({ width, y, u, v }: Planes, left: number, top: number): [number, number, number] => {
  const half = (top >> 1) * (width >> 1) + (left >> 1);
  const light = ((y[top * width + left] ?? 16) - 16) * (255 / 219);
  const blue = ((u[half] ?? 128) - 128) * (255 / 224) * BLUE_SPAN;
  const red = ((v[half] ?? 128) - 128) * (255 / 224) * RED_SPAN;
  const clamp = (value: number): number => Math.min(255, Math.max(0, value));
  const b = light + blue;
  const r = light + red;
  return [clamp(r), clamp((light - RED * r - BLUE * b) / GREEN), clamp(b)];
};

interface Rows {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly channels: 3 | 4;
}

/** Pixels as planes; an odd last row or column is left out. */
export const planesOf = ({ data, width: stride, height: rows, channels }: Rows): Planes => {
  const planes = emptyPlanes(stride & ~1, rows & ~1);
  const { width, height, y, u, v } = planes;
  for (let top = 0; top < height; top += 2)
    for (let left = 0; left < width; left += 2) {
      let [blue, red] = [0, 0];
      for (let i = 0; i < 4; i += 1) {
        const [down, right] = [top + (i >> 1), left + (i & 1)];
        const at = (down * stride + right) * channels;
        const one = yuvOf(data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0);
        y[down * width + right] = Math.round(one[0]);
        blue += one[1];
        red += one[2];
      }
      const half = (top >> 1) * (width >> 1) + (left >> 1);
      u[half] = Math.round(blue / 4);
      v[half] = Math.round(red / 4);
    }
  return planes;
};

/** A frame of one colour. */
export const plainPlanes = (
  width: number,
  height: number,
  [r, g, b]: readonly [number, number, number],
): Planes => {
  const planes = emptyPlanes(width, height);
  const [light, blue, red] = yuvOf(r, g, b).map(Math.round);
  planes.y.fill(light ?? 16);
  planes.u.fill(blue ?? 128);
  planes.v.fill(red ?? 128);
  return planes;
};

/** Columns or rows to read for each to write, and how much of the next one counts, of 256. */
interface Steps {
  readonly at: Int32Array;
  readonly next: Int32Array;
}

const stepsOf = (from: number, length: number, count: number, most: number): Steps => {
  const at = new Int32Array(count);
  const next = new Int32Array(count);
  const step = length / count;
  for (let i = 0; i < count; i += 1) {
    // Middle on middle, so that halved planes stay in register with the whole one.
    const place = Math.min(most - 1.001, Math.max(0, from + (i + 0.5) * step - 0.5));
    at[i] = Math.floor(place);
    next[i] = Math.floor((place - Math.floor(place)) * 256);
  }
  return { at, next };
};

const samplePlane = (
  from: Uint8Array,
  stride: number,
  columns: Steps,
  rows: Steps,
  to: Uint8Array,
  toStride: number,
  start: number,
): void => {
  const width = columns.at.length;
  const height = rows.at.length;
  const { at, next } = columns;
  for (let row = 0; row < height; row += 1) {
    const upper = (rows.at[row] as number) * stride;
    const lower = upper + stride;
    const down = rows.next[row] as number;
    const up = 256 - down;
    const line = start + row * toStride;
    for (let column = 0; column < width; column += 1) {
      const one = at[column] as number;
      const right = next[column] as number;
      const left = 256 - right;
      const above = (from[upper + one] as number) * left + (from[upper + one + 1] as number) * right;
      const below = (from[lower + one] as number) * left + (from[lower + one + 1] as number) * right;
      to[line + column] = (above * up + below * down + 32768) >> 16;
    }
  }
};

/** Where in a frame something is put, in whole and even pixels. */
export interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Puts a part of a still into a place of a frame. Bilinear: a still is made only a little larger than it is shown. */
export const putPart = (still: Planes, part: Part, frame: Planes, place: Place): void => {
  const { left, top, width, height } = place;
  const of = (share: 1 | 2) => ({
    columns: stepsOf(part.x / share, part.width / share, width / share, still.width / share),
    rows: stepsOf(part.y / share, part.height / share, height / share, still.height / share),
    stride: still.width / share,
    toStride: frame.width / share,
    start: (top / share) * (frame.width / share) + left / share,
  });
  const whole = of(1);
  const half = of(2);
  samplePlane(still.y, whole.stride, whole.columns, whole.rows, frame.y, whole.toStride, whole.start);
  samplePlane(still.u, half.stride, half.columns, half.rows, frame.u, half.toStride, half.start);
  samplePlane(still.v, half.stride, half.columns, half.rows, frame.v, half.toStride, half.start);
};

/** Something partly see-through that lies over whole rows of a frame. */
export interface Layer {
  /** First row, even. */
  readonly top: number;
  readonly planes: Planes;
  /** How much it covers, 0 to 255, for each pixel of `y` and of `u` and `v`. */
  readonly cover: Uint8Array;
  readonly halfCover: Uint8Array;
}

/** A layer of red, green, blue and cover as wide as the frame; its height is even. */
export const layerOf = (data: Uint8Array, width: number, height: number, top: number): Layer => {
  const planes = planesOf({ data, width, height, channels: 4 });
  const cover = new Uint8Array(width * height);
  for (let i = 0; i < cover.length; i += 1) cover[i] = data[i * 4 + 3] as number;
  const half = width >> 1;
  const halfCover = new Uint8Array(half * (height >> 1));
  for (let i = 0; i < halfCover.length; i += 1) {
    const at = Math.floor(i / half) * 2 * width + (i % half) * 2;
    const sum = [at, at + 1, at + width, at + width + 1].reduce((all, one) => all + (cover[one] ?? 0), 0);
    halfCover[i] = Math.round(sum / 4);
  }
  return { top, planes, cover, halfCover };
};

const coverPlane = (from: Uint8Array, cover: Uint8Array, to: Uint8Array, start: number): void => {
  for (let i = 0; i < from.length; i += 1) {
    const much = cover[i] as number;
    if (much === 0) continue;
    const under = to[start + i] as number;
    to[start + i] =
      much === 255 ? (from[i] as number) : under + Math.round((((from[i] as number) - under) * much) / 255);
  }
};

/** Lays a layer over a frame of its width. */
export const putLayer = ({ top, planes, cover, halfCover }: Layer, frame: Planes): void => {
  coverPlane(planes.y, cover, frame.y, top * frame.width);
  const start = (top >> 1) * (frame.width >> 1);
  coverPlane(planes.u, halfCover, frame.u, start);
  coverPlane(planes.v, halfCover, frame.v, start);
};

/** A plane of which each pixel is the mean of a square of so many. */
const meanPlane = (from: Uint8Array, stride: number, by: number, to: Uint8Array, width: number): void => {
  const height = to.length / width;
  const rows = from.length / stride;
  for (let row = 0; row < height; row += 1)
    for (let column = 0; column < width; column += 1) {
      let [sum, count] = [0, 0];
      for (let y = row * by; y < Math.min(rows, (row + 1) * by); y += 1)
        for (let x = column * by; x < Math.min(stride, (column + 1) * by); x += 1) {
          sum += from[y * stride + x] as number;
          count += 1;
        }
      to[row * width + column] = count === 0 ? 128 : Math.round(sum / count);
    }
};

/** Takes away all details of a frame that are smaller than so many pixels. */
export const soften = (frame: Planes, by: number): void => {
  const { width, height } = frame;
  const even = (length: number): number => Math.max(4, Math.ceil(length / by / 2) * 2);
  const small = emptyPlanes(even(width), even(height));
  meanPlane(frame.y, width, by, small.y, small.width);
  meanPlane(frame.u, width / 2, by, small.u, small.width / 2);
  meanPlane(frame.v, width / 2, by, small.v, small.width / 2);
  const part = { x: 0, y: 0, width: width / by, height: height / by };
  putPart(small, part, frame, { left: 0, top: 0, width, height });
};
