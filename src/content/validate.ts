/** A record's fields against its schema; each fault at the place of its key. */
import * as v from 'valibot';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import type { FrontMatter } from './record-file.ts';
import { keysAt } from './schema-keys.ts';

type Issue = v.BaseIssue<unknown>;

/** As the author would recognise it, cut to a line. */
const shown = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing');
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};

const pathOf = (issue: Issue): (string | number)[] =>
  (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));

const toDiagnostic = (issue: Issue, schema: unknown, record: FrontMatter): Diagnostic => {
  const path = pathOf(issue);
  const key = String(path.at(-1) ?? '');
  const parent = path.slice(0, -1);
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    const known = keysAt(schema, parent);
    const meant = nearest(key, known);
    return {
      weight: 'must fix',
      rule: 'unknown-key',
      location: record.locationOf(path),
      message: `Unexpected key \`${key}\`, expected ${meant ? `\`${meant}\`` : `one of ${known.join(', ')}`}`,
      fix: meant
        ? `Write \`${meant}\`, or take the line out`
        : 'Take the line out, or write it in the text below',
    };
  }
  if (issue.received === 'undefined' && issue.kind === 'schema') {
    return {
      weight: 'must fix',
      rule: 'missing-key',
      location: record.locationOf(parent),
      message: `Unexpected end of ${parent.length > 0 ? `\`${parent.join('.')}\`` : 'the record'}, expected the key \`${key}\``,
      fix: `Add \`${key}: …\``,
    };
  }
  if (issue.input === null) {
    return {
      weight: 'must fix',
      rule: 'empty-key',
      location: record.locationOf(path),
      message: `Unexpected empty \`${path.join('.')}\`, expected a value`,
      fix: 'Write a value, between double quotes if it begins with `#`; or take the line out',
    };
  }
  return {
    weight: 'must fix',
    // A key that the author chose, as an address, names no rule.
    rule:
      issue.path?.at(-1)?.origin !== 'key' && /^\p{L}[\p{L}\p{N}-]*$/u.test(key)
        ? key
        : String(parent.at(-1) ?? 'record'),
    location: record.locationOf(path),
    message: `Unexpected \`${shown(issue.input)}\`, expected ${issue.message}`,
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
  const faulty = new Set(issues.map((issue) => pathOf(issue)[0]));
  const sound = Object.fromEntries(Object.entries(record.data).filter(([key]) => !faulty.has(key)));
  const rest = v.safeParse(schema, sound);
  return {
    value: rest.success ? rest.output : undefined,
    diagnostics: issues.map((issue) => toDiagnostic(issue, schema, record)),
  };
};
