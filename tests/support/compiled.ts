/** The compiled program as a process of its own: what shares nothing with a test but the disk. */
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));

export interface Ended {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
  readonly ms: number;
}

/** The words that start `lidlore` with these; throws where nobody has compiled it. */
export const compiledCommand = (...words: readonly string[]): readonly string[] => {
  if (!existsSync(MAIN)) throw new Error('Expected the compiled program: npm run compile makes it');
  return [process.execPath, MAIN, ...words];
};

/** Runs the compiled program in `cwd` to its end. */
export const runCompiled = (cwd: string, ...words: readonly string[]): Promise<Ended> =>
  new Promise((resolve, reject) => {
    const [program = '', ...rest] = compiledCommand(...words);
    const begun = performance.now();
    const child = spawn(program, rest, { cwd, stdio: ['ignore', 'pipe', 'pipe'] });
    let [stdout, stderr] = ['', ''];
    child.stdout.setEncoding('utf8').on('data', (text: string) => (stdout += text));
    child.stderr.setEncoding('utf8').on('data', (text: string) => (stderr += text));
    child.on('error', reject);
    child.on('close', (status) => resolve({ status, stdout, stderr, ms: performance.now() - begun }));
  });
