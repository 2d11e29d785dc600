/** Leaves out what is not there. */

/** Keys whose value may be undefined become keys that may be absent. */
export type Defined<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

/** Every key of T has to be written; undefined stands for a key that T allows to be absent. */
export type Complete<T> = {
  [K in keyof T]-?: object extends Pick<T, K> ? T[K] | undefined : Exclude<T[K], undefined>;
};

const isDefined = <T extends object>(facts: T): facts is T & Defined<T> =>
  Object.values(facts).every((value) => value !== undefined);

const isExact = <T extends object>(facts: T | Partial<Complete<T>>): facts is T =>
  Object.values(facts).every((value) => value !== undefined);

/** A copy without the keys whose value is undefined: an absent key stays absent. */
export const defined = <T extends object>(facts: T): Defined<T> => {
  const kept = { ...facts };
  for (const key in kept) if (kept[key] === undefined) delete kept[key];
  if (!isDefined(kept)) throw new Error('Expected every value that is left to be there');
  return kept;
};

/**
 * The same for a type that is named, `exact<Item>({…})`: all its keys have to be written, so one that is misspelt or
 * forgotten does not compile, though the type allows it to be absent.
 */
export const exact = <T extends object>(facts: Complete<T>): T => {
  const kept: Partial<Complete<T>> = { ...facts };
  for (const key in kept) if (kept[key] === undefined) delete kept[key];
  if (!isExact<T>(kept)) throw new Error('Expected every value that is left to be there');
  return kept;
};
