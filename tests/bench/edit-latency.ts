/** How long an owner waits with the workspace held open. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, symlinkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { bundleScript } from './bundle.ts';

const ROOT = join(import.meta.dirname, '../..');

/** Milliseconds from the end of an edit's write until its files are published. */
export interface EditTime {
  readonly wall: number;
  /** Processor time, of all threads. */
  readonly cpu: number;
}

/**
 * Changes one word in the content folder `content` `edits` times, as of a moment, and gives the time of each in their
 * order. The folder must be new, because what its memory knows is not made. A process of its own does it, bundled as the program is. Throws when it fails.
 */
export const editLatency = async (
  content: string,
  edits: number,
  asOf: string,
): Promise<readonly EditTime[]> => {
  const beside = join(dirname(content), 'held-open');
  mkdirSync(beside, { recursive: true });
  // What the script loads from outside its bundle is looked for beside it.
  symlinkSync(join(ROOT, 'node_modules'), join(beside, 'node_modules'));
  const script = await bundleScript('held-open', beside);
  const words = [script, content, String(edits), join(ROOT, 'templates'), join(ROOT, 'dist/browser'), asOf];
  const { status, stdout, stderr } = spawnSync(process.execPath, words, {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  if (status !== 0) throw new Error(`held-open ended with ${status}:\n${stderr.slice(-4000)}`);
  return JSON.parse(stdout);
};
