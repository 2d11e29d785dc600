/** A publish that could not be carried out, and what it left behind. */
import { codeOf } from '../../text/error-code.ts';

export interface PublishFailure extends Error {
  /** `in the way`: something of the owner's stands where a file of ours should, and the message says where. `disk`: the message is the system's. `bug`: ours, with files changed already. */
  readonly reason: 'in the way' | 'disk' | 'bug';
  /** Whether files were put in place or taken away already; the next run then finishes. */
  readonly halfWay: boolean;
}

const NAME = 'PublishFailure';

const failure = (
  message: string,
  reason: PublishFailure['reason'],
  halfWay: boolean,
  cause?: unknown,
): PublishFailure => Object.assign(new Error(message, { cause }), { name: NAME, reason, halfWay });

/** Whether an error tells what a publish left behind. */
export const isPublishFailure = (error: unknown): error is PublishFailure =>
  error instanceof Error && error.name === NAME && 'reason' in error && 'halfWay' in error;

/** For something of the owner's that must not be touched; `message` names it and says what to do. */
export const inTheWay = (message: string): PublishFailure => failure(message, 'in the way', false);

/** Any error of a publish with what is true of the folders. Before anything was changed our own bugs pass as they are. */
export const failureOf = (error: unknown, halfWay: boolean): unknown => {
  if (isPublishFailure(error)) return failure(error.message, error.reason, error.halfWay || halfWay, error);
  const isOfDisk = codeOf(error) !== '';
  if (!isOfDisk && !halfWay) return error;
  const message = error instanceof Error ? error.message : String(error);
  return failure(message, isOfDisk ? 'disk' : 'bug', halfWay, error);
};
