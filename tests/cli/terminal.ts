import { run } from '../../src/cli/run.ts';

/** Runs the program as a shell in `cwd` would, and gives what it said and its exit status. */
export const lidlore = async (
  cwd: string,
  ...words: readonly string[]
): Promise<{ status: number; stdout: string; stderr: string }> => {
  let stdout = '';
  let stderr = '';
  const status = await run(words, {
    stdout: { write: (text) => (stdout += text) },
    stderr: { write: (text) => (stderr += text) },
    cwd,
    env: {},
    isTTY: false,
  });
  return { status, stdout, stderr };
};
