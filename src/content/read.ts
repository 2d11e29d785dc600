/** Every record of the content folder, as its author wrote it, with what is wrong with each. */
import type * as v from 'valibot';
import { type Checked, type Diagnostic, type Location, mustFix } from '../diagnostics/diagnostic.ts';
import { ITEM_FILE, MONTH } from './paths.ts';
import type { FileReader, FrontMatter } from './record-file.ts';
import {
  type BoxRecord,
  boxSchema,
  type CycleRecord,
  cycleSchema,
  type ItemRecord,
  itemSchema,
} from './schemas.ts';
import type { TextSource } from './sources.ts';
import { validate } from './validate.ts';

/** A record’s file with the record in it. */
export interface Written<T> extends FrontMatter {
  /** Undefined when a fault keeps it from being a record. */
  readonly value: T | undefined;
}

/** One that is a record. */
export interface Usable<T> extends Written<T> {
  readonly value: T;
}

/** Whether a file gave a record. */
export const isUsable = <T>(written: Written<T>): written is Usable<T> => written.value !== undefined;

/** The records of one cycle’s folder. */
export interface WrittenCycle {
  /** The folder's name. */
  readonly id: string;
  readonly cycle?: Written<CycleRecord>;
  readonly items: readonly Written<ItemRecord>[];
}

const byName = (a: string, b: string): number => (a < b ? -1 : 1);

/** A record and every finding about it, those of its form before those of its fields. */
const readRecord = <T extends v.GenericSchema>(
  schema: T,
  source: TextSource,
  readFile: FileReader,
): Checked<Written<v.InferOutput<T>>> => {
  const record = readFile(source);
  const { value, diagnostics } = validate(schema, record);
  return { value: { ...record, value }, diagnostics: [...record.diagnostics, ...diagnostics] };
};

/** The beginning of a file, or of the place where one should be. */
const beginning = (file: string): Location => ({ file, line: 1, column: 1 });

/** box.md, and every finding about it, also that it is missing. `readFile` takes a file apart. */
export const readBoxRecord = (
  texts: readonly TextSource[],
  readFile: FileReader,
): Checked<Written<BoxRecord> | undefined> => {
  const source = texts.find(({ path }) => path === 'box.md');
  if (source) return readRecord(boxSchema, source, readFile);
  const missing = mustFix(
    'box-missing',
    beginning('box.md'),
    'Unexpected content folder without `box.md`, expected the box’s own record',
    'Write box.md: its name, url, lang, timeZone, currency, description and author',
  );
  return { value: undefined, diagnostics: [missing] };
};

/**
 * The records of one folder of `cycles/`, and every finding about each of them.
 * Depends on the folder's name and its text files alone. Undefined, with a finding, where the folder is no month.
 */
export const readCycleRecords = (
  id: string,
  texts: readonly TextSource[],
  readFile: FileReader,
): Checked<WrittenCycle | undefined> => {
  if (!MONTH.test(id)) {
    const stray = mustFix(
      'cycle-folder',
      beginning(`cycles/${id}`),
      `Unexpected folder \`${id}\`, expected a month, as 2026-03`,
      'Rename the folder to the month its box went out',
    );
    return { value: undefined, diagnostics: [stray] };
  }
  const diagnostics: Diagnostic[] = [];
  const read = <T extends v.GenericSchema>(schema: T, source: TextSource): Written<v.InferOutput<T>> => {
    const record = readRecord(schema, source, readFile);
    diagnostics.push(...record.diagnostics);
    return record.value;
  };
  const file = `cycles/${id}/cycle.md`;
  const cycleSource = texts.find(({ path }) => path === file);
  if (!cycleSource)
    diagnostics.push(
      mustFix(
        'cycle-missing',
        beginning(file),
        'Unexpected cycle folder without `cycle.md`, expected the cycle’s record',
        'Write cycle.md: its theme, summary, shipped and reveal',
      ),
    );
  const items = texts
    .filter(({ path }) => ITEM_FILE.test(path))
    .sort((a, b) => byName(a.path, b.path))
    .map((source) => read(itemSchema, source));
  const cycle = cycleSource && read(cycleSchema, cycleSource);
  return { value: { id, ...(cycle && { cycle }), items }, diagnostics };
};
