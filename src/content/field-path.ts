/** The way to a field: in a record's values, and in the document that they were read from. */
import {
  type Document,
  isMap,
  isNode,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import { type FieldValue, isFieldList, isFieldScalar } from './write-yaml.ts';
import { holdsNumbers } from './yaml-fields.ts';

/** Keys of maps and places in lists, from 0: `['image', 0, 'alt']`. */
export type FieldPath = readonly (string | number)[];

/** Where a value stands: below a key of a map, in a list, or as the whole. */
export type Slot = {
  /** How many steps of the path lead to it. */
  readonly depth: number;
  readonly node: Node | undefined;
  /** Whether it is within braces or brackets. */
  readonly inFlow: boolean;
} & (
  | { readonly of: 'whole' }
  | { readonly of: 'map'; readonly map: YAMLMap; readonly at: number; readonly key: string }
  | { readonly of: 'list'; readonly list: YAMLSeq; readonly at: number }
);

/** One thing may stand where a list is meant: then its first place is itself. */
const isItself = (step: string | number, isList: boolean, isThere: boolean): boolean =>
  step === 0 && !isList && isThere;

const nodeOf = (value: unknown): Node | undefined => (isNode(value) ? value : undefined);

/** Every slot from the whole down to the last that is there, and the steps that lead on from it to nothing. */
export const slotsOn = (
  document: Document,
  path: FieldPath,
): { readonly slots: readonly Slot[]; readonly rest: FieldPath } => {
  let slot: Slot = { of: 'whole', depth: 0, node: nodeOf(document.contents), inFlow: false };
  const slots: Slot[] = [slot];
  for (const [i, step] of path.entries()) {
    const node: Node | undefined = slot.node;
    const isNull = !node || (isScalar(node) && node.value === null);
    if (isItself(step, isSeq(node), !isNull)) continue;
    const inFlow: boolean = slot.inFlow || ((isMap(node) || isSeq(node)) && node.flow === true);
    const depth = i + 1;
    if (isMap(node) && typeof step === 'string') {
      const at = node.items.findIndex(({ key }) => isScalar(key) && String(key.value) === step);
      const pair: Pair | undefined = node.items[at];
      if (!pair) return { slots, rest: path.slice(i) };
      slot = { of: 'map', map: node, at, key: step, depth, node: nodeOf(pair.value), inFlow };
    } else if (isSeq(node) && typeof step === 'number' && step < node.items.length)
      slot = { of: 'list', list: node, at: step, depth, node: nodeOf(node.items[step]), inFlow };
    else return { slots, rest: path.slice(i) };
    slots.push(slot);
  }
  return { slots, rest: [] };
};

/** What a value is once it was written and read: digits are a number only under a key that holds numbers. */
const asRead = (value: FieldValue, key: string | number | undefined): FieldValue => {
  if (typeof value === 'number') return holdsNumbers(String(key)) ? value : String(value);
  if (isFieldScalar(value)) return value;
  if (isFieldList(value)) return value.map((one) => asRead(one, undefined));
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, asRead(one, name)]));
};

const isThere = (value: FieldValue | undefined): value is Exclude<FieldValue, null> =>
  value !== undefined && value !== null;

const mapOf = (value: FieldValue | undefined): { readonly [key: string]: FieldValue } =>
  value === undefined || isFieldScalar(value) || isFieldList(value) ? {} : value;

const listOf = (value: FieldValue | undefined): readonly FieldValue[] => {
  if (!isThere(value)) return [];
  return isFieldList(value) ? value : [value];
};

const isList = (value: FieldValue | undefined): boolean => isThere(value) && isFieldList(value);

/** The value at a path. */
export const valueAt = (values: FieldValue | undefined, path: FieldPath): FieldValue | undefined => {
  const [step, ...rest] = path;
  if (step === undefined) return values;
  if (isItself(step, isList(values), isThere(values))) return valueAt(values, rest);
  return valueAt(typeof step === 'number' ? listOf(values)[step] : mapOf(values)[step], rest);
};

/**
 * Values with one replaced or added, or taken out where it is undefined. What is not there on the way is made. Throws
 * for a place beyond the end of a list.
 */
export const withValue = (
  values: FieldValue | undefined,
  path: FieldPath,
  value: FieldValue | undefined,
  key?: string | number,
): FieldValue | undefined => {
  const [step, ...rest] = path;
  if (step === undefined) return value === undefined ? undefined : asRead(value, key);
  if (isItself(step, isList(values), isThere(values))) return withValue(values, rest, value, key);
  if (typeof step === 'number') {
    const list = listOf(values);
    if (step > list.length) throw new Error(`Expected at most place ${list.length} in a list, found ${step}`);
    const inner = withValue(list[step], rest, value);
    return [...list.slice(0, step), ...(inner === undefined ? [] : [inner]), ...list.slice(step + 1)];
  }
  const map = mapOf(values);
  const inner = withValue(map[step], rest, value, step);
  const others = Object.entries(map).filter(([name]) => name !== step);
  return Object.fromEntries(inner === undefined ? others : [...others, [step, inner]]);
};

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether two values are the same, whatever the order of their keys. */
export const isSameValue = (a: unknown, b: unknown): boolean => {
  if (Array.isArray(a) && Array.isArray(b))
    return a.length === b.length && a.every((one, i) => isSameValue(one, b[i]));
  if (!isObject(a) || !isObject(b)) return a === b || Object.is(a, b);
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && isSameValue(a[key], b[key]))
  );
};
