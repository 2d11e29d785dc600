/** What people typed beside all that was packed, found anew only where either changed. */
import type { AskedFor } from '../analysis/coverage/phrases/asked-for.ts';
import type { Language } from '../analysis/language/language.ts';
import type { Box } from '../model/box.ts';
import { digestOf } from '../text/digest.ts';
import { type Memory, recalled } from '../text/memory.ts';

/** Absent where nobody knows what was typed. */
export const askedForIn = async (
  { searches, cycles }: Box,
  language: Language,
  program: string,
  memory: Memory,
): Promise<AskedFor | undefined> => {
  if (searches.length === 0) return undefined;
  const items = cycles.flatMap((cycle) => cycle.items);
  const named = items.map(({ name, kind, also, brand, material, color }) => [
    ...[name, kind, also, brand, material, color],
  ]);
  const typed = searches.map(({ phrase, count }) => [phrase, count]);
  return recalled(memory, digestOf('asked for', program, language.tag, typed, named), async () => {
    const { askedForOf } = await import('../analysis/coverage/phrases/asked-for.ts');
    return askedForOf(searches, items, language);
  });
};
