/** One making for several documents of the same data. */

/**
 * A function that gives again what it gave for the very same data and tools. What it gave is let go with the data; since
 * neither ever changes, nobody can tell but by the time it takes.
 */
export const madeOnce = <Data extends object, Tools extends object, Made>(
  make: (data: Data, tools: Tools) => Made,
): ((data: Data, tools: Tools) => Made) => {
  const known = new WeakMap<Data, WeakMap<Tools, { readonly made: Made }>>();
  return (data, tools) => {
    const byTools = known.get(data) ?? new WeakMap<Tools, { readonly made: Made }>();
    const found = byTools.get(tools) ?? { made: make(data, tools) };
    known.set(data, byTools.set(tools, found));
    return found.made;
  };
};
