/** Values that are made when they are first read. */

/** A maker that makes its value at the first call, and gives the same one ever after. */
export const lazily = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
};

/**
 * A record that is known by its digest and made when anything else of it is read. `make` gives what the digest stands
 * for.
 */
export const knownBy = <T extends object>(digest: string, make: () => T): T & { readonly digest: string } => {
  const whole = lazily((): T & { readonly digest: string } => ({ ...make(), digest }));
  const target = { digest } as T & { readonly digest: string };
  return new Proxy(target, {
    get: (_, key) => (key === 'digest' ? digest : Reflect.get(whole(), key)),
    has: (_, key) => key === 'digest' || Reflect.has(whole(), key),
    ownKeys: () => Reflect.ownKeys(whole()),
    getOwnPropertyDescriptor: (_, key) => Reflect.getOwnPropertyDescriptor(whole(), key),
  });
};
