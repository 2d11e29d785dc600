/** Runs a program again and again and kills it (SIGKILL) at a random moment: nothing of it gets to tidy up. */
import { spawn } from 'node:child_process';

export interface KilledRun {
  /** Whether the program was killed; it may have ended by itself before. */
  readonly wasKilled: boolean;
  readonly afterMs: number;
}

/** How often it is looked whether the time to be counted has begun, in milliseconds. */
const LOOK_EVERY = 3;

/**
 * Starts `command` and kills it after `afterMs` milliseconds; resolves when it is gone. Where `hasBegun` is given, they are
 * counted from the moment when it first says so.
 */
export const killedRun = (
  [program = '', ...words]: readonly string[],
  afterMs: number,
  cwd?: string,
  hasBegun: () => boolean = () => true,
): Promise<KilledRun> =>
  new Promise((resolve, reject) => {
    const child = spawn(program, words, { stdio: 'ignore', ...(cwd === undefined ? {} : { cwd }) });
    let timer: NodeJS.Timeout;
    const look = (): void => {
      timer = hasBegun() ? setTimeout(() => child.kill('SIGKILL'), afterMs) : setTimeout(look, LOOK_EVERY);
    };
    look();
    child.on('error', reject);
    child.on('exit', (_, signal) => {
      clearTimeout(timer);
      resolve({ wasKilled: signal === 'SIGKILL', afterMs });
    });
  });

/** A number from 0 up to 1, the same sequence for the same seed (mulberry32, common practice, no source). */
export const randomOf = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** Kills `times` runs of a command, each at a moment up to `withinMs` after its start; `look` is awaited after each. Gives how many were killed. */
export const killRuns = async (
  command: readonly string[],
  {
    times,
    withinMs,
    fromMs = 0,
    seed = 1,
    cwd,
    look = () => {},
  }: {
    readonly times: number;
    readonly withinMs: number;
    readonly fromMs?: number;
    readonly seed?: number;
    readonly cwd?: string;
    readonly look?: (run: KilledRun) => unknown;
  },
): Promise<number> => {
  const random = randomOf(seed);
  let killed = 0;
  for (let i = 0; i < times; i++) {
    const run = await killedRun(command, fromMs + random() * (withinMs - fromMs), cwd);
    if (run.wasKilled) killed++;
    await look(run);
  }
  return killed;
};
