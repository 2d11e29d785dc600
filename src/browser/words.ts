/** What the search says of an answer as a whole. */
import type { Answer } from '../analysis/search/find.ts';
import { said as words } from './said.ts';

/** How many were found, and how words were read. `all`: how many of the found have every word. */
export const statusText = (found: number, all: number, of: number, answer: Answer | undefined): string => {
  if (found === 0) return words.nothing(of);
  const asked = answer?.asked ?? [];
  const read = asked.filter(({ guesses }) => guesses.length > 0);
  return words.found(
    found,
    all,
    of,
    asked.length,
    read.map(({ text, guesses }) => ({ typed: text, as: guesses.map(({ word }) => word) })),
  );
};
