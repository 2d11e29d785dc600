/** Does `work` for every entry, at most `limit` of them at once; results in the order of the entries. */
export const mapConcurrently = async <T, R>(
  limit: number,
  entries: readonly T[],
  work: (entry: T) => Promise<R>,
): Promise<R[]> => {
  const results: R[] = new Array(entries.length);
  let next = 0;
  const hand = async (): Promise<void> => {
    while (next < entries.length) {
      const mine = next++;
      results[mine] = await work(entries[mine] as T);
    }
  };
  await Promise.all(Array.from({ length: Math.min(limit, entries.length) }, hand));
  return results;
};
