/** Tells the disk's refusal from our own fault. */
import { codeOf } from '../text/error-code.ts';

const REFUSALS = new Set(
  'EACCES EPERM ENOSPC EROFS EDQUOT EFBIG EMFILE ENFILE EIO EBUSY EXDEV ENAMETOOLONG ENOTDIR ENOENT'.split(
    ' ',
  ),
);

/** What the operating system said, where an error is its refusal. */
export const diskRefusal = (error: unknown): string | undefined =>
  REFUSALS.has(codeOf(error)) ? (error as Error).message : undefined;
