/** Slips of how lines begin, end and belong together. */
import { depthOf, fieldLine, keysOf, pathAt, STRANGE_BLANKS } from './record-lines.ts';
import {
  BULLET,
  eachLine,
  isBullet,
  type Mend,
  named,
  oneLine,
  quoted,
  runAt,
  type Slip,
  unquoted,
} from './slip.ts';

const LEADING = new RegExp(`^[\\s${STRANGE_BLANKS}-]*`);
const STRANGE = new RegExp(`[${STRANGE_BLANKS}]`);
const STRANGE_AFTER = new RegExp(`([:-])[ \\t]*[${STRANGE_BLANKS}][\\s${STRANGE_BLANKS}]*`);

export const strangeBlanks: Slip = (lines, at) => {
  const mend = (line: string): string => {
    const lead = LEADING.exec(line)?.[0] ?? '';
    const spaces = lead.replace(/[\u200b\u2060\ufeff]/g, '').replace(/[^\S ]/g, ' ');
    return spaces + line.slice(lead.length).replace(STRANGE_AFTER, '$1 ');
  };
  return eachLine(
    lines,
    at,
    (line) => STRANGE.test(line) && mend(line) !== line,
    mend,
    'Unexpected blank that only looks like a space, expected a space',
    'The blanks at the beginning or after the colon were pasted from elsewhere: type them anew, as spaces',
  );
};

export const tabs: Slip = (lines, at) => {
  const mend = (line: string): string => {
    const lead = /^[\s-]*/.exec(line)?.[0] ?? '';
    return lead.replaceAll('\t', '  ') + line.slice(lead.length);
  };
  return eachLine(
    lines,
    at,
    (line) => /^[ -]*\t/.test(line),
    mend,
    'Unexpected tab at the beginning of the line, expected spaces',
    'Take out the tab and put two spaces for each step to the right',
  );
};

export const remarks: Slip = (lines, at) => {
  const line = lines[at] ?? '';
  const [, lead = '', slashed, marked] = /^(\s*)(?:\/\/(.*)\r?|<!--(.*)-->\s*)$/.exec(line) ?? [];
  const remark = (slashed ?? marked)?.trim();
  if (remark === undefined) return [];
  return oneLine(
    at,
    `${lead}# ${remark}`,
    lead.length + 1,
    'Unexpected remark, expected `#` before it',
    'A remark among the fields begins with `#` and a space',
  );
};

const BOLD_KEY = /^(\s*(?:-\s+)?)(\*\*|\*|__|_)(\p{L}[\p{L}\p{N}_-]*?)(?:\2\s*:|\s*:\2)\s*(.*)$/u;

export const boldKey: Slip = (lines, at) => {
  const [, lead = '', , key = '', rest = ''] = BOLD_KEY.exec(lines[at] ?? '') ?? [];
  if (key === '') return [];
  return oneLine(
    at,
    `${lead}${key}: ${rest}`,
    lead.length + 1,
    `Unexpected stars round \`${key}\`, expected the field’s name alone`,
    'Take the stars out',
  );
};

export const bullets: Slip = (lines, at) =>
  eachLine(
    lines,
    at,
    isBullet,
    (line) => line.replace(BULLET, '$1- '),
    'Unexpected sign before a thing of a list, expected a dash and a space: `- `',
    'Each thing of a list has a line that begins with a dash and a space',
  );

export const missingDashes: Slip = (lines, at) => {
  const isText = (line: string): boolean => {
    const { lead, key, value } = fieldLine(line);
    return /^[ \t]+$/.test(lead) && key === undefined && value !== '';
  };
  const run = runAt(lines, at, isText);
  const above = run && fieldLine(lines[run.from - 1] ?? '');
  if (!run || above?.key === undefined || above.value !== '') return [];
  return eachLine(
    lines,
    at,
    isText,
    (line) => line.replace(/^([ \t]+)/, '$1- '),
    `Unexpected lines under \`${above.key}\`, expected a dash and a space before each: \`- \``,
    'Each thing of a list has a line that begins with a dash and a space',
  );
};

/** A second picture or voice that begins without a dash of its own: its first key stands twice. */
export const missingDash: Slip = (lines, at) => {
  const { lead, key } = fieldLine(lines[at] ?? '');
  if (key === undefined || lead.length === 0) return [];
  const isInside = (line: string): boolean => depthOf(line) >= lead.length && line.trim() !== '';
  const run = runAt(lines, at, isInside);
  const first = run && fieldLine(lines[run.from] ?? '');
  if (!run || first?.key !== key || run.from === at) return [];
  const message = `Unexpected second \`${key}\` in one thing of a list, expected a dash before each thing: \`- \``;
  const fix = 'Where the next thing begins, put a dash and a space';
  if (first.lead.includes('-'))
    return oneLine(at, `${lead.slice(0, -2)}- ${(lines[at] ?? '').slice(lead.length)}`, 1, message, fix);
  const begins = (line: string): boolean => fieldLine(line).key === key && depthOf(line) === lead.length;
  const mended = lines
    .slice(run.from, run.to + 1)
    .map((line) => (begins(line) ? `${lead}- ${line.slice(lead.length)}` : `  ${line}`));
  return [{ ...run, lines: mended, line: at, column: lead.length + 1, message, fix }];
};

const COLON =
  /^([ \t]*(?:-[ \t]+)*)(\p{L}[\p{L}\p{N}_-]*)(\s*[：=]\s*|:(?=\S)|[ \t]+(?:[-–—][ \t]+)?)(\S.*)$/u;

export const colon: Slip = (lines, at, schema) => {
  const line = lines[at] ?? '';
  const [, lead = '', key = '', sign = '', rest = ''] = COLON.exec(line) ?? [];
  if (
    key === '' ||
    !keysOf(schema, pathAt(lines, at).slice(0, -1))
      .concat(keysOf(schema, pathAt(lines, at)))
      .includes(key)
  )
    return [];
  const message =
    sign === ':'
      ? `Unexpected \`${key}:\` without a space after it, expected \`${key}: \``
      : `Unexpected \`${key}\` without a colon, expected \`${key}: \``;
  const fix = 'Between a field’s name and its text stand a colon and a space';
  return [rest, quoted(rest)].flatMap((text) =>
    oneLine(at, `${lead}${key}: ${text}`, lead.length + 1, message, fix),
  );
};

/** How far in the lines around stand: what a line that stands between two depths may have been meant to. */
const depthsAround = (lines: readonly string[], at: number): readonly number[] => {
  const around = [...lines.slice(Math.max(0, at - 8), at).reverse(), ...lines.slice(at + 1, at + 3)];
  const depths = around
    .filter((line) => line.trim() !== '')
    .flatMap((line) => [depthOf(line), line.search(/\S/)]);
  return [...new Set([...depths, 0])];
};

export const indentation: Slip = (lines, at) => {
  const line = lines[at] ?? '';
  if (line.trim() === '') return [];
  const begins = line.search(/\S/);
  const run = runAt(lines, at, (one) => one.trim() !== '' && one.search(/\S/) === begins);
  return depthsAround(lines, at)
    .filter((depth) => depth !== begins)
    .flatMap((depth): readonly Mend[] => {
      const moved = (one: string): string => ' '.repeat(depth) + one.slice(begins);
      const message = `Unexpected ${begins} ${begins === 1 ? 'blank' : 'blanks'} before the line, expected ${depth}`;
      const fix = 'What belongs together begins one under the other';
      const single = oneLine(at, moved(line), begins + 1, message, fix);
      if (!run || run.from === run.to) return single;
      const mended = lines.slice(run.from, run.to + 1).map(moved);
      return [...single, { ...run, lines: mended, line: run.from, column: begins + 1, message, fix }];
    });
};

/** Lines that a text may go on over. */
const MOST_JOINED = 12;

/** A text that goes on at the margin: it is written on one line. */
export const goesOn: Slip = (lines, at, schema) => {
  const around = [0, 1].flatMap((back) => keysOf(schema, pathAt(lines, at - back).slice(0, -1)));
  const known = new Set([...keysOf(schema, []), ...around]);
  const isNext = (i: number): boolean => {
    const { lead, key, value } = fieldLine(lines[i] ?? '');
    return value !== '' && !lead.includes('-') && !(key !== undefined && known.has(key));
  };
  if (!isNext(at)) return [];
  let from = at - 1;
  while (from > 0 && isNext(from) && at - from < MOST_JOINED) from -= 1;
  const begin = fieldLine(lines[from] ?? '');
  if (begin.value === '' || (begin.key === undefined && !begin.lead.includes('-'))) return [];
  const joined: Mend[] = [];
  for (let to = at; to < Math.min(lines.length, at + MOST_JOINED) && isNext(to); to++) {
    const text = lines
      .slice(from + 1, to + 1)
      .map((line) => line.trim())
      .join(' ');
    const start = /^["']/.test(begin.value) ? unquoted(begin.value) : begin.value;
    joined.push({
      from,
      to,
      lines: [`${begin.head}${quoted(`${start} ${text}`)}`],
      line: at,
      column: 1,
      message: `Unexpected line without a field’s name, expected ${named(begin.key)} on one line`,
      fix: 'A text is written on one line, however long, between double quotes',
    });
  }
  return joined;
};
