/** Fields as they are written: what a schema gives as examples, and as the lines of a record. */
import type * as v from 'valibot';
import type { FieldPath } from './field-path.ts';
import { isSchema, type Schema, schemaAt } from './schema-keys.ts';
import { blockLines, type FieldValue, isFieldValue } from './write-yaml.ts';

/** Which fields of a group an example has: those without which it is none, or every one. */
type Extent = 'needed' | 'all';

const isOptional = (schema: unknown): boolean => isSchema(schema) && schema.wrapped !== undefined;

/** The examples that a schema states itself. */
const stated = ({ pipe = [] }: Schema): readonly unknown[] => {
  const last = pipe.findLast((step): step is v.ExamplesAction<unknown, unknown[]> => {
    return isSchema(step) && 'type' in step && step.type === 'examples';
  });
  return last?.examples ?? [];
};

/** A group is shown by its own fields, so that nothing is said twice. */
const ofGroup = (entries: Readonly<Record<string, unknown>>, extent: Extent): FieldValue | undefined => {
  const needed = Object.keys(entries).filter((key) => !isOptional(entries[key]));
  const keys = extent === 'all' || needed.length === 0 ? Object.keys(entries) : needed;
  const shown = keys.flatMap((key) => {
    const one = examplesOf(entries[key], extent)[0];
    return one === undefined ? [] : [[key, one] as const];
  });
  return shown.length > 0 ? Object.fromEntries(shown) : undefined;
};

/** What a field may hold, by its own schema's examples or those of its parts; none where nobody gave any. */
export const examplesOf = (schema: unknown, extent: Extent): readonly FieldValue[] => {
  if (!isSchema(schema)) return [];
  const own = stated(schema).filter(isFieldValue);
  if (own.length > 0) return own;
  if (schema.wrapped !== undefined) return examplesOf(schema.wrapped, extent);
  if (schema.entries) {
    const group = ofGroup(schema.entries, extent);
    return group === undefined ? [] : [group];
  }
  if (schema.item !== undefined) return examplesOf(schema.item, extent).map((one) => [one]);
  // A piped schema spreads its first step, so it is found in itself.
  for (const one of [...(schema.pipe ?? schema.options ?? [])].reverse()) {
    const found = one === schema ? [] : examplesOf(one, extent);
    if (found.length > 0) return found;
  }
  return [];
};

/** The line of an example of the field at a path, by itself; none where it takes several. */
export const exampleLine = (schema: unknown, path: FieldPath): string | undefined => {
  const [example] = examplesOf(schemaAt(schema, path), 'needed');
  if (example === undefined) return undefined;
  const [line, ...more] = blockLines({ [String(path.at(-1))]: example });
  return more.length === 0 ? line : undefined;
};

/** The lines of an example of the field at a path, below the names that it stands under; none where there is none. */
export const exampleAt = (schema: unknown, path: FieldPath): readonly string[] => {
  const [key, ...inner] = path;
  const example = examplesOf(schemaAt(schema, path), 'needed')[0];
  if (typeof key !== 'string' || example === undefined) return [];
  const within = inner.reduceRight<FieldValue>(
    (value, step) => (typeof step === 'number' ? [value] : { [step]: value }),
    example,
  );
  return blockLines({ [key]: within });
};
