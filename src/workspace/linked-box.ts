/** The facts of box.md between runs. */
import type { BoxSettings } from '../model/box.ts';
import { digestOf } from '../text/digest.ts';
import { keepData, type Memory, recallData } from '../text/memory.ts';
import type { BoxFacts } from './box-facts.ts';
import { type Dependencies, furnish, type RecordShelf, withoutText } from './linked-cycle.ts';
import { isRemembered } from './record-reader.ts';

interface KnownFacts {
  readonly facts: BoxFacts & { readonly settings: BoxSettings };
  readonly dependencies: Dependencies;
}

const keyOf = (hash: string): string => digestOf('box facts', hash);

/** Remembers the facts of a box.md of this hash, where it is a record. */
export const keepFacts = (
  hash: string,
  facts: BoxFacts,
  dependencies: Dependencies,
  memory: Memory,
): void => {
  const { settings } = facts;
  if (settings)
    keepData(memory, keyOf(hash), { facts: { ...facts, settings: withoutText(settings) }, dependencies });
};

/** The facts as they were remembered; undefined where they were not. */
export const recallFacts = (hash: string, shelf: RecordShelf): KnownFacts | undefined => {
  if (!isRemembered({ path: 'box.md', hash }, shelf.memory)) return undefined;
  const known = recallData(shelf.memory, keyOf(hash)) as KnownFacts | undefined;
  if (!known) return undefined;
  furnish(known.facts.settings, undefined, shelf);
  return known;
};
