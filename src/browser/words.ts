/** What the search says. */
import type { Answer } from '../analysis/search/find.ts';

const pieces = (count: number): string => (count === 1 ? '1 piece' : `${count} pieces`);

/** Words that were taken for others, as "secaturs" for "secateurs". */
export const readAs = (answer: Answer | undefined): string =>
  (answer?.asked ?? [])
    .filter(({ guesses }) => guesses.length > 0)
    .map(({ text, guesses }) => `“${text}” read as ${guesses.map(({ word }) => `“${word}”`).join(' or ')}`)
    .join('; ');

/** "3 of 60 pieces. “secaturs” read as “secateurs”." */
export const statusText = (found: number, of: number, answer: Answer | undefined): string => {
  if (found === 0) return `Nothing found among ${pieces(of)}.`;
  const read = readAs(answer);
  return `${found} of ${pieces(of)}.${read === '' ? '' : ` ${read}.`}`;
};
