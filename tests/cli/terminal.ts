import { run } from '../../src/cli/run.ts';

interface Said {
  readonly status: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the program as a shell in `cwd` would, with `input` piped in; gives what it said and its exit status. */
export const lidloreWith = async (
  input: string | Uint8Array,
  cwd: string,
  ...words: readonly string[]
): Promise<Said> => {
  let stdout = '';
  let stderr = '';
  const status = await run(words, {
    stdin: {
      async *[Symbol.asyncIterator]() {
        yield input;
      },
    },
    stdout: { write: (text) => (stdout += text) },
    stderr: { write: (text) => (stderr += text) },
    cwd,
    env: {},
    isTTY: false,
  });
  return { status, stdout, stderr };
};

/** The same with nobody typing and nothing piped in. */
export const lidlore = (cwd: string, ...words: readonly string[]): Promise<Said> =>
  lidloreWith('', cwd, ...words);
