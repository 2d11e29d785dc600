/** Remembers how records' files were parsed, so that only what was changed is parsed again. */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import type { ParsedFile } from '../content/record-file.ts';
import type { TextSource } from '../content/sources.ts';
import { writeWhole } from './write-whole.ts';

interface Remembered {
  readonly version: string;
  readonly files: Readonly<Record<string, { readonly hash: string; readonly parsed: ParsedFile }>>;
}

export interface RecordMemory {
  readonly known: (source: TextSource) => ParsedFile | undefined;
  /** Remembers what there is now, and forgets what is no more. */
  readonly keep: (texts: readonly TextSource[], parsed: ReadonlyMap<string, ParsedFile>) => Promise<void>;
}

const hashOf = (text: string): string => createHash('sha256').update(text).digest('base64url');

/** What does not come back as it was (a `.nan`, say) is not remembered. */
const survives = (parsed: ParsedFile): boolean =>
  isDeepStrictEqual(JSON.parse(JSON.stringify(parsed)), parsed);

/** The memory in the folder `cache`; empty when there is none, or none of this version. */
export const readRecordMemory = async (cache: string, version: string): Promise<RecordMemory> => {
  const file = join(cache, 'records.json');
  let before: Remembered['files'] = {};
  try {
    const remembered = JSON.parse(await readFile(file, 'utf8')) as Remembered;
    if (remembered.version === version) before = remembered.files;
  } catch {
    // Nothing that can be used: everything is parsed.
  }
  return {
    known: ({ path, text }) => {
      const entry = Object.hasOwn(before, path) ? before[path] : undefined;
      return entry?.hash === hashOf(text) ? entry.parsed : undefined;
    },
    keep: async (texts, parsed) => {
      const here = texts.filter(({ path }) => parsed.has(path));
      const isFresh = ({ path }: TextSource): boolean => parsed.get(path) !== before[path]?.parsed;
      if (!here.some(isFresh) && here.length === Object.keys(before).length) return;
      const files = Object.fromEntries(
        here
          .filter((source) => !isFresh(source) || survives(parsed.get(source.path) as ParsedFile))
          .map(({ path, text }) => [path, { hash: hashOf(text), parsed: parsed.get(path) as ParsedFile }]),
      );
      const remembered: Remembered = { version, files };
      await writeWhole(file, JSON.stringify(remembered));
    },
  };
};
