/** Words in, one command run, report out, exit status. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isPublishFailure } from '../io/publish/failure.ts';
import { commandLine } from '../wording/en/command-line.ts';
import { harmless } from './cells.ts';
import { diskRefusal } from './disk-refusal.ts';
import type { Environment, OutputStream } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { commandHelp, programHelp } from './help.ts';
import { readWords } from './read-words.ts';

const version = (): string =>
  JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')).version;

/** A stream on which nothing that an author wrote commands the terminal. */
const guarded = (stream: OutputStream): OutputStream => ({
  write: (text) => stream.write(harmless(text)),
});

const guardedEnvironment = (outside: Environment): Environment => ({
  cwd: outside.cwd,
  env: outside.env,
  isTTY: outside.isTTY,
  columns: outside.columns,
  // Opened only by the command that reads it.
  get stdin() {
    return outside.stdin;
  },
  stdout: guarded(outside.stdout),
  stderr: guarded(outside.stderr),
  ...(outside.dialogue && { dialogue: outside.dialogue }),
});

/** Runs the command that `words` (without the program's name) ask for; gives the exit status. Never rejects. */
export const run = async (words: readonly string[], outside: Environment): Promise<number> => {
  const edge = guardedEnvironment(outside);
  try {
    if (words.length === 0 && !existsSync(join(edge.cwd, 'content'))) {
      edge.stderr.write(`${commandLine.mistakes.noBox}\n`);
      return EXIT.usage;
    }
    const asked = readWords(words);
    switch (asked.kind) {
      case 'help':
        edge.stdout.write(asked.command ? commandHelp(asked.command) : programHelp());
        return EXIT.done;
      case 'version':
        edge.stdout.write(`${version()}\n`);
        return EXIT.done;
      case 'mistake':
        edge.stderr.write(`${asked.message}\n${commandLine.help.see(asked.command?.name)}\n`);
        return EXIT.usage;
      case 'run':
        return await asked.command.run(asked.values, edge, asked.operands);
    }
  } catch (error) {
    if (isPublishFailure(error) && error.reason !== 'bug') {
      const { disk, inTheWay } = commandLine.failures;
      const words = error.reason === 'disk' ? disk : inTheWay;
      edge.stderr.write(`${words(error.message, error.halfWay)}\n`);
      return error.reason === 'disk' ? EXIT.disk : EXIT.usage;
    }
    const refused = diskRefusal(error);
    if (refused) {
      edge.stderr.write(`${commandLine.failures.disk(refused, false)}\n`);
      return EXIT.disk;
    }
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
    edge.stderr.write(`${commandLine.failures.bug(stack, isPublishFailure(error) && error.halfWay)}\n`);
    return EXIT.bug;
  }
};
