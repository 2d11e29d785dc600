/** Reads lists of shipments from the disk, one after the other, each streamed. */
import { join } from 'node:path';
import type { FileReader } from '../content/record-file.ts';
import type { Sources } from '../content/sources.ts';
import type { AsOf } from '../pipeline/as-of.ts';
import type { ParcelsByCycle } from '../pipeline/parcels.ts';

/** The lists of all cycles, as of a moment. */
export const readLists = async (
  content: string,
  sources: Sources,
  readFile: FileReader,
  asOf: AsOf,
): Promise<ParcelsByCycle> => {
  const [{ parcelsFiles, parcelsReaders }, { readInto }] = await Promise.all([
    import('../pipeline/parcels.ts'),
    import('../io/read-parcels.ts'),
  ]);
  const readerOf = parcelsReaders(sources, readFile, asOf);
  const lists = new Map<string, ReturnType<ReturnType<typeof readerOf>['end']>>();
  for (const { cycle, path } of parcelsFiles(sources)) {
    const reader = await readInto(join(content, path), () => readerOf(path));
    lists.set(cycle, reader.end());
  }
  return lists;
};
