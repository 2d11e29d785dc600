/** A record's fields against its schema; each fault at the place of its key. */
import * as v from 'valibot';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import { exampleAt, exampleLine } from './examples.ts';
import type { FieldPath } from './field-path.ts';
import { likelyValues } from './likely-values.ts';
import type { FrontMatter } from './record-file.ts';
import { fieldLine } from './record-lines.ts';
import { isOptional, keysAt } from './schema-keys.ts';
import { quoted } from './slip.ts';
import { scalarForms } from './write-yaml.ts';

type Issue = v.BaseIssue<unknown>;

/** Names of fields in one message that says what stands there. */
const MOST_NAMED = 5;

/** A message is one line, whatever was typed. */
const cut = (text: string): string => {
  const line = text.replace(/\s+/g, ' ');
  return line.length > 60 ? `${line.slice(0, 57)}…` : line;
};

/** As the author would recognise it, cut to a line. */
const shown = (value: unknown): string => {
  if (Array.isArray(value)) return value.length === 0 ? 'list without anything in it' : 'list';
  if (typeof value === 'object' && value !== null)
    return `lines ${Object.keys(value)
      .slice(0, MOST_NAMED)
      .map((key) => `\`${cut(key)}\``)
      .join(', ')}`;
  return `\`${cut(String(value))}\``;
};

const pathOf = (issue: Issue): (string | number)[] =>
  (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));

/** One thing may stand where a list is meant: then its author wrote no list. */
const asWritten = ({ data }: FrontMatter, path: FieldPath): FieldPath => {
  let here: unknown = data;
  return path.filter((step) => {
    if (step === 0 && !Array.isArray(here)) return false;
    here = typeof here === 'object' && here !== null ? Reflect.get(here, step) : undefined;
    return true;
  });
};

/** "`text` of no. 2 of `voices`": a place in a record in words. */
const placeInWords = (path: FieldPath): string =>
  [...path]
    .reverse()
    .map((step) => (typeof step === 'number' ? `no. ${step + 1}` : `\`${cut(step)}\``))
    .join(' of ');

/** From so many lines on an example says more than the message, which has the form already. */
const MANY_LINES = 2;

/** Lines that show the field at a path, or the nearest one above it that anybody gave an example of. */
const exampleFor = (schema: unknown, path: FieldPath): Pick<Diagnostic, 'written'> => {
  for (let length = path.length; length > 0; length--) {
    const lines = exampleAt(schema, path.slice(0, length));
    if (lines.length > 0) return lines.length >= MANY_LINES ? { written: { lines, invented: true } } : {};
  }
  return {};
};

const isUnknownKey = (issue: Issue): boolean => issue.type === 'strict_object' && issue.expected === 'never';

type Instead = Pick<Diagnostic, 'instead'>;

/** The line of a key with something else in it, where the key has a line of its own. */
const lineWith = (
  record: FrontMatter,
  path: FieldPath,
  change: (line: { readonly head: string; readonly value: string }) => string | undefined,
): Instead => {
  const { line, column } = record.locationOf(path);
  const written = fieldLine(record.text.split('\n')[line - 1] ?? '');
  if (written.key !== path.at(-1) || written.lead.length !== column - 1) return {};
  const changed = change(written);
  return changed === undefined ? {} : { instead: { from: line, to: line, lines: [changed] } };
};

/** A text in a list whose colon made a field of it, between quotes. */
const listedText = (record: FrontMatter, path: FieldPath, typed: unknown): Diagnostic | undefined => {
  const { line, column } = record.locationOf(path);
  const written = record.text.split('\n')[line - 1] ?? '';
  const text = written.slice(column - 1).trimEnd();
  const isOne = typeof typed === 'object' && typed !== null && Object.keys(typed).length === 1;
  if (!isOne || typeof path.at(-1) !== 'number' || !/^[^{["'].*:\s/.test(text)) return undefined;
  const lead = written.slice(0, column - 1);
  if (!/^\s*-\s+$/.test(lead)) return undefined;
  return {
    weight: 'must fix',
    rule: String(path.at(-2) ?? 'record'),
    location: { file: record.file, line, column: column + text.indexOf(':') },
    message: 'Unexpected colon in a text of the list, expected quotes round the text',
    fix: 'There is a colon in the text: put double quotes round it',
    instead: { from: line, to: line, lines: [lead + quoted(text)] },
  };
};

const withValueAt = (data: unknown, path: FieldPath, value: unknown): unknown => {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(data)) return data.map((one, i) => (i === step ? withValueAt(one, rest, value) : one));
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(
    Object.entries(data).map(([key, one]) => [
      key,
      key === String(step) ? withValueAt(one, rest, value) : one,
    ]),
  );
};

/** The first value that was likely meant and that the schema takes. */
const meantAt = <T extends v.GenericSchema>(
  schema: T,
  record: FrontMatter,
  path: FieldPath,
  typed: unknown,
): string | number | boolean | undefined => {
  const at = path.join('.');
  return likelyValues(typed).find((value) => {
    if (value === typed) return false;
    const { issues } = v.safeParse(schema, withValueAt(record.data, path, value));
    return !issues?.some((issue) => pathOf(issue).join('.') === at);
  });
};

const toDiagnostic = <T extends v.GenericSchema>(
  issue: Issue,
  schema: T,
  record: FrontMatter,
): Diagnostic => {
  const path = pathOf(issue);
  const key = String(path.at(-1) ?? '');
  const parent = path.slice(0, -1);
  if (isUnknownKey(issue)) {
    const known = keysAt(schema, parent);
    const meant = nearest(key, known);
    return {
      weight: 'must fix',
      rule: 'unknown-key',
      location: record.locationOf(path),
      message: `Unexpected \`${cut(key)}\`, expected ${meant ? `\`${meant}\`` : `one of ${known.join(', ')}`}: there is no field called \`${cut(key)}\`${parent.length > 0 ? ` in ${placeInWords(asWritten(record, parent))}` : ' here'}`,
      fix: meant
        ? `Write \`${meant}\`, or take the line out`
        : 'Take the line out, or write it in the text below',
      ...(meant && lineWith(record, path, ({ head, value }) => head.replace(key, meant) + value)),
    };
  }
  if (issue.received === 'undefined' && issue.kind === 'schema') {
    const line = exampleLine(schema, path);
    return {
      weight: 'must fix',
      rule: 'missing-key',
      location: record.locationOf(parent),
      message: `Unexpected ${parent.length > 0 ? placeInWords(asWritten(record, parent)) : 'record'} without \`${key}\`, expected a line for it`,
      adds: path.join('.'),
      fix: `Add ${line === undefined ? `\`${key}: …\`` : `a line, as \`${line}\``}`,
    };
  }
  if (issue.input === null) {
    return {
      weight: 'must fix',
      rule: 'empty-key',
      location: record.locationOf(path),
      message: `Unexpected empty ${placeInWords(asWritten(record, path))}, expected ${issue.message}`,
      fix: `Write it after the colon, between double quotes if it begins with \`#\`${isOptional(schema, path) ? '; or take the line out' : ''}`,
      ...exampleFor(schema, path),
      ...lineWith(record, path, ({ head, value }) => (/^#\S/.test(value) ? `${head}"${value}"` : undefined)),
    };
  }
  const listed = listedText(record, path, issue.input);
  if (listed) return listed;
  const meant = meantAt(schema, record, path, issue.input);
  return {
    weight: 'must fix',
    // A key that the author chose, as an address, names no rule.
    rule:
      issue.path?.at(-1)?.origin !== 'key' && /^\p{L}[\p{L}\p{N}-]*$/u.test(key)
        ? key
        : String(parent.at(-1) ?? 'record'),
    location: record.locationOf(path),
    message: `Unexpected ${shown(issue.input)}, expected ${issue.message}`,
    ...exampleFor(schema, path),
    ...(meant !== undefined &&
      lineWith(
        record,
        path,
        ({ head }) =>
          head + (scalarForms(meant, { form: /^#/.test(String(meant)) ? 'double' : 'plain' }, '\n')[0] ?? ''),
      )),
  };
};

/**
 * The record's values and every fault in them. Where the faults are in optional keys alone, the value is the
 * record without those keys, so that what else is wrong with it is found in the same run; nothing is published
 * from it, since every fault must be fixed.
 */
export const validate = <T extends v.GenericSchema>(
  schema: T,
  record: FrontMatter,
): { readonly value: v.InferOutput<T> | undefined; readonly diagnostics: readonly Diagnostic[] } => {
  if (!record.data) return { value: undefined, diagnostics: [] };
  const result = v.safeParse(schema, record.data);
  if (result.success) return { value: result.output, diagnostics: [] };
  const issues: readonly Issue[] = result.issues;
  const found = issues.map((issue) => ({ issue, diagnostic: toDiagnostic(issue, schema, record) }));
  // A needed key that stands there misspelt is found once.
  const misspelt = new Set(
    issues.filter(isUnknownKey).map((issue) => {
      const path = pathOf(issue);
      const parent = path.slice(0, -1);
      return [...parent, nearest(String(path.at(-1)), keysAt(schema, parent))].join('.');
    }),
  );
  const isMisspelt = (issue: Issue): boolean =>
    issue.received === 'undefined' && misspelt.has(pathOf(issue).join('.'));
  const faulty = new Set(issues.map((issue) => pathOf(issue)[0]));
  const sound = Object.fromEntries(Object.entries(record.data).filter(([key]) => !faulty.has(key)));
  const rest = v.safeParse(schema, sound);
  return {
    value: rest.success ? rest.output : undefined,
    diagnostics: found.filter(({ issue }) => !isMisspelt(issue)).map(({ diagnostic }) => diagnostic),
  };
};
