/** Other names that a dictionary has for a kind: offered to the owner, scored by nobody. */
import type { Item } from '../../model/box.ts';
import type { Language } from '../language/language.ts';

/** By kind. */
export const otherNames = async (
  _items: readonly Item[],
  _language: Language,
): Promise<ReadonlyMap<string, readonly string[]>> => new Map();
