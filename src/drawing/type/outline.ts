/** Shapes of letters, as numbers: parsed once, moved and written as often as they are wanted. */

/** What ink covers. */
export interface Ink {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A letter in units of its font, y upwards. */
export interface Outline {
  readonly steps: readonly { readonly command: string; readonly at: readonly number[] }[];
  /** Undefined where nothing is drawn, as for a space. Here `top` is the greater number. */
  readonly ink: Ink | undefined;
}

/** Both ends and what a curve reaches between them, one coordinate at a time (its derivative's roots). */
const reached = (points: readonly number[]): readonly number[] => {
  const [a = 0, b = 0, c = 0, d] = points;
  if (points.length < 3) return points;
  if (d === undefined) {
    const t = (a - b) / (a - 2 * b + c);
    return t > 0 && t < 1 ? [a, c, (1 - t) ** 2 * a + 2 * (1 - t) * t * b + t ** 2 * c] : [a, c];
  }
  const [p, q, r] = [d - a + 3 * (b - c), 2 * (a - 2 * b + c), b - a];
  const root = Math.sqrt(q * q - 4 * p * r);
  const roots = Math.abs(p) < 1e-9 ? [-r / q] : [(-q + root) / (2 * p), (-q - root) / (2 * p)];
  const between = roots
    .filter((t) => t > 0 && t < 1)
    .map((t) => (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t ** 2 * c + t ** 3 * d);
  return [a, d, ...between];
};

/** The smallest box around ink and more of it. */
export const withInk = (ink: Ink | undefined, more: Ink | undefined): Ink | undefined =>
  ink === undefined || more === undefined
    ? (ink ?? more)
    : {
        left: Math.min(ink.left, more.left),
        right: Math.max(ink.right, more.right),
        top: Math.max(ink.top, more.top),
        bottom: Math.min(ink.bottom, more.bottom),
      };

/** The exact box around a path of absolute commands. */
const inkOf = (steps: Outline['steps']): Ink | undefined => {
  let [x, y] = [0, 0];
  let [left, right, top, bottom] = [
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ];
  for (const { command, at } of steps) {
    if (command === 'Z') continue;
    const xs = at.filter((_, i) => i % 2 === 0);
    const ys = at.filter((_, i) => i % 2 === 1);
    if (command !== 'M') {
      const [across, up] = [reached([x, ...xs]), reached([y, ...ys])];
      left = Math.min(left, ...across);
      right = Math.max(right, ...across);
      top = Math.max(top, ...up);
      bottom = Math.min(bottom, ...up);
    }
    x = xs.at(-1) ?? x;
    y = ys.at(-1) ?? y;
  }
  return right >= left ? { left, right, top, bottom } : undefined;
};

/** Path data of absolute M, L, Q, C and Z. */
export const outlineOf = (d: string): Outline => {
  const steps = [...d.matchAll(/([MLQCZ])([^MLQCZ]*)/g)].map(([, command = '', numbers = '']) => ({
    command,
    at:
      numbers.trim() === ''
        ? []
        : numbers
            .trim()
            .split(/[\s,]+/)
            .map(Number),
  }));
  return { steps, ink: inkOf(steps) };
};

/** A hundredth of a pixel is finer than any eye, and keeps the data short and alike on every machine. */
const written = (value: number): string => {
  const hundredths = Math.round(value * 100);
  if (hundredths % 100 === 0) return String(hundredths / 100 || 0);
  // Whole numbers are written five times as fast as broken ones, and a line has thousands of them.
  const size = Math.abs(hundredths);
  const rest = size % 100;
  const digits = rest % 10 === 0 ? rest / 10 : rest < 10 ? `0${rest}` : rest;
  return `${hundredths < 0 ? '-' : ''}${(size - rest) / 100}.${digits}`;
};

/** Path data of an outline at a place, `scale` times its size, y downwards. */
export const pathOf = ({ steps }: Outline, x: number, y: number, scale: number): string => {
  let d = '';
  for (const { command, at } of steps) {
    d += command;
    for (let i = 0; i < at.length; i += 2) {
      if (i > 0) d += ' ';
      d += `${written((x + (at[i] ?? 0)) * scale)} ${written(-(y + (at[i + 1] ?? 0)) * scale)}`;
    }
  }
  return d;
};
