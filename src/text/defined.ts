/** Leaves out what is not there. */

/** Keys whose value may be undefined become keys that may be absent. */
export type Defined<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

const isDefined = <T extends object>(facts: T): facts is T & Defined<T> =>
  Object.values(facts).every((value) => value !== undefined);

/** A copy without the keys whose value is undefined: an absent key stays absent. */
export const defined = <T extends object>(facts: T): Defined<T> => {
  const kept = { ...facts };
  for (const key in kept) if (kept[key] === undefined) delete kept[key];
  if (!isDefined(kept)) throw new Error('Expected every value that is left to be there');
  return kept;
};
