/** How a piece of work stands, as a page shows it. */
import type { Context } from './context.ts';
import type { WorkState } from './works.ts';

/** A piece of work that is being done. */
export interface WorkView {
  readonly done: number;
  /** At least 1, as a bar needs it. */
  readonly total: number;
  readonly told: string;
  readonly stop: string;
  /** For who reads without a script, and has to ask how far it is. */
  readonly ask: string;
}

/** Work that goes on; `told` says how much of how much is done. */
export const workView = (
  { done, total }: Extract<WorkState<unknown>, { kind: 'at work' }>,
  told: (done: number, total: number) => string,
  words: Context['words'],
): WorkView => ({
  done,
  total: Math.max(total, 1),
  told: total === 0 ? words.work.begun : told(done, total),
  stop: words.work.stop,
  ask: words.work.ask,
});
