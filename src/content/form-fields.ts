/** A record's schema as the fields of a form: what each is, how it is filled in, and what may be chosen. */
import * as v from 'valibot';
import { examplesOf } from './examples.ts';
import type { FieldPath } from './field-path.ts';
import { colours, date } from './fields.ts';
import { schemaOf } from './record-schema.ts';
import { isSchema } from './schema-keys.ts';
import { type FieldValue, isFieldScalar } from './write-yaml.ts';

/**
 * How a field is filled in. `list`: a text a line; `lines`: a name, a colon and a text a line; `group`: fields of its own;
 * `groups`: any number of such; `text or group`: as its value stands, a text where there is none.
 */
export type FormSort =
  | 'text'
  | 'number'
  | 'yes or no'
  | 'choice'
  | 'choices'
  | 'date'
  | 'colours'
  | 'list'
  | 'lines'
  | 'group'
  | 'groups'
  | 'text or group';

/** A field of a form. */
export interface FormField {
  /** From the record to it; `0` stands for each of a list. */
  readonly path: FieldPath;
  readonly key: string;
  readonly sort: FormSort;
  readonly isNeeded: boolean;
  /** What it is. */
  readonly about: string;
  /** How it is written: the words of the finding that it would be where it is written otherwise. */
  readonly expected: string;
  readonly example?: string;
  /** Whether it holds sentences. */
  readonly isLong: boolean;
  readonly choices?: readonly string[];
  readonly fields?: readonly FormField[];
}

const isSentence = (text: string): boolean => text.length > ONE_LINE || /[.?!]$/.test(text);

interface Part {
  readonly type?: string;
  readonly kind?: string;
  readonly wrapped?: unknown;
  readonly entries?: Readonly<Record<string, unknown>>;
  readonly item?: unknown;
  readonly pipe?: readonly unknown[];
  readonly options?: readonly unknown[];
  readonly message?: unknown;
}

/** Text longer than this is a sentence, and gets lines. In characters. */
const ONE_LINE = 40;

const partOf = (schema: unknown): Part => (isSchema(schema) ? (schema as Part) : {});

/** The schema and all that it was piped from, the outermost first. */
const layersOf = (schema: unknown): readonly Part[] => {
  const part = partOf(schema);
  if (part.wrapped !== undefined) return layersOf(part.wrapped);
  const [first, ...steps] = part.pipe ?? [];
  const later = steps.filter((step) => partOf(step).kind === 'schema').reverse();
  return [
    part,
    ...later.flatMap(layersOf),
    ...(first !== undefined && first !== schema ? layersOf(first) : []),
  ];
};

const wordsOf = (message: unknown): string | undefined =>
  typeof message === 'function'
    ? String(message({ input: '' }))
    : typeof message === 'string'
      ? message
      : undefined;

/** What was expected where a field holds something else. */
const expectedOf = (schema: unknown): string => {
  const part = partOf(schema);
  if (part.wrapped !== undefined) return expectedOf(part.wrapped);
  for (const step of [...(part.pipe ?? [])].reverse()) {
    const { kind, message } = partOf(step);
    const words = kind === 'validation' ? wordsOf(message) : undefined;
    if (words) return words;
    if (kind === 'schema' && step !== schema) return expectedOf(step);
  }
  if (part.item !== undefined) return expectedOf(part.item);
  return wordsOf(part.message) ?? '';
};

const entriesOf = (schema: unknown): Part['entries'] =>
  layersOf(schema).find(({ type, entries }) => entries !== undefined && type !== 'picklist')?.entries;

const choicesOf = (schema: unknown): readonly string[] | undefined =>
  layersOf(schema)
    .find(({ type }) => type === 'picklist')
    ?.options?.map(String);

/** What a list is before its things are looked at. */
const isAnything = (schema: unknown): boolean => {
  const { type, pipe } = partOf(schema);
  return type === 'unknown' && pipe === undefined;
};

const itemOf = (schema: unknown): unknown =>
  layersOf(schema).find(({ type, item }) => type === 'array' && item !== undefined && !isAnything(item))
    ?.item;

interface Shape {
  readonly sort: FormSort;
  readonly choices?: readonly string[];
  readonly inner?: unknown;
}

const shapeOf = (schema: unknown): Shape => {
  const layers = layersOf(schema);
  const is = (one: unknown): boolean => layers.some((layer) => layer === one);
  if (is(date)) return { sort: 'date' };
  if (is(colours)) return { sort: 'colours' };
  if (entriesOf(schema)) return { sort: 'group', inner: schema };
  const item = itemOf(schema);
  if (item !== undefined) {
    if (entriesOf(item)) return { sort: 'groups', inner: item };
    const choices = choicesOf(item);
    return choices ? { sort: 'choices', choices } : { sort: 'list' };
  }
  const choices = choicesOf(schema);
  if (choices) return { sort: 'choice', choices };
  const types = new Set(layers.map(({ type }) => type));
  if (types.has('boolean')) return { sort: 'yes or no' };
  if (types.has('record')) return { sort: 'lines' };
  if (types.has('number') && !types.has('union')) return { sort: 'number' };
  const options = layers.find(({ type }) => type === 'union')?.options ?? [];
  const grouped = options.find((option) => entriesOf(option) !== undefined);
  if (grouped !== undefined) return { sort: 'text or group', inner: grouped };
  return options.some((option) => itemOf(option) !== undefined) ? { sort: 'list' } : { sort: 'text' };
};

const exampleIn = (value: FieldValue | undefined): string | undefined => {
  if (value === undefined || value === null) return undefined;
  if (isFieldScalar(value)) return String(value);
  if (Array.isArray(value) && value.every(isFieldScalar)) return value.map(String).join('\n');
  return undefined;
};

const fieldsIn = (schema: unknown, before: FieldPath): readonly FormField[] =>
  Object.entries(entriesOf(schema) ?? {}).map(([key, whole]) => {
    const isNeeded = partOf(whole).wrapped === undefined;
    const own = isNeeded ? whole : partOf(whole).wrapped;
    const { sort, choices, inner } = shapeOf(own);
    const path = [...before, key];
    const example = exampleIn(examplesOf(own, 'needed')[0]);
    return {
      path,
      key,
      sort,
      isNeeded,
      about: isSchema(own) ? (v.getDescription(own as v.GenericSchema) ?? '') : '',
      expected: expectedOf(own),
      isLong: sort === 'text' && isSentence(example ?? ''),
      ...(example !== undefined && { example }),
      ...(choices && { choices }),
      ...(inner !== undefined && { fields: fieldsIn(inner, sort === 'groups' ? [...path, 0] : path) }),
    };
  });

const known = new Map<unknown, readonly FormField[]>();

/** The fields of a record's form, in the order of its schema; `path` is the record's in the content folder. */
export const formFieldsOf = (path: string): readonly FormField[] => {
  const schema = schemaOf(path);
  const fields = known.get(schema) ?? fieldsIn(schema, []);
  known.set(schema, fields);
  return fields;
};
