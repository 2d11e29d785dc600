/** What stands at a place that is known to be there. */

/** The item at a place of a list, counted from 0. Throws where the list has none. */
export const itemAt = <T>(list: ArrayLike<T | undefined>, at: number): T => {
  const item = list[at];
  if (item === undefined) throw new Error(`Expected an item at ${at} of a list of ${list.length}`);
  return item;
};

/** The last item of a list. Throws where the list is empty. */
export const lastOf = <T>(list: ArrayLike<T | undefined>): T => itemAt(list, list.length - 1);
