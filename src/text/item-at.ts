/** What stands at a place that is known to be there. */

/** The item at a place of a list, counted from 0. Throws where the list has none. */
export const itemAt = <T>(list: ArrayLike<T>, at: number): T => {
  const item = list[at];
  if (item === undefined) throw new Error(`Expected an item at ${at} of a list of ${list.length}`);
  return item;
};
