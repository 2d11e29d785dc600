/** What a form shows of a record's values, and what was typed into it as changes of single keys. */
import { type FieldPath, isSameValue, valueAt } from './field-path.ts';
import type { FormField } from './form-fields.ts';
import { type FieldValue, isFieldList, isFieldScalar } from './write-yaml.ts';
import { holdsNumbers } from './yaml-fields.ts';

/** A key of a record that was changed in a form; no value takes it out. */
export interface FormChange {
  readonly path: FieldPath;
  readonly value: FieldValue | undefined;
}

/** The name of a field in a form. */
export const inputName = (path: FieldPath): string => `f.${path.join('.')}`;
/** The name of the mark that takes a thing of a list out. */
export const removalName = (path: FieldPath): string => `remove.${path.join('.')}`;

const unified = (text: string): string => text.replace(/\r\n?/g, '\n');

const isMap = (value: FieldValue | undefined): value is { readonly [key: string]: FieldValue } =>
  value !== undefined && !isFieldScalar(value) && !isFieldList(value);

const listOf = (value: FieldValue | undefined): readonly FieldValue[] =>
  value === undefined || value === null ? [] : isFieldList(value) ? value : [value];

/** A value as the one text that a form shows; undefined for one that is none the field knows, and is left alone. */
export const shownText = ({ sort }: FormField, value: FieldValue | undefined): string | undefined => {
  if (value === undefined || value === null) return '';
  if (sort === 'list' || sort === 'colours' || sort === 'choices') {
    const all = listOf(value);
    return all.every((one) => isFieldScalar(one) && !String(one).includes('\n'))
      ? all.map((one) => String(one ?? '')).join('\n')
      : undefined;
  }
  if (sort === 'lines') {
    if (!isMap(value)) return undefined;
    const rows = Object.entries(value);
    return rows.every(([key, one]) => isFieldScalar(one) && !`${key}${one}`.includes('\n'))
      ? rows.map(([key, one]) => `${key}: ${one ?? ''}`).join('\n')
      : undefined;
  }
  return isFieldScalar(value) ? unified(String(value)) : undefined;
};

/** Where one thing stands for a list, or nothing stands at all, the things that a form shows. */
export const groupsIn = (value: FieldValue | undefined): readonly FieldValue[] => listOf(value);

/** Whether a field that may be a text or a group has its group on the form. */
export const showsGroup = (value: FieldValue | undefined): boolean => isMap(value);

/** A line as it is typed, "key: text": parted at the first colon before a blank, else at the first one. */
const keyAndText = (line: string): readonly [key: string, text: string] => {
  const spaced = line.search(/:\s/);
  if (spaced >= 0) return [line.slice(0, spaced).trimEnd(), line.slice(spaced + 1).trimStart()];
  const colon = line.indexOf(':');
  return colon > 0 ? [line.slice(0, colon), line.slice(colon + 1)] : [line, ''];
};

const valueOfLines = (typed: string): FieldValue | undefined => {
  const rows = typed
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean)
    .map(keyAndText);
  return rows.length === 0 ? undefined : Object.fromEntries(rows);
};

const valueOfList = (typed: string, before: FieldValue | undefined): FieldValue | undefined => {
  const all = typed
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);
  if (all.length === 0) return undefined;
  const [only] = all;
  const wasOne = before !== undefined && before !== null && isFieldScalar(before);
  return all.length === 1 && only !== undefined && (wasOne || only === 'none') ? only : all;
};

/** What was ticked, in the order in which it stood; what is new comes after. */
const valueOfTicks = (typed: string, before: FieldValue | undefined): FieldValue | undefined => {
  const ticked = typed.split('\n').filter(Boolean);
  const stood = listOf(before).map(String);
  const kept = stood.filter((one) => ticked.includes(one));
  return valueOfList([...kept, ...ticked.filter((one) => !stood.includes(one))].join('\n'), before);
};

/** What was typed as a value; undefined where nothing was. */
const typedValue = (
  field: FormField,
  typed: string,
  before: FieldValue | undefined,
): FieldValue | undefined => {
  const { sort, key } = field;
  if (sort === 'lines') return valueOfLines(typed);
  if (sort === 'choices') return valueOfTicks(typed, before);
  if (sort === 'list' || sort === 'colours') return valueOfList(typed, before);
  const text = typed.trimEnd();
  if (text === '') return undefined;
  if (sort === 'yes or no') return text === 'true' ? true : text === 'false' ? false : text;
  return holdsNumbers(key) && /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : text;
};

/** What was sent by its name; undefined for a field that was not on the form. */
export type Typed = (name: string) => string | undefined;

const here = (path: FieldPath, at: FieldPath): FieldPath => [...at, ...path.slice(at.length)];

function* changesIn(
  fields: readonly FormField[],
  at: FieldPath,
  values: FieldValue | undefined,
  typed: Typed,
): Generator<FormChange> {
  for (const field of fields) {
    const path = here(field.path, at);
    const value = valueAt(values, path);
    const asGroup = field.sort === 'group' || (field.sort === 'text or group' && showsGroup(value));
    if (asGroup) yield* groupChanges(field, path, value, values, typed);
    else if (field.sort === 'groups') yield* listChanges(field, path, value, values, typed);
    else {
      const sent = typed(inputName(path));
      const shown = shownText(field, value);
      if (sent === undefined || shown === undefined || unified(sent) === shown) continue;
      const after = typedValue(field, unified(sent), value);
      if (!isSameValue(after, value)) yield { path, value: after };
    }
  }
}

/** A group of which everything was taken out goes as a whole. */
function* groupChanges(
  { fields = [] }: FormField,
  path: FieldPath,
  value: FieldValue | undefined,
  values: FieldValue | undefined,
  typed: Typed,
): Generator<FormChange> {
  const changes = [...changesIn(fields, path, values, typed)];
  const isTakenOut = changes.length > 0 && changes.every((change) => change.value === undefined);
  const isAll =
    isMap(value) &&
    Object.keys(value).every((key) =>
      changes.some((change) => change.path.length === path.length + 1 && change.path.at(-1) === key),
    );
  if (isTakenOut && isAll) yield { path, value: undefined };
  else yield* changes;
}

/** The things of a list, those taken out last to first, so that the places of the others hold; then a new one. */
function* listChanges(
  { fields = [] }: FormField,
  path: FieldPath,
  value: FieldValue | undefined,
  values: FieldValue | undefined,
  typed: Typed,
): Generator<FormChange> {
  const things = listOf(value);
  const removed = things.flatMap((_, i) => (typed(removalName([...path, i])) === undefined ? [] : [i]));
  for (const i of things.keys())
    if (!removed.includes(i)) yield* changesIn(fields, [...path, i], values, typed);
  const added = [...changesIn(fields, [...path, things.length], values, typed)].filter(
    (change) => change.value !== undefined,
  );
  if (added.length > 0) {
    const key = path.length + 1;
    const thing = Object.fromEntries(
      added.map((change) => [String(change.path[key]), change.value as FieldValue]),
    );
    yield { path: [...path, things.length], value: thing };
  }
  if (removed.length > 0 && removed.length === things.length && added.length === 0)
    yield { path, value: undefined };
  else for (const i of [...removed].reverse()) yield { path: [...path, i], value: undefined };
}

/** What was typed into a form over these values, as changes of single keys, to be made in this order. */
export const formChanges = (
  fields: readonly FormField[],
  values: FieldValue | undefined,
  typed: Typed,
): readonly FormChange[] => [...changesIn(fields, [], values, typed)];
