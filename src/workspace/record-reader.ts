/** Records' files, parsed once for each text they ever had. */
import type { ParsedFile } from '../content/record-file.ts';
import type { TextSource } from '../content/sources.ts';
import { digestOf } from '../text/digest.ts';
import { keepData, type Memory, recallData } from '../text/memory.ts';
import { survivesJson } from '../text/plain-data.ts';

/** A file of the workspace as it is asked for: its text is read from the disk only where somebody wants it. */
export interface RecordText {
  readonly path: string;
  /** SHA-256 of the text. */
  readonly hash: string;
  readonly read: () => Promise<string>;
}

/** A record's file, taken apart, with its text. */
export interface ParsedRecord extends TextSource {
  readonly parsed: ParsedFile;
}

const keyOf = ({ path, hash }: Pick<RecordText, 'path' | 'hash'>): string => digestOf('parsed', path, hash);

/** What is remembered of a file; undefined where it was not parsed yet. */
export const recallRecord = (
  file: Pick<RecordText, 'path' | 'hash'>,
  memory: Memory,
): ParsedRecord | undefined => {
  const known = recallData(memory, keyOf(file)) as Omit<ParsedRecord, 'path'> | undefined;
  return known && { path: file.path, ...known };
};

/** Whether a file's parse is remembered, without reading it. */
export const isRemembered = (file: Pick<RecordText, 'path' | 'hash'>, memory: Memory): boolean =>
  memory.has(keyOf(file));

/** The file taken apart, by the memory or by the parser, which is loaded only for a text that is new. */
export const parseRecord = async (file: RecordText, memory: Memory): Promise<ParsedRecord> => {
  const known = recallRecord(file, memory);
  if (known) return known;
  const { parseFile } = await import('../content/front-matter.ts');
  const text = await file.read();
  const parsed = parseFile({ path: file.path, text });
  // What does not come back as it was (a `.nan`, say) is parsed again each time.
  if (survivesJson(parsed)) keepData(memory, keyOf(file), { text, parsed });
  return { path: file.path, text, parsed };
};
