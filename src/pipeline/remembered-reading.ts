/** Which texts stand in which file, read once for each file and each set of texts. */
import { digestOf } from '../text/digest.ts';
import { keepData, type Memory, recallData } from '../text/memory.ts';
import { utf8Text } from '../text/utf8.ts';
import type { BuiltFile } from './build.ts';
import { type FileReading, heldBy } from './completeness/facts.ts';

/** Raise when the same file is read otherwise. */
const READING_VERSION = 1;

const isAnswer = (value: unknown, length: number): value is readonly boolean[] =>
  Array.isArray(value) && value.length === length && value.every((one) => typeof one === 'boolean');

/** A reading of a build's files. What it answers is remembered by the file's key. */
export const rememberedReading = (files: readonly BuiltFile[], memory: Memory): FileReading => {
  const byPlace = new Map(files.map((file) => [`${file.where}/${file.path}`, file]));
  return async ({ where, path }, sought) => {
    const file = byPlace.get(`${where}/${path}`);
    if (!file) return undefined;
    const key = digestOf('holds', READING_VERSION, file.key, sought);
    const before = recallData(memory, key);
    if (isAnswer(before, sought.length)) return before;
    const holds = heldBy({ path, text: utf8Text(await file.content()) }, sought);
    keepData(memory, key, holds);
    return holds;
  };
};
