/** Small files to publish, and what a publish says that fails. */
import { isPublishFailure } from '../../../src/io/publish/failure.ts';
import type { PublishedFile, Step } from '../../../src/io/publish/publish.ts';

export const file = (path: string, text = path, key = text, step: Step = 'page'): PublishedFile => ({
  path,
  key,
  step,
  bring: async () => text,
});

export const neverBrought = (path: string, key: string): PublishedFile => ({
  path,
  key,
  step: 'page',
  bring: async () => {
    throw new Error(`${path} was asked for`);
  },
});

export const failureOf = async (
  published: Promise<unknown>,
): Promise<{ message: string; reason: string; halfWay: boolean }> => {
  const error = await published.catch((error: unknown) => error);
  if (!isPublishFailure(error)) throw new Error(`Expected a failure of publishing, found ${error}`);
  return { message: error.message, reason: error.reason, halfWay: error.halfWay };
};
