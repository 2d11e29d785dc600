import { performance } from 'node:perf_hooks';
import { expect, onTestFinished, test, vi } from 'vitest';
import { progress } from '../../src/cli/progress.ts';

/** What is said when `done` of 100 pictures are made after so many milliseconds. */
const saidAfter = (
  isTTY: boolean,
  steps: readonly (readonly [milliseconds: number, done: number])[],
): string => {
  let now = 5_000;
  let said = '';
  const clock = vi.spyOn(performance, 'now').mockImplementation(() => now);
  onTestFinished(() => clock.mockRestore());
  const tell = progress(
    {
      stdin: { async *[Symbol.asyncIterator]() {} },
      stdout: { write: () => undefined },
      stderr: { write: (text) => (said += text) },
      cwd: '.',
      env: {},
      isTTY,
    },
    'Pictures',
  );
  for (const [milliseconds, done] of steps) {
    now = 5_000 + milliseconds;
    tell(done, 100);
  }
  return said;
};

test.each([
  [10_000, 25, '30 s left'],
  [10_100, 50, '11 s left'],
  [59_000, 50, '59 s left'],
  [60_000, 50, '1 min left'],
  [61_000, 50, '2 min left'],
  [10_000, 1, '17 min left'],
])('after %d ms with %d of 100 done the bar says %s', (milliseconds, done, left) => {
  expect(saidAfter(true, [[milliseconds, done]])).toContain(`${done} of 100, ${left}`);
});

test('where nobody watches, a line is written each tenth, and none within two seconds of another', () => {
  const steps = [1_999, 2_000, 3_000, 4_000, 4_001].map((ms, i) => [ms, 10 * (i + 1)] as const);
  expect(saidAfter(false, [...steps, [4_100, 100]])).toBe(
    'Pictures: 20 of 100, 8 s left\nPictures: 40 of 100, 6 s left\nPictures: 100 of 100\n',
  );
});
