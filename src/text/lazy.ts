/** Values that are made when they are first read. */

/** A maker that makes its value at the first call, and gives the same one ever after. */
export const lazily = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
};

/** The same function, which keeps the answer for the object that it was last asked of: for what takes much memory and is asked for in turn. */
export const latest = <Of extends object, Answer>(find: (of: Of) => Answer): ((of: Of) => Answer) => {
  let last: { readonly of: Of; readonly answer: Answer } | undefined;
  return (of) => {
    if (last?.of !== of) last = { of, answer: find(of) };
    return last.answer;
  };
};

/**
 * A record that is known by its digest, the rest of which is asked of `whole` whenever it is read. How long that is held
 * is for `whole` to say.
 */
export const knownBy = <T extends object>(
  digest: string,
  whole: () => T,
): T & { readonly digest: string } => {
  const target = { digest } as T & { readonly digest: string };
  return new Proxy(target, {
    get: (_, key) => (key === 'digest' ? digest : Reflect.get(whole(), key)),
    has: (_, key) => key === 'digest' || Reflect.has(whole(), key),
    ownKeys: () => [...new Set([...Reflect.ownKeys(whole()), 'digest'])],
    getOwnPropertyDescriptor: (_, key) =>
      Reflect.getOwnPropertyDescriptor(key === 'digest' ? target : whole(), key),
  });
};
