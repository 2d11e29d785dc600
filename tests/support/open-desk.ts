/** `lidlore desk` as a process of its own. */
import { type ChildProcess, spawn } from 'node:child_process';
import { compiledCommand } from './compiled.ts';

export interface DeskProcess {
  readonly child: ChildProcess;
  /** Ends in a slash. */
  readonly address: string;
}

/** Opens the desk on a folder, by the program of `command` (the compiled one); rejects with what was said where it ends at once. */
export const openedDesk = (
  folder: string,
  words: readonly string[] = ['--as-of', '2026-03-27', '--port', '4900'],
  command: readonly string[] = compiledCommand(),
): Promise<DeskProcess> =>
  new Promise((resolve, reject) => {
    const [program = '', ...rest] = [...command, 'desk', '--no-open', ...words];
    const child = spawn(program, rest, { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      const address = /http:\/\/127\.0\.0\.1:\d+\/\S*/.exec(said)?.[0];
      if (address && said.includes('Ctrl-C')) resolve({ child, address });
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => (said += text));
    child.on('error', reject);
    child.on('exit', () => reject(new Error(said)));
  });

/** Ends a desk by a signal, and gives its exit status once it is gone. */
export const closedDesk = (
  { child }: DeskProcess,
  signal: 'SIGINT' | 'SIGKILL' = 'SIGINT',
): Promise<number | null> =>
  new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) resolve(child.exitCode);
    child.on('exit', (code) => resolve(code));
    child.kill(signal);
  });
