/** Records that stand in the text below another's fields: each was meant for a file of its own. */
import { fieldAtMargin, fieldRunAt, isEmptyLine, isMeantForFence } from './field-lines.ts';

/** A record's lines, from 0, both of them its own. */
export interface SecondRecord {
  readonly from: number;
  readonly to: number;
  /** Its fields, in small letters. */
  readonly keys: readonly string[];
}

/** A line that opens or closes a block of code: what stands in one shows how a record is written. */
const CODE = /^ {0,3}(`{3,}|~{3,})/;

/** The line below the fields of a record that begins at a line; undefined where none does. */
const recordAt = (
  lines: readonly string[],
  at: number,
  isParted: boolean,
): { readonly to: number; readonly keys: readonly string[] } | undefined => {
  const line = lines[at] ?? '';
  const isOpened = isMeantForFence(line);
  if (!isOpened && !(isParted && fieldAtMargin(line) !== undefined)) return undefined;
  const run = fieldRunAt(lines, isOpened ? at + 1 : at);
  if (!run) return undefined;
  const isClosed = isMeantForFence(lines[run.to] ?? '');
  // Between two lines of dashes stands many a thing; with one of them alone it takes more to be a record.
  const isRecord =
    isOpened && isClosed ? run.keys.length > 1 && run.needed > 0 : (isOpened || isClosed) && run.needed > 1;
  return isRecord ? { to: run.to, keys: run.keys } : undefined;
};

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
      const record = recordAt(lines, at, at === from || isEmptyLine(lines[at - 1]));
      if (!record) continue;
      begun.push({ from: at, keys: record.keys });
      at = record.to - (isMeantForFence(lines[record.to] ?? '') ? 0 : 1);
    }
  }
  return begun.map((one, i) => {
    let to = (begun[i + 1]?.from ?? lines.length) - 1;
    while (isEmptyLine(lines[to])) to -= 1;
    return { ...one, to };
  });
};
