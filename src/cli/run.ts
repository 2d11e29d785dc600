/** Words in, one command run, report out, exit status. */
import { readFile } from 'node:fs/promises';
import { isPublishFailure } from '../io/publish/failure.ts';
import type { Environment } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { commandHelp, programHelp } from './help.ts';
import { readWords } from './read-words.ts';

const version = async (): Promise<string> => {
  const { version } = JSON.parse(await readFile(new URL('../../package.json', import.meta.url), 'utf8'));
  return version;
};

/** What the operating system said, where it is the disk's refusal rather than our bug. */
const diskRefusal = (error: unknown): string | undefined => {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return /^(EACCES|EPERM|ENOSPC|EROFS|EDQUOT|EMFILE|ENFILE|EIO|EBUSY|EXDEV|ENAMETOOLONG|ENOTDIR|ENOENT)$/.test(
    code,
  )
    ? (error as Error).message
    : undefined;
};

/** Runs the command that `words` (without the program's name) ask for; gives the exit status. Never rejects. */
export const run = async (words: readonly string[], edge: Environment): Promise<number> => {
  try {
    const asked = readWords(words);
    switch (asked.kind) {
      case 'help':
        edge.stdout.write(asked.command ? commandHelp(asked.command) : programHelp());
        return EXIT.done;
      case 'version':
        edge.stdout.write(`${await version()}\n`);
        return EXIT.done;
      case 'mistake':
        edge.stderr.write(
          `${asked.message}\nSee: lidlore ${asked.command ? `${asked.command.name} ` : ''}--help\n`,
        );
        return EXIT.usage;
      case 'run':
        return await asked.command.run(asked.values, edge, asked.operands);
    }
  } catch (error) {
    if (isPublishFailure(error) && error.reason !== 'bug') {
      const said = error.reason === 'disk' ? `The disk refused: ${error.message}` : error.message;
      edge.stderr.write(
        `${said}\n${error.halfWay ? 'The site is published in part; the next build finishes it.' : 'Nothing was published; the old site is as it was.'}\n`,
      );
      return error.reason === 'disk' ? EXIT.disk : EXIT.usage;
    }
    const refused = diskRefusal(error);
    if (refused) {
      edge.stderr.write(`The disk refused: ${refused}\nNothing was published; the old site is as it was.\n`);
      return EXIT.disk;
    }
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
    edge.stderr.write(
      `This is a bug in lidlore, not a mistake of yours. ${isPublishFailure(error) ? 'The site is published in part; the next build finishes it' : 'Nothing was published'}. Please report it with:\n${stack}\n`,
    );
    return EXIT.bug;
  }
};
