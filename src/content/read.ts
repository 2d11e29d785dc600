/** Every record of the content folder, as its author wrote it, with what is wrong with each. */

import type * as v from 'valibot';
import type { Checked, Diagnostic } from '../diagnostics/diagnostic.ts';
import { defined } from '../text/defined.ts';
import type { FileReader, FrontMatter } from './record-file.ts';
import {
  type BoxRecord,
  boxSchema,
  type CycleRecord,
  cycleSchema,
  type ItemRecord,
  itemSchema,
} from './schemas.ts';
import type { Sources, TextSource } from './sources.ts';
import { validate } from './validate.ts';

/** A record’s file with the record in it. */
export interface Written<T> extends FrontMatter {
  /** Undefined when a fault keeps it from being a record. */
  readonly value: T | undefined;
}

/** The records of one cycle’s folder. */
export interface WrittenCycle {
  /** The folder's name. */
  readonly id: string;
  readonly cycle?: Written<CycleRecord>;
  readonly items: readonly Written<ItemRecord>[];
}

/** All records of a content folder. */
export interface Records {
  readonly box?: Written<BoxRecord>;
  readonly cycles: readonly WrittenCycle[];
}

const CYCLE_FILE = /^cycles\/([^/]+)\/(.+)$/;
const MONTH = /^[1-9]\d{3}-(?:0[1-9]|1[0-2])$/;

/** All records, in the order of their paths, and every finding about them one by one. `readFile` takes a file apart. */
export const readRecords = (sources: Sources, readFile: FileReader): Checked<Records> => {
  const diagnostics: Diagnostic[] = [];
  const mustFix = (rule: string, file: string, message: string, fix: string): void => {
    diagnostics.push({ weight: 'must fix', rule, location: { file, line: 1, column: 1 }, message, fix });
  };
  const read = <T extends v.GenericSchema>(schema: T, source: TextSource): Written<v.InferOutput<T>> => {
    const record = readFile(source);
    const { value, diagnostics: faults } = validate(schema, record);
    diagnostics.push(...record.diagnostics, ...faults);
    return { ...record, value };
  };

  const boxSource = sources.texts.find((source) => source.path === 'box.md');
  if (!boxSource)
    mustFix(
      'box-missing',
      'box.md',
      'Unexpected content folder without `box.md`, expected the box’s own record',
      'Write box.md: its name, url, lang, timeZone, currency, description and author',
    );
  const box = boxSource && read(boxSchema, boxSource);

  const folders = new Map<string, TextSource[]>();
  for (const path of sources.paths) {
    const id = CYCLE_FILE.exec(path)?.[1];
    if (id !== undefined && !folders.has(id)) folders.set(id, []);
  }
  for (const source of sources.texts) folders.get(CYCLE_FILE.exec(source.path)?.[1] ?? '')?.push(source);

  const cycles: WrittenCycle[] = [];
  for (const [id, texts] of [...folders].sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (!MONTH.test(id)) {
      mustFix(
        'cycle-folder',
        `cycles/${id}`,
        `Unexpected folder \`${id}\`, expected a month, as 2026-03`,
        'Rename the folder to the month its box went out',
      );
      continue;
    }
    const cycleSource = texts.find((source) => source.path === `cycles/${id}/cycle.md`);
    if (!cycleSource)
      mustFix(
        'cycle-missing',
        `cycles/${id}/cycle.md`,
        'Unexpected cycle folder without `cycle.md`, expected the cycle’s record',
        'Write cycle.md: its theme, summary, shipped and reveal',
      );
    const items = texts
      .filter((source) => /^cycles\/[^/]+\/items\/[^/]+\.md$/.test(source.path))
      .sort((a, b) => (a.path < b.path ? -1 : 1))
      .map((source) => read(itemSchema, source));
    for (const { path } of texts) {
      if (path === `cycles/${id}/cycle.md` || /^cycles\/[^/]+\/items\/[^/]+\.md$/.test(path)) continue;
      if (path.endsWith('.md'))
        diagnostics.push({
          weight: 'look at',
          rule: 'file-unread',
          location: { file: path, line: 1, column: 1 },
          message: `Unexpected file, expected cycle.md or a file of cycles/${id}/items/; it was not read`,
          fix: 'Move it to items/, or keep notes outside the content folder',
        });
    }
    const cycle = cycleSource && read(cycleSchema, cycleSource);
    cycles.push(defined({ id, cycle, items }));
  }
  return { value: defined({ box, cycles }), diagnostics };
};
