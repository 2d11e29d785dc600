/** A hash of plain data: two values of one digest are alike to whoever reads them. */
import { sha256 } from './hash.ts';

/** Digests of the values that many others hold, so that a cycle in forty documents' data is read once. */
const known = new WeakMap<object, string>();

/** What carries a digest of its own is known by it: a story by that of its text, and its tree is never walked. */
const ownDigest = (value: object): string | undefined => {
  const { digest } = value as { readonly digest?: unknown };
  return typeof digest === 'string' ? digest : undefined;
};

/** Values that say where they were written are records: many hold them, and they never change. Nor do frozen ones. */
const isShared = (value: object): boolean => 'source' in value || Object.isFrozen(value);

/** Names of keys as they are written; there are as many as the program has. */
const names = new Map<string, string>();

const nameOf = (key: string): string => {
  const known = names.get(key);
  if (known !== undefined) return known;
  const name = `${JSON.stringify(key)}:`;
  // Keys that an author chose (a record by its slug) are without end.
  if (names.size < MOST_NAMES) names.set(key, name);
  return name;
};

const MOST_NAMES = 2000;

const written = (value: unknown): string => {
  switch (typeof value) {
    case 'string':
      return JSON.stringify(value);
    case 'number':
    case 'boolean':
    case 'undefined':
      return String(value);
    case 'object':
      return value === null ? 'null' : writtenObject(value);
    default:
      throw new Error(`Expected plain data to hash, found a ${typeof value}`);
  }
};

const writtenObject = (value: object): string => {
  const own = ownDigest(value);
  if (own !== undefined) return `#${own}`;
  if (isShared(value)) {
    const before = known.get(value);
    if (before !== undefined) return before;
    const digest = `#${sha256(writtenParts(value)).slice(0, 32)}`;
    known.set(value, digest);
    return digest;
  }
  return writtenParts(value);
};

/** A list of parts and one more. Put together so, because lists that are joined take twice the time, and a build writes megabytes. */
const and = (text: string, part: string): string => (text === '' ? part : `${text},${part}`);

const writtenParts = (value: object): string => {
  let text = '';
  if (Array.isArray(value)) {
    for (const one of value) text = and(text, written(one));
    return `[${text}]`;
  }
  if (value instanceof Map) {
    for (const [key, one] of value) text = and(text, `${written(key)}:${written(one)}`);
    return `map{${text}}`;
  }
  if (value instanceof Set) {
    for (const one of value) text = and(text, written(one));
    return `set{${text}}`;
  }
  if (value instanceof Uint8Array) return `bytes:${sha256(value)}`;
  for (const key of Object.keys(value)) {
    const one: unknown = Reflect.get(value, key);
    // An absent key and one whose value is undefined read alike.
    if (one !== undefined) text = and(text, nameOf(key) + written(one));
  }
  return `{${text}}`;
};

/**
 * 32 hexadecimal digits that stand for plain data: strings, numbers, arrays, objects, maps, sets and bytes, in the order
 * they have. A value with a `digest` of its own is known by that alone. Throws for a function.
 */
export const digestOf = (...values: readonly unknown[]): string => sha256(written(values)).slice(0, 32);
