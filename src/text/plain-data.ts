/** Data that can be written down and read again. */

/** Whether a value comes back from JSON as it was: nothing undefined, no number without end, no map, set or date. */
export const survivesJson = (value: unknown): boolean => {
  switch (typeof value) {
    case 'string':
    case 'boolean':
      return true;
    case 'number':
      return Number.isFinite(value) && !Object.is(value, -0);
    case 'object': {
      if (value === null) return true;
      if (Array.isArray(value)) return value.every(survivesJson);
      if (Object.getPrototypeOf(value) !== Object.prototype) return false;
      return (
        !('__proto__' in value && Object.hasOwn(value, '__proto__')) &&
        Object.values(value).every(survivesJson)
      );
    }
    default:
      return false;
  }
};
