/**
 * Where the fields of a record begin and end: between two lines `---`, or what was meant for them. What cannot be
 * mistaken is read as it was meant, so that one wrong line is one finding.
 */
import { isMap } from 'yaml';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import {
  bareLine,
  fieldAtMargin,
  fieldRunAt,
  fitOneRecord,
  isEmptyLine,
  isFence,
  isMeantForFence,
} from './field-lines.ts';
import { fieldLine } from './record-lines.ts';
import { parseFields } from './yaml-fields.ts';

/** A line that is not as it should be, without its file. */
export interface FenceFault extends Pick<Diagnostic, 'message' | 'fix' | 'instead'> {
  /** From 1. */
  readonly line: number;
  readonly column: number;
}

/** A file's lines, parted. */
export interface Fenced {
  /** The lines as they are to be read: as many as the file has. */
  readonly lines: readonly string[];
  /** The fields' first line and the first line after them, from 0; none where nobody can say. */
  readonly fields?: { readonly from: number; readonly to: number };
  /** First line of the text below the fields, and the first line that is no longer part of it. */
  readonly body: { readonly from: number; readonly to: number };
  readonly faults: readonly FenceFault[];
}

const FENCE = '---';
const ALONE =
  'Type three short dashes and nothing else in that line; some programs turn two dashes into a long one';
const AT_END = 'After the last field comes a line of three dashes and nothing else; the text begins below it';

/** What stands in a line, as a message may quote it: backticks cannot stand between backticks, and blanks are not seen. */
const shown = (line: string): string => {
  if (line.includes('`')) return 'backticks';
  const bare = bareLine(line);
  return bare === FENCE && line !== FENCE ? `blanks beside \`${bare}\`` : `\`${bare.slice(0, 40)}\``;
};

const fault = (
  line: number,
  message: string,
  fix: string,
  instead?: { readonly from: number; readonly to: number; readonly lines: readonly string[] },
  column = 1,
): FenceFault => ({
  line: line + 1,
  column,
  message,
  fix,
  ...(instead && { instead: { ...instead, from: instead.from + 1, to: instead.to + 1 } }),
});

const nextText = (lines: readonly string[], at: number): number => {
  let next = at;
  while (next < lines.length && isEmptyLine(lines[next])) next += 1;
  return next;
};

/** Lines before the fields that are looked at: more is a text and no record. */
const MOST_ABOVE = 20;

interface Opening {
  readonly from: number;
  /** What is to stand in the lines' places so that they are read as they were meant. */
  readonly lines: readonly string[];
  readonly faults: readonly FenceFault[];
}

/** The first line, or what was meant for it; undefined where there are no fields. */
const openingOf = (lines: readonly string[]): Opening | undefined => {
  const first = nextText(lines, 0);
  const line = lines[first] ?? '';
  const found = (from: number, ...faults: readonly FenceFault[]): Opening => ({ from, lines, faults });
  if (/^---[ \t]*(?:yaml[ \t]*)?$/.test(line)) {
    if (first === 0) return found(1);
    const message = `Unexpected ${first === 1 ? 'empty line' : 'empty lines'} before \`---\`, expected \`---\` on the first line`;
    return found(
      first + 1,
      fault(0, message, 'Take the empty lines out', { from: 0, to: first, lines: [FENCE] }),
    );
  }
  if (isMeantForFence(line)) {
    const again = nextText(lines, first + 1);
    const to = isFence(lines[again] ?? '') ? again : first;
    const message = `Unexpected ${shown(line)}, expected a first line of three dashes: \`---\``;
    return found(to + 1, fault(first, message, ALONE, { from: 0, to, lines: [FENCE] }));
  }
  const behind = /^---[ \t]*(\S.*)$/.exec(line)?.[1];
  if (behind !== undefined && (fieldAtMargin(behind) !== undefined || behind.startsWith('#'))) {
    const message = `Unexpected ${shown(behind)} behind the dashes, expected \`---\` alone in the first line`;
    const fix = 'Let the fields begin in a line of their own';
    return {
      from: first,
      lines: lines.with(first, behind),
      faults: [fault(first, message, fix, { from: 0, to: first, lines: [FENCE, behind] })],
    };
  }
  if (behind !== undefined) return undefined;
  if (fieldAtMargin(line) !== undefined) {
    const message = 'Unexpected fields without a line `---` before them, expected one on the first line';
    const fix = 'Begin the file with a line of three dashes and nothing else';
    return found(first, fault(first, message, fix, { from: 0, to: first, lines: [FENCE, line] }));
  }
  const fence = lines.findIndex(
    (one, i) =>
      i > first && i < first + MOST_ABOVE && isMeantForFence(one) && fieldRunAt(lines, i + 1)?.from === i + 1,
  );
  if (fence < 0) return undefined;
  const above = lines.slice(first, fence).filter((one) => !isEmptyLine(one));
  const message = `Unexpected text above the fields, expected \`---\` on the first line`;
  // Among the fields, what begins with `#` is a remark: nothing of it is lost.
  const areRemarks = above.every((one) => one.startsWith('# '));
  const fix = areRemarks
    ? 'Write it below the fields, or leave it among them as a remark, which no page shows'
    : 'Take it out, or write it below the fields';
  return found(
    fence + 1,
    fault(first, message, fix, areRemarks ? { from: 0, to: fence, lines: [FENCE, ...above] } : undefined),
  );
};

/** Whether a line stands in a text of several lines (`|` or `>`), where every line is what it says. */
const isInBlock = (lines: readonly string[], at: number): boolean => {
  const indent = (line: string): number => line.search(/[^ ]|$/);
  let depth = indent(lines[at] ?? '');
  for (let i = at - 1; i >= 0 && depth > 0; i--) {
    const line = lines[i] ?? '';
    if (line.trim() === '' || indent(line) >= depth) continue;
    if (/(?:^|[\s:-])[|>][-+\d]{0,2}(?:\s+#.*)?$/.test(line)) return true;
    depth = indent(line);
  }
  return false;
};

/** A line shorter than this was not broken because it was full. In characters. */
const FULL_LINE = 60;

/** Whether a line at the margin begins a text, and does not go on with the one above; undefined where nobody can say. */
const beginsText = (above: string, line: string): boolean | undefined => {
  if (/^\p{Ll}/u.test(line)) return false;
  return /[.!?…"'”’)\]}]\s*$/.test(above) || above.length < FULL_LINE ? true : undefined;
};

/** Where the fields end that no line of dashes ends. */
interface End {
  /** The last line of the fields. */
  readonly last: number;
  /** Where the text begins; undefined where there is none. */
  readonly text?: number;
  /** Whether an empty line stands between the two. */
  readonly isParted: boolean;
}

/** The end of the fields by what the lines are; undefined where nobody can say. */
const endOfFields = (lines: readonly string[], from: number, to: number): End | undefined => {
  let last = -1;
  /** What may be either, as a remark that may be a heading: what comes after decides. */
  let open: number | undefined;
  let text: number | undefined;
  for (let i = from; i < to && text === undefined; i++) {
    const line = lines[i] ?? '';
    if (isEmptyLine(line)) continue;
    const isParted = last >= 0 && isEmptyLine(lines[i - 1]);
    const isIn = /^[ \t]|^-[ \t]/.test(line) && fieldLine(lines[last] ?? '').value === '';
    const isUnsure = /^[ \t#]/.test(line) || /^\p{L}[\p{L}\p{N}_-]*:(?:\s|$)/u.test(line);
    if (fieldAtMargin(line) !== undefined || isIn) [last, open] = [i, undefined];
    else if (last < 0) return undefined;
    else if (open !== undefined || (isParted && isUnsure)) open ??= i;
    else if (isParted) text = i;
    else if (isUnsure || /^[-*•·–—]/.test(line)) last = i;
    else {
      const begins = beginsText(lines[last] ?? '', line);
      if (begins === undefined) return undefined;
      if (begins) text = i;
      else last = i;
    }
  }
  text = open ?? text;
  if (last < 0) return undefined;
  if (text === undefined) return { last, isParted: true };
  // A field further down: then the text stands among the fields, and nobody can say where they end.
  if (lines.slice(text, to).some((line) => fieldAtMargin(line) !== undefined)) return undefined;
  return { last, text, isParted: isEmptyLine(lines[text - 1]) };
};

/** Whether lines are fields without a fault. */
const areFields = (lines: readonly string[]): boolean => {
  const { contents, errors, warnings } = parseFields(lines.join('\n'));
  return isMap(contents) && errors.length + warnings.length === 0;
};

const missing = (lines: readonly string[], last: number): FenceFault => {
  const line = lines[last] ?? '';
  return fault(
    last,
    'Unexpected end of the fields without a line `---`, expected one after this line',
    AT_END,
    { from: last, to: last, lines: [line, FENCE] },
    line.length + 1,
  );
};

/** Parts a file into its fields and its text; undefined where it does not begin with fields. */
export const fencesOf = (written: readonly string[]): Fenced | undefined => {
  const opening = openingOf(written);
  if (!opening) return undefined;
  const { from } = opening;
  const lines = [...opening.lines];
  const faults = [...opening.faults];
  const parted = (to: number, body: number, end = lines.length): Fenced => ({
    lines,
    fields: { from, to },
    body: { from: body, to: end },
    faults,
  });

  const sound = new Map<number, boolean>();
  /** Whether the fields can be read as they stand, up to the next line `---`: then each of them is what it says. */
  const isSound = (at: number): boolean => {
    const closing = lines.findIndex((line, i) => i >= at && line.startsWith('---'));
    const known =
      sound.get(closing) ?? (isFence(lines[closing] ?? '') && areFields(lines.slice(from, closing)));
    sound.set(closing, known);
    return known;
  };

  const given = new Set<string>();
  for (let at = from; at < lines.length; at++) {
    const line = lines[at] ?? '';
    const key = fieldAtMargin(line);
    if (key !== undefined) given.add(key);
    const isTrue = isFence(line);
    const behind = isTrue || isMeantForFence(line) ? undefined : /^-{3,}[ \t]*(\S.*)$/.exec(line)?.[1];
    const isMeant = isMeantForFence(line) && !isInBlock(lines, at);
    if (!isTrue && !isMeant && behind === undefined) continue;

    const more = fieldRunAt(lines, at + 1);
    const isDivider =
      more !== undefined &&
      isMeantForFence(lines[more.to] ?? '') &&
      behind === undefined &&
      // A story may begin with a capital and a colon.
      (!isTrue || /^\p{Ll}/u.test(lines[more.from] ?? '')) &&
      more.keys.every((one) => !given.has(one)) &&
      fitOneRecord([...given, ...more.keys]);
    if (isDivider) {
      const message = `Unexpected ${shown(line)} between two fields, expected \`---\` after the last field alone`;
      faults.push(
        fault(at, message, 'Take the line out', { from: at, to: more.from, lines: [lines[more.from] ?? ''] }),
      );
      lines[at] = '';
      continue;
    }

    const end = endOfFields(lines, from, at);
    const isOdd = !isTrue || (end?.text !== undefined && end.isParted);
    const isRight = !isOdd || isSound(at);
    if (isRight && !isTrue) continue;
    if (!isRight && end?.text !== undefined && end.isParted) {
      const { last, text } = end;
      if (nextText(lines, at + 1) === lines.length) {
        const story = lines.slice(text, at);
        while (isEmptyLine(story.at(-1))) story.pop();
        const message = `Unexpected ${shown(line)} below the text, expected it between the fields and the text`;
        faults.push(fault(at, message, AT_END, { from: last + 1, to: at, lines: [FENCE, '', ...story] }));
        return parted(last + 1, last + 1, at);
      }
      // A line between two parts of the text.
      if (isEmptyLine(lines[at - 1])) {
        faults.push(missing(lines, last));
        return parted(last + 1, last + 1);
      }
    }

    if (isTrue) return parted(at, at + 1);
    if (behind !== undefined) {
      const message = `Unexpected ${shown(behind)} behind the dashes, expected \`---\` alone in the line after the fields`;
      const fix = 'Let the text begin in a line of its own';
      faults.push(fault(at, message, fix, { from: at, to: at, lines: [FENCE, behind] }));
      lines[at] = behind;
      return parted(at, at);
    }
    const again = nextText(lines, at + 1);
    const to = isFence(lines[again] ?? '') ? again : at;
    const message = `Unexpected ${shown(line)} after the fields, expected three dashes: \`---\``;
    faults.push(fault(at, message, ALONE, { from: at, to, lines: [FENCE] }));
    return parted(at, to + 1);
  }

  const end = endOfFields(lines, from, lines.length);
  if (end) {
    faults.push(missing(lines, end.last));
    return parted(end.last + 1, end.last + 1);
  }
  faults.push(
    fault(
      Math.min(from, lines.length - 1),
      'Unexpected fields without a line `---` after them, expected one after the last field',
      AT_END,
    ),
  );
  return { lines, body: { from: lines.length, to: lines.length }, faults };
};
