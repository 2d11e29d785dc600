import fc from 'fast-check';
import { expect, test } from 'vitest';
import { NEAREST, partAt } from '../../../src/drawing/film/motion.ts';
import type { FilmMove } from '../../../src/render/film.ts';

const length = fc.integer({ min: 200, max: 4000 });
const size = fc.record({ width: length, height: length });
const moves: readonly FilmMove[] = ['nearer', 'farther', 'rightward', 'leftward'];

test('a move stays within the still, keeps the frame’s shape, and is never nearer than it may be', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...moves),
      size,
      size,
      fc.double({ min: 1, max: NEAREST, noNaN: true }),
      fc.double({ min: 0.5, max: 20, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (move, still, frame, nearest, seconds, time) => {
        const part = partAt(move, time, { still, frame, nearest, seconds });
        const ratio = frame.width / frame.height;
        expect(part.x).toBeGreaterThanOrEqual(0);
        expect(part.y).toBeGreaterThanOrEqual(0);
        expect(part.x + part.width).toBeLessThanOrEqual(still.width + 1e-6);
        expect(part.y + part.height).toBeLessThanOrEqual(still.height + 1e-6);
        expect(part.width / part.height / ratio).toBeCloseTo(1, 6);
        const widest = Math.min(still.width, still.height * ratio);
        expect(widest / part.width).toBeLessThanOrEqual(nearest + 1e-9);
      },
    ),
  );
});

test('a move goes on from frame to frame without a jump, and never stands still', () => {
  for (const move of moves) {
    const options = {
      still: { width: 1400, height: 2080 },
      frame: { width: 1080, height: 1920 },
      nearest: 1.08,
      seconds: 3,
    };
    const parts = Array.from({ length: 90 }, (_, i) => partAt(move, (i + 0.5) / 90, options));
    const ways = parts.slice(1).map((part, i) => {
      const before = parts[i] ?? part;
      return Math.abs(part.x - before.x) + Math.abs(part.width - before.width);
    });
    expect(Math.min(...ways)).toBeGreaterThan(0.05);
    expect(Math.max(...ways)).toBeLessThan(8);
  }
});
