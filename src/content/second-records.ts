/** Records that stand in the text below another's fields: each was meant for a file of its own. */
import { type FieldRun, fieldAtMargin, fieldRunAt, isEmptyLine, isMeantForFence } from './field-lines.ts';

/** A record's lines, from 0, both of them its own. */
export interface SecondRecord {
  readonly from: number;
  readonly to: number;
  /** Its fields, in small letters. */
  readonly keys: readonly string[];
}

/** A line that opens or closes a block of code: what stands in one shows how a record is written. */
const CODE = /^ {0,3}(`{3,}|~{3,})/;

/** Fields below a line of dashes, or fields alone; undefined where a line begins neither. */
const runFrom = (lines: readonly string[], at: number, isParted: boolean): FieldRun | undefined => {
  const line = lines[at] ?? '';
  if (isMeantForFence(line)) return fieldRunAt(lines, at + 1);
  return isParted && fieldAtMargin(line) !== undefined ? fieldRunAt(lines, at) : undefined;
};

/** Between two lines of dashes stands many a thing; with one of them alone it takes more to be a record. */
const isRecord = ({ keys, needed }: FieldRun, isOpened: boolean, isClosed: boolean): boolean =>
  isOpened && isClosed ? keys.length > 1 && needed > 0 : (isOpened || isClosed) && needed > 1;

/** The records among a file's lines, in order. `from` is the first line of the text. */
export const secondRecords = (lines: readonly string[], from: number): readonly SecondRecord[] => {
  const begun: { readonly from: number; readonly keys: readonly string[] }[] = [];
  let code: string | undefined;
  for (let at = from; at < lines.length; at++) {
    const mark = CODE.exec(lines[at] ?? '')?.[1];
    if (code !== undefined) {
      if (mark?.startsWith(code)) code = undefined;
    } else if (mark !== undefined) code = mark;
    else {
      const run = runFrom(lines, at, at === from || isEmptyLine(lines[at - 1]));
      if (!run) continue;
      const isClosed = isMeantForFence(lines[run.to] ?? '');
      const isFound = isRecord(run, isMeantForFence(lines[at] ?? ''), isClosed);
      if (isFound) begun.push({ from: at, keys: run.keys });
      // What follows is looked at once: fewer fields of the same are no record either.
      at = isFound && isClosed ? run.to : run.to - 1;
    }
  }
  return begun.map((one, i) => {
    let to = (begun[i + 1]?.from ?? lines.length) - 1;
    while (isEmptyLine(lines[to])) to -= 1;
    return { ...one, to };
  });
};
