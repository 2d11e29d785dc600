/**
 * Values as YAML that people would write. Each function gives the forms that may do, the plainest first and one that
 * always does last: whoever puts one into a file reads it back there, because only the surroundings decide.
 */
import { holdsNumbers } from './yaml-fields.ts';

/** What a field may hold. */
export type FieldValue = FieldScalar | readonly FieldValue[] | { readonly [key: string]: FieldValue };

/** Null is a key without a value. */
type FieldScalar = string | number | boolean | null;

/** Whether a value is a single one, neither list nor map. */
export const isFieldScalar = (value: FieldValue): value is FieldScalar =>
  typeof value !== 'object' || value === null;
/** Whether a value is made of what fields hold, as is all that YAML's core schema reads. */
export const isFieldValue = (value: unknown): value is FieldValue => {
  if (typeof value !== 'object') return ['string', 'number', 'boolean'].includes(typeof value);
  return value === null || Object.values(value).every(isFieldValue);
};

/** Whether a value is a list. */
export const isFieldList = (value: FieldValue): value is readonly FieldValue[] => Array.isArray(value);

/** How a scalar stood in the file: plain, between quotes of a sort, or as a block (`|`, `>`) with its text as written. */
export type ScalarForm =
  | { readonly form: 'plain' | 'single' | 'double' }
  | { readonly form: 'block'; readonly written: string; readonly indent: string };

/** Signs that JSON leaves alone and that not every reader of YAML takes, or takes for the end of a line. */
const UNPRINTABLE = /[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/g;

/** Between double quotes, on one line, whatever it is. YAML 1.2 §5.7 knows every escape of JSON. */
const doubleQuoted = (text: string): string =>
  JSON.stringify(text).replace(
    UNPRINTABLE,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

const singleQuoted = (text: string): string => `'${text.replaceAll("'", "''")}'`;

/** Text as blocks wrap it: lines of at most `width`, broken at single spaces, which fold to spaces again. */
const wrapped = (line: string, width: number): readonly string[] => {
  const lines: string[] = [];
  for (const word of line.split(/(?<=\S) (?=\S)/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
};

const BLOCK_HEADER = /^([|>])([1-9]?)[+-]?([1-9]?)([^\r\n]*)/;

/** A block like the one that stood there, folded at the same width where it was folded; none that would need more. */
const blocks = (text: string, written: string, indent: string, eol: string): readonly string[] => {
  const [, sign = '|', before = '', after = '', comment = ''] = BLOCK_HEADER.exec(written) ?? [];
  const body = text.replace(/\n$/, '');
  if (body === '' || body.endsWith('\n') || body.includes('\r')) return [];
  const header = (of: string): string => `${of}${before}${after}${text === body ? '-' : ''}${comment}`;
  const block = (of: string, lines: readonly string[]): string =>
    [header(of), ...lines.map((line) => (line === '' ? '' : indent + line))].join(eol);
  const literal = block('|', body.split('\n'));
  if (sign === '|') return [literal];
  const width =
    Math.max(
      ...written
        .split(/\r?\n/)
        .slice(1)
        .map((line) => line.length),
    ) - indent.length;
  // One line break folds to a space, so what is to stay takes one more.
  const folded = body
    .replace(/\n+/g, (breaks) => `\n${breaks}`)
    .split('\n')
    .flatMap((line) => wrapped(line, width));
  return [block('>', folded), literal];
};

/** The forms of one scalar, in the form that stood there where it will do. */
export const scalarForms = (value: FieldScalar, was: ScalarForm, eol: string): readonly string[] => {
  if (typeof value !== 'string') return [String(value)];
  const double = doubleQuoted(value);
  if (was.form === 'double' || value === '') return [double];
  if (was.form === 'block') return [...blocks(value, was.written, was.indent, eol), double];
  if (/[\r\n]/.test(value)) return [double];
  return [was.form === 'single' ? singleQuoted(value) : value, double];
};

/** A word or sentence that is text wherever it stands, also within braces. */
const PLAIN = /^[\p{L}\p{N}](?:[\p{L}\p{M}\p{N} _.;+*/()’‘“”–—…%&!?'-]|:(?=[\p{L}\p{N}/]))*$/u;
/** One that is text on a line of its own, where commas and brackets mean nothing after the first sign. */
const PLAIN_ON_LINE = /^[\p{L}\p{N}](?:[^\p{C}\p{Zl}\p{Zp}:#]|:(?=[\p{L}\p{N}/])|(?<=\S)#)*$/u;
const OTHER_THAN_TEXT = /^(?:true|false|null|[-+.\d].*)$/i;

/** Within a list or map, where nobody has written anything yet. */
const innerScalar = (value: FieldScalar, key: string, plain = PLAIN): string => {
  if (typeof value !== 'string') return String(value);
  const isDigits = /^\d[\d.]*$/.test(value) && !holdsNumbers(key);
  // A number has no blank in it, and no hyphen after digits; a time of day is none either, but looks like one.
  const isNoNumber = /^\d{4}-\d\d-/.test(value) || (plain === PLAIN_ON_LINE && /^\d[^\s:]* /.test(value));
  const text = !OTHER_THAN_TEXT.test(value) || isDigits || isNoNumber;
  return text && plain.test(value) && !value.endsWith(' ') ? value : doubleQuoted(value);
};

/** A key as it is written. */
export const keyText = (key: string): string =>
  /^[\p{L}_][\p{L}\p{M}\p{N}_./-]*$/u.test(key) && !/^(?:null|true|false)$/i.test(key)
    ? key
    : doubleQuoted(key);

/** On one line: `[a, b]`, `{key: a}`. `key` is the one that it stands under. */
export const flowText = (value: FieldValue, key = ''): string => {
  if (isFieldScalar(value)) return innerScalar(value, key);
  if (isFieldList(value)) return `[${value.map((one) => flowText(one)).join(', ')}]`;
  return `{${Object.entries(value)
    .map(([name, one]) => `${keyText(name)}: ${flowText(one, name)}`)
    .join(', ')}}`;
};

/** Whether a value has lines of its own in a block. What is empty can only be written on one line. */
const hasLines = (value: FieldValue): boolean => !isFieldScalar(value) && Object.keys(value).length > 0;

/** Words, colours or moments and no sentence: such a list is read at a glance between brackets. */
const WORDS = /^[\p{L}\p{N}][\p{L}\p{M}\p{N} -]*$|^#[\da-f]+$|^\d[\dT:-]*$/u;
const isWords = (value: FieldValue): boolean =>
  isFieldList(value) && value.every((one) => typeof one === 'string' && WORDS.test(one));

/** A list or map as lines without indentation, a key a line; within a map, a list of words stays on one line. */
export const blockLines = (value: FieldValue, key = ''): readonly string[] => {
  if (isFieldScalar(value)) return [innerScalar(value, key, PLAIN_ON_LINE)];
  if (!hasLines(value)) return [flowText(value, key)];
  if (isFieldList(value))
    return value.flatMap((one) => blockLines(one).map((line, i) => (i === 0 ? `- ${line}` : `  ${line}`)));
  return Object.entries(value).flatMap(([name, one]) =>
    hasLines(one) && !isWords(one)
      ? [`${keyText(name)}:`, ...blockLines(one, name).map((line) => `  ${line}`)]
      : [`${keyText(name)}: ${isFieldScalar(one) ? blockLines(one, name)[0] : flowText(one, name)}`],
  );
};
