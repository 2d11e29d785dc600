/** How long an owner waits with the workspace held open. */

/**
 * Milliseconds from each of `edits` changes of one word in the content folder `folder` until its files are
 * published, in the order they were made; undefined while there is no workspace to hold open.
 */
export const editLatency = async (_folder: string, _edits: number): Promise<readonly number[] | undefined> =>
  undefined;
