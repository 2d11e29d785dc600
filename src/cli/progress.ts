/** How far a long stage is: a bar where somebody watches, plain lines elsewhere. */
import { performance } from 'node:perf_hooks';
import { commandLine } from '../wording/en/command-line.ts';
import { CLEAR_LINE } from './cells.ts';
import type { Environment } from './environment.ts';

const { progress: words } = commandLine;

const BAR = 24;
/** Elsewhere than on a terminal: a line each tenth, and never two within this many milliseconds. */
const LINE_EVERY = 2000;
/** Nobody needs a line about what is done sooner than this, in milliseconds. */
const QUIET = 500;

const timeLeft = (elapsed: number, done: number, total: number): string => {
  const seconds = Math.ceil(((elapsed / done) * (total - done)) / 1000);
  return seconds < 60 ? words.secondsLeft(seconds) : words.minutesLeft(Math.ceil(seconds / 60));
};

/** A listener for one stage: call it with what is done and what there is. `label` says what is counted. */
export const progress = (edge: Environment, label: string): ((done: number, total: number) => void) => {
  const began = performance.now();
  let lastLine = began;
  let lastTenth = 0;
  return (done, total) => {
    const now = performance.now();
    const left = timeLeft(now - began, done, total);
    if (edge.isTTY && edge.env.TERM !== 'dumb') {
      const filled = Math.round((done / total) * BAR);
      const bar = '#'.repeat(filled) + '.'.repeat(BAR - filled);
      edge.stderr.write(
        done === total ? CLEAR_LINE : `${CLEAR_LINE}${label} [${bar}] ${words.of(done, total)}, ${left}`,
      );
      return;
    }
    const tenth = Math.floor((done / total) * 10);
    const due = tenth > lastTenth && now - lastLine >= LINE_EVERY;
    const last = done === total && now - began >= QUIET;
    if (!due && !last) return;
    lastLine = now;
    lastTenth = tenth;
    edge.stderr.write(`${label}: ${words.of(done, total)}${done === total ? '' : `, ${left}`}\n`);
  };
};

/** A listener for films, one after another. */
export const filmProgress = (edge: Environment): ((cycle: string, done: number, total: number) => void) => {
  const known = new Map<string, (done: number, total: number) => void>();
  return (cycle, done, total) => {
    const listener = known.get(cycle) ?? progress(edge, words.film(cycle));
    known.set(cycle, listener);
    listener(done, total);
  };
};
