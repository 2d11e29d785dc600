/** Which known words a typed one was meant to be. */
import type { Form } from './compact.ts';
import type { Part } from './part.ts';
import { lettersLacking, lettersOf, slipsAllowed, slipsBetween } from './slips.ts';

export interface Guess extends Form {
  readonly slips: number;
  /** Only the word's beginning is like what was typed. */
  readonly beginning: boolean;
}

/** More are no help: the word was too short to say which was meant. */
const MOST_GUESSES = 6;

/** Fewer letters, one of them wrong, begin anything. */
const BEGINNING_FROM = 4;

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
  const has = lettersOf(typed);
  for (const { forms, letters } of parts)
    for (let i = 0; i < forms.length; i += 1) {
      const others = letters[i] as number;
      if (lettersLacking(has, others) > most) continue;
      const { word, stem } = forms[i] as Form;
      if (word.length < typed.length - most || guesses.has(word)) continue;
      const toWhole = word.length <= typed.length + most && lettersLacking(others, has) <= most;
      if (!toWhole && !unfinished) continue;
      // A word of another beginning is rarely meant: one of the first two letters has to be there.
      if (word[0] !== typed[0] && word[0] !== typed[1] && word[1] !== typed[0] && word[1] !== typed[1])
        continue;
      const { whole, beginning } = slipsBetween(typed, word, most);
      if (whole <= most) guesses.set(word, { word, stem, slips: whole, beginning: false });
      else if (unfinished && beginning <= 1 && typed.length > BEGINNING_FROM)
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
