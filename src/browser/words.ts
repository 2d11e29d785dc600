/** What the search says. */
import type { Answer } from '../analysis/search/find.ts';

const pieces = (count: number): string => (count === 1 ? '1 piece' : `${count} pieces`);

/** Words that were taken for others, as "secaturs" for "secateurs". */
export const readAs = (answer: Answer | undefined): string =>
  (answer?.asked ?? [])
    .filter(({ guesses }) => guesses.length > 0)
    .map(({ text, guesses }) => `“${text}” read as ${guesses.map(({ word }) => `“${word}”`).join(' or ')}`)
    .join('; ');

/**
 * "2 of 60 pieces, and 9 with some of the words. “secaturs” read as “secateurs”." `all`: how many of the found
 * have every word.
 */
export const statusText = (found: number, all: number, of: number, answer: Answer | undefined): string => {
  if (found === 0) return `Nothing found among ${pieces(of)}.`;
  const read = readAs(answer);
  const partly =
    all === 0 && (answer?.asked.length ?? 0) > 1
      ? `${found} of ${pieces(of)} with some of the words, none with all`
      : `${all} of ${pieces(of)}${found > all ? `, and ${found - all} with some of the words` : ''}`;
  return `${partly}.${read === '' ? '' : ` ${read}.`}`;
};
