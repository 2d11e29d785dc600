/** How long each stage took. */
import { performance } from 'node:perf_hooks';

export interface StageTime {
  readonly name: string;
  readonly ms: number;
}

/** A stop watch: `begin` ends the stage before and starts the next; `end` gives all, in milliseconds. */
export const stopWatch = (): { begin: (name: string) => void; end: () => readonly StageTime[] } => {
  const times: StageTime[] = [];
  let current: { name: string; since: number } | undefined;
  const close = (): void => {
    if (current) times.push({ name: current.name, ms: Math.round(performance.now() - current.since) });
    current = undefined;
  };
  return {
    begin: (name) => {
      close();
      current = { name, since: performance.now() };
    },
    end: () => {
      close();
      return times;
    },
  };
};
