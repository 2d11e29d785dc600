import { describe, expect, test } from 'vitest';
import { EXIT } from '../../src/cli/exit-status.ts';
import { run } from '../../src/cli/run.ts';

const refusedWith = async (code: string) => {
  let stderr = '';
  const status = await run(['--version'], {
    stdin: { async *[Symbol.asyncIterator]() {} },
    stdout: {
      write: () => {
        throw Object.assign(new Error(`${code}: refused`), { code });
      },
    },
    stderr: { write: (text) => (stderr += text) },
    cwd: '.',
    env: {},
    isTTY: false,
  });
  return { status, stderr };
};

describe('a fault that reaches the edge', () => {
  test.each(
    'EACCES EPERM ENOSPC EROFS EDQUOT EMFILE ENFILE EIO EBUSY EXDEV ENAMETOOLONG ENOTDIR ENOENT'.split(' '),
  )('is told as the disk’s refusal where it is %s', async (code) => {
    const { status, stderr } = await refusedWith(code);
    expect(status).toBe(EXIT.disk);
    expect(stderr).toContain(`The disk refused: ${code}: refused\n`);
  });

  test('is told as our bug where it is anything else', async () => {
    const { status, stderr } = await refusedWith('ERR_INVALID_ARG_TYPE');
    expect(status).toBe(EXIT.bug);
    expect(stderr).toContain('This is a bug in lidlore');
  });
});
