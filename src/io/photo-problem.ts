/** What is wrong with a photo, told apart from what opens it: who only passes it on loads no decoder. */

/** Why a photo cannot be used, in words that follow its name, and what mends it where that is not to copy it again. */
export interface PhotoProblem {
  readonly problem: string;
  readonly fix?: string;
}

/** Says nothing of the photo for good: on a machine with less to do the same one may be read in time. */
export const TOO_SLOW: PhotoProblem = {
  problem: 'takes too long to read',
  fix: 'Save it again as a JPEG, or at half its width, or try again when the computer has less to do',
};

/** Whether a problem may be gone the next time, though the photo is the same. */
export const mayPass = ({ problem }: { readonly problem?: string | undefined }): boolean =>
  problem === TOO_SLOW.problem;

/** A photo that was whole when it was looked at, and cannot be used where a picture of it is made. */
interface PhotoFailure extends Error, PhotoProblem {
  readonly source: string;
}

const NAME = 'PhotoFailure';

/** An error that tells of a photo by its path. */
export const photoFailure = (source: string, { problem, fix }: PhotoProblem): Error =>
  Object.assign(new Error(`${source} ${problem}`), { name: NAME, source, problem, ...(fix && { fix }) });

/** Whether an error tells of a photo, which is no fault of the program. */
export const isPhotoFailure = (error: unknown): error is PhotoFailure =>
  error instanceof Error && error.name === NAME && 'source' in error && 'problem' in error;
