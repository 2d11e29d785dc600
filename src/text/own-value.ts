/**
 * What an object has under a name that an author chose. Undefined where it has nothing of its own there: every object
 * knows `constructor` and `toString`, and neither is a word of anybody's.
 */
export const ownValue = <T>(object: Readonly<Record<string, T>> | undefined, name: string): T | undefined =>
  object !== undefined && Object.hasOwn(object, name) ? object[name] : undefined;
