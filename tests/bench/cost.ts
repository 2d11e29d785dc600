/** What a whole process costs, and two of them side by side. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';

export interface Cost {
  /** Seconds from the start of the process to its end. */
  readonly wall: number;
  /** Seconds of processor time, user and system, of all threads. */
  readonly cpu: number;
  /** The most memory it had at once, in bytes. */
  readonly peak: number;
}

export interface Program {
  /** What follows `node`. */
  readonly words: readonly string[];
  /** The working folder; this one when absent. */
  readonly cwd?: string;
  /** Exit statuses that are no failure; 0 alone when absent. */
  readonly ends?: readonly number[];
}

const REPORT = join(import.meta.dirname, 'report-usage.cjs');
const MODULES = join(import.meta.dirname, '../../node_modules');

/** Runs it once. Throws when it ends otherwise than it may. */
export const costOf = ({ words, cwd, ends = [0] }: Program): Cost => {
  const began = performance.now();
  const { status, output } = spawnSync(process.execPath, ['--require', REPORT, ...words], {
    ...(cwd === undefined ? {} : { cwd }),
    // Floors are bundled into a temporary folder, and load what cannot be bundled from here.
    env: { ...process.env, NODE_PATH: MODULES },
    stdio: ['ignore', 'ignore', 'pipe', 'pipe'],
    encoding: 'utf8',
    maxBuffer: 1 << 30,
  });
  const wall = (performance.now() - began) / 1000;
  if (status === null || !ends.includes(status))
    throw new Error(`node ${words.join(' ')} ended with ${status}:\n${String(output[2]).slice(-4000)}`);
  const { cpu, peak } = JSON.parse(String(output[3]));
  return { wall, cpu, peak };
};

/** The middle one; of an even number the mean of the two in the middle. */
export const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.slice((sorted.length - 1) >> 1, (sorted.length >> 1) + 1);
  return middle.reduce((sum, value) => sum + value, 0) / middle.length;
};

/** Each figure the median of its own. */
export const medianCost = (costs: readonly Cost[]): Cost => ({
  wall: median(costs.map(({ wall }) => wall)),
  cpu: median(costs.map(({ cpu }) => cpu)),
  peak: median(costs.map(({ peak }) => peak)),
});

export interface Compared {
  /** How many runs of each the medians are of. */
  readonly runs: number;
  readonly floor: Cost;
  readonly ours: Cost;
  /** Medians of the ratios of neighbours: what else the machine does at the time slows both. */
  readonly cpuRatio: number;
  readonly wallRatio: number;
}

/** Runs of each, and of what takes longer than `PATIENCE` seconds in all, fewer. */
export const RUNS = 7;
const LONG_RUNS = 3;
const PATIENCE = 300;

/** Runs both in turn, floor, ours, floor, ours; `prepare` comes before each of ours. */
export const compare = (floor: Program, ours: Program, prepare: () => void = () => {}): Compared => {
  const began = performance.now();
  const pairs: { readonly below: Cost; readonly above: Cost }[] = [];
  const isLong = (): boolean => pairs.length >= LONG_RUNS && performance.now() - began > PATIENCE * 1000;
  while (pairs.length < RUNS && !isLong()) {
    const below = costOf(floor);
    prepare();
    pairs.push({ below, above: costOf(ours) });
  }
  return {
    runs: pairs.length,
    floor: medianCost(pairs.map(({ below }) => below)),
    ours: medianCost(pairs.map(({ above }) => above)),
    cpuRatio: median(pairs.map(({ below, above }) => above.cpu / below.cpu)),
    wallRatio: median(pairs.map(({ below, above }) => above.wall / below.wall)),
  };
};

/** Exponent of growth: the slope of a line through the logarithms, by least squares. NaN of fewer than two points. */
export const exponentOf = (points: readonly { readonly size: number; readonly time: number }[]): number => {
  const logs = points.map(({ size, time }) => ({ x: Math.log(size), y: Math.log(time) }));
  const mean = (of: (log: { x: number; y: number }) => number): number =>
    logs.reduce((sum, log) => sum + of(log), 0) / logs.length;
  const [x, y] = [mean((log) => log.x), mean((log) => log.y)];
  return mean((log) => (log.x - x) * (log.y - y)) / mean((log) => (log.x - x) ** 2);
};
