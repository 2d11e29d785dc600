/** The parts of a record's schema, by the way to them: which keys each knows, and in which order. */

/** A part of a schema that holds others. Valibot's own types say less of what is inside than the values do. */
export interface Schema {
  readonly entries?: Readonly<Record<string, unknown>>;
  readonly wrapped?: unknown;
  readonly item?: unknown;
  readonly pipe?: readonly unknown[];
  readonly options?: readonly unknown[];
  readonly type?: string;
}

/** Whether a value is a schema, or a part of one. */
export const isSchema = (value: unknown): value is Schema => typeof value === 'object' && value !== null;

const holdsOthers = ({ entries, item, wrapped, pipe, options }: Schema): boolean =>
  [entries, item, wrapped, pipe, options].some(Boolean);

/** The object or list inside what makes it optional, checks it or offers it among others. */
const opened = (schema: Schema): Schema => {
  if (schema.entries || schema.item) return schema;
  if (isSchema(schema.wrapped)) return opened(schema.wrapped);
  // A piped schema spreads its first step, so it is found in itself; the last list step wins.
  for (const one of [...(schema.pipe ?? schema.options ?? [])].reverse()) {
    const found = isSchema(one) && one !== schema && holdsOthers(one) ? opened(one) : undefined;
    if (found?.entries || found?.item) return found;
  }
  return schema;
};

/** The part of a schema at a path; undefined where it takes any key. */
export const schemaAt = (schema: unknown, path: readonly (string | number)[]): unknown => {
  let here = schema;
  for (const step of path) {
    if (!isSchema(here)) return undefined;
    const { entries, item } = here.entries ? here : opened(here);
    here = typeof step === 'number' ? item : entries?.[step];
  }
  return here;
};

/** The same without what it is wrapped in. */
const openedAt = (schema: unknown, path: readonly (string | number)[]): Schema | undefined => {
  const here = schemaAt(schema, path);
  return isSchema(here) ? (here.entries ? here : opened(here)) : undefined;
};

/** The keys that a schema knows at a path, in the order in which it writes them; none where it takes any key. */
export const keysAt = (schema: unknown, path: readonly (string | number)[]): readonly string[] =>
  Object.keys(openedAt(schema, path)?.entries ?? {});

/** Whether a record may be without the field at a path. */
export const isOptional = (schema: unknown, path: readonly (string | number)[]): boolean => {
  const here = schemaAt(schema, path);
  return isSchema(here) && here.wrapped !== undefined;
};

/** Whether a schema has fields of any name at a path, as the beats of a recording. */
export const takesAnyKey = (schema: unknown, path: readonly (string | number)[]): boolean =>
  openedAt(schema, path)?.type === 'record';
