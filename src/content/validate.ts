/** A record's fields against its schema; each fault at the place of its key. */
import * as v from 'valibot';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import type { FrontMatter } from './record-file.ts';

type Issue = v.BaseIssue<unknown>;

/** As the author would recognise it, cut to a line. */
const shown = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing');
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};

const pathOf = (issue: Issue): (string | number)[] =>
  (issue.path ?? []).map((step) => step.key as string | number);

/** The keys that the object schema at a path knows. */
const knownKeys = (schema: unknown, path: readonly (string | number)[]): readonly string[] => {
  let here = schema as {
    entries?: Record<string, unknown>;
    wrapped?: unknown;
    item?: unknown;
    pipe?: unknown[];
    options?: unknown[];
  };
  const opened = (node: typeof here): typeof here => {
    if (node.entries || node.item) return node;
    if (node.wrapped) return opened(node.wrapped as typeof here);
    const inner = (node.pipe ?? node.options)?.map((one) =>
      one === node ? undefined : (one as typeof here),
    );
    for (const one of inner?.reverse() ?? []) {
      const found =
        one && (one.entries || one.item || one.wrapped || one.pipe || one.options) ? opened(one) : undefined;
      if (found?.entries || found?.item) return found;
    }
    return node;
  };
  // A piped schema spreads its first step, so its own `entries` and `pipe` both show; the last list step wins.
  for (const key of path) {
    const node = here.entries ? here : opened(here);
    here = (typeof key === 'number' ? node.item : node.entries?.[key]) as typeof here;
    if (!here) return [];
  }
  return Object.keys((here.entries ? here : opened(here)).entries ?? {});
};

const toDiagnostic = (issue: Issue, schema: unknown, record: FrontMatter): Diagnostic => {
  const path = pathOf(issue);
  const key = String(path.at(-1) ?? '');
  const parent = path.slice(0, -1);
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    const known = knownKeys(schema, parent);
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
    rule: key === '' || /^\d+$/.test(key) ? String(parent.at(-1) ?? 'record') : key,
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
  const issues = result.issues as readonly Issue[];
  const faulty = new Set(issues.map((issue) => pathOf(issue)[0]));
  const sound = Object.fromEntries(Object.entries(record.data).filter(([key]) => !faulty.has(key)));
  const rest = v.safeParse(schema, sound);
  return {
    value: rest.success ? rest.output : undefined,
    diagnostics: issues.map((issue) => toDiagnostic(issue, schema, record)),
  };
};
