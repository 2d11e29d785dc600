/** Which lines of a file look like a record's fields, to somebody who knows the fields' names and no more. */
import * as v from 'valibot';
import { fieldLine, keysOf, STRANGE_BLANKS } from './record-lines.ts';
import { RECORD_SCHEMAS } from './record-schema.ts';

const DASHES = '‐‑‒–—―−﹘﹣－';
const BLANKS = new RegExp(`^[\\s${STRANGE_BLANKS}]+|[\\s${STRANGE_BLANKS}]+$`, 'g');
/** Two dashes of any sort or more, or a long one, which programs make of two; or a row of other signs. */
const MEANT_FENCE = new RegExp(
  `^(?:[-${DASHES}](?:[\\s${STRANGE_BLANKS}]*[-${DASHES}])+|[—―]|([*_=~+.])\\1{2,}|(?:\`{3,}|~{3,})\\w*)$`,
);

/** A line without the blanks round it, also those that only look like blanks. */
export const bareLine = (line: string): string => line.replace(BLANKS, '');

/** Whether nothing stands in a line. */
export const isEmptyLine = (line: string | undefined): boolean => line === undefined || bareLine(line) === '';

/** Whether a line is the one that stands before and after the fields. */
export const isFence = (line: string): boolean => line.startsWith('---') && line.trim() === '---';

/** Whether a line can only be meant for the one that stands before and after the fields. */
export const isMeantForFence = (line: string): boolean => MEANT_FENCE.test(bareLine(line));

/** Keys that a record of each sort has at its margin, in small letters. */
const KEYS = RECORD_SCHEMAS.map((schema) => new Set(keysOf(schema, []).map((key) => key.toLowerCase())));
const KNOWN = new Set(KEYS.flatMap((keys) => [...keys]));

/** Whether there is a sort of record that has all of these keys, in small letters. */
export const fitOneRecord = (keys: Iterable<string>): boolean => {
  const all = [...keys];
  return KEYS.some((known) => all.every((key) => known.has(key)));
};

/** Keys that no record of some sort goes without: where two of them stand together, there is a record. */
const NEEDED = new Set(
  RECORD_SCHEMAS.flatMap((schema) => v.safeParse(schema, {}).issues ?? []).map(({ path }) =>
    String(path?.[0]?.key).toLowerCase(),
  ),
);

/** The field that begins at the margin in a line, in small letters; undefined where none does. */
export const fieldAtMargin = (line: string): string | undefined => {
  const { lead, key } = fieldLine(line);
  const small = key?.toLowerCase();
  return lead === '' && small !== undefined && KNOWN.has(small) ? small : undefined;
};

/** Lines of fields that stand together. */
export interface FieldRun {
  /** First line of the fields, and the first after them that is neither a field nor empty. From 0. */
  readonly from: number;
  readonly to: number;
  /** The fields at the margin, in small letters, in order. */
  readonly keys: readonly string[];
  /** How many of them no record of some sort goes without. */
  readonly needed: number;
}

/** The fields that begin at a line or after empty ones; undefined where none do. */
export const fieldRunAt = (lines: readonly string[], at: number): FieldRun | undefined => {
  let from = at;
  while (from < lines.length && isEmptyLine(lines[from])) from += 1;
  const keys: string[] = [];
  let to = from;
  for (; to < lines.length; to++) {
    const line = lines[to] ?? '';
    if (isEmptyLine(line)) continue;
    if (isMeantForFence(line)) break;
    const key = fieldAtMargin(line);
    if (key !== undefined) keys.push(key);
    else if (keys.length === 0 || !/^(?:[ \t]|[-#]|\p{L}[\p{L}\p{N}_-]*:(?:\s|$))/u.test(line)) break;
  }
  return keys.length === 0
    ? undefined
    : { from, to, keys, needed: keys.filter((key) => NEEDED.has(key)).length };
};
