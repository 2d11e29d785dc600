/** What an error is called by the system that gave it. */

/** The system's word for what went wrong, such as `ENOENT`; empty for an error that is not the system's. */
export const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';
