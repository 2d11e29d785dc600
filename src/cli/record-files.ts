/** The records' files, parsed now or remembered. */

import type { FileReader } from '../content/record-file.ts';
import type { Sources } from '../content/sources.ts';
import { readRecordMemory } from '../io/record-memory.ts';
import { fileReaderFor, PARSING_VERSION } from '../pipeline/record-files.ts';

/** A reader of these texts, which parses what the folder `cache` does not remember, and remembers it there. */
export const readerOf = async ({ texts }: Sources, cache: string): Promise<FileReader> => {
  const memory = await readRecordMemory(cache, String(PARSING_VERSION));
  const { read, parsed } = await fileReaderFor(texts, memory.known);
  // What cannot be remembered is parsed again next time: no reason to fail.
  await memory.keep(texts, parsed).catch(() => undefined);
  return read;
};
