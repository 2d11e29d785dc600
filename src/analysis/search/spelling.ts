/** Which known words a typed one was meant to be. */
import type { Form } from './compact.ts';
import type { Part } from './part.ts';
import { slipsAllowed, slipsBetween } from './slips.ts';

export interface Guess extends Form {
  readonly slips: number;
  /** Only the word's beginning is like what was typed. */
  readonly beginning: boolean;
}

/** More are no help: the word was too short to say which was meant. */
const MOST_GUESSES = 6;

/**
 * The nearest words of the parts, if any is within `most` slips. Whole words come before beginnings, which
 * are looked at where `unfinished` says that the word may be still typed.
 */
export const nearestForms = (
  parts: readonly Part[],
  typed: string,
  unfinished: boolean,
  most = slipsAllowed(typed.length),
): readonly Guess[] => {
  if (most === 0) return [];
  const guesses = new Map<string, Guess>();
  for (const { forms } of parts)
    for (const { word, stem } of forms) {
      if (word.length < typed.length - most || (!unfinished && word.length > typed.length + most)) continue;
      // A word of another beginning is rarely meant: one of the first two letters has to be there.
      if (word[0] !== typed[0] && word[0] !== typed[1] && word[1] !== typed[0] && word[1] !== typed[1])
        continue;
      const { whole, beginning } = slipsBetween(typed, word, most);
      if (whole <= most) guesses.set(word, { word, stem, slips: whole, beginning: false });
      else if (unfinished && beginning <= 1 && typed.length > 4)
        guesses.set(word, { word, stem, slips: beginning, beginning: true });
    }
  const ranked = [...guesses.values()].sort(
    (a, b) =>
      Number(a.beginning) - Number(b.beginning) ||
      a.slips - b.slips ||
      a.word.length - b.word.length ||
      (a.word < b.word ? -1 : 1),
  );
  const [best] = ranked;
  return ranked
    .filter(({ slips, beginning }) => slips === best?.slips && beginning === best.beginning)
    .slice(0, MOST_GUESSES);
};
