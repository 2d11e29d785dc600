/** What a document's data amounts to, as text, so that two can be compared: every value, maps and sets included. */
export const dataKey = (data: unknown): string =>
  JSON.stringify(data, (_, value: unknown) => {
    if (value instanceof Map) return { map: [...value] };
    if (value instanceof Set) return { set: [...value] };
    return value === undefined ? { nothing: true } : value;
  });
