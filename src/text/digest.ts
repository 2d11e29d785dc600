/** A hash of plain data: two values of one digest are alike to whoever reads them. */
import { sha256 } from './hash.ts';

/** Digests of the values that many others hold, so that a cycle in forty documents' data is read once. */
const known = new WeakMap<object, string>();

/** What carries a digest of its own is known by it: a story by that of its text, and its tree is never walked. */
const ownDigest = (value: object): string | undefined =>
  'digest' in value && typeof value.digest === 'string' ? value.digest : undefined;

/** Values that say where they were written are records: many hold them, and they never change. Nor do frozen ones. */
const isShared = (value: object): boolean => 'source' in value || Object.isFrozen(value);

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

const writtenParts = (value: object): string => {
  if (Array.isArray(value)) return `[${value.map(written).join()}]`;
  if (value instanceof Map)
    return `map{${[...value].map(([key, one]) => `${written(key)}:${written(one)}`).join()}}`;
  if (value instanceof Set) return `set{${[...value].map(written).join()}}`;
  if (value instanceof Uint8Array) return `bytes:${sha256(value)}`;
  const parts: string[] = [];
  // An absent key and one whose value is undefined read alike.
  for (const [key, one] of Object.entries(value))
    if (one !== undefined) parts.push(`${JSON.stringify(key)}:${written(one)}`);
  return `{${parts.join()}}`;
};

/**
 * 32 hexadecimal digits that stand for plain data: strings, numbers, arrays, objects, maps, sets and bytes, in the order
 * they have. A value with a `digest` of its own is known by that alone. Throws for a function.
 */
export const digestOf = (...values: readonly unknown[]): string => sha256(written(values)).slice(0, 32);
