/** Which known words a typed one was meant to be. */
import { editDistance, editDistances, lacksMore, lettersOf } from '../../text/edit-distance.ts';
import type { PackedForm } from './compact.ts';
import type { WholeIndex } from './whole-index.ts';

/** A known word that a typed one may have meant. */
export interface Guess extends PackedForm {
  readonly slips: number;
  /** Only the word's beginning is like what was typed. */
  readonly beginning: boolean;
}

/** Fewest letters in which one slip is forgiven, and two: common practice, no source. */
const ONE_SLIP_FROM = 4;
const TWO_SLIPS_FROM = 8;

/** Slips that are forgiven in a word of so many letters. */
export const typosAllowed = (letters: number): number =>
  letters >= TWO_SLIPS_FROM ? 2 : letters >= ONE_SLIP_FROM ? 1 : 0;

/** More are no help: the word was too short to say which was meant. */
const MOST_GUESSES = 6;

/** Fewer letters, one of them wrong, begin anything. */
const BEGINNING_FROM = 4;

/**
 * The nearest words of the indexes, if any is within `most` slips. Whole words come before beginnings, which
 * are looked at where `unfinished` says that the word may be still typed.
 */
export const nearestForms = (
  indexes: readonly WholeIndex[],
  typed: string,
  unfinished: boolean,
  most = typosAllowed(typed.length),
): readonly Guess[] => {
  if (most === 0) return [];
  const guesses = new Map<string, Guess>();
  const has = lettersOf(typed);
  for (const { forms, letters } of indexes.flatMap(({ parts }) => parts))
    for (let i = 0; i < forms.length; i += 1) {
      const others = letters[i] as number;
      if (lacksMore(has, others, most)) continue;
      const { word, stem } = forms[i] as PackedForm;
      if (word.length < typed.length - most || guesses.has(word)) continue;
      // A word of another beginning is rarely meant: one of the first two letters has to be there.
      const first = word[0];
      if (first !== typed[0] && first !== typed[1] && word[1] !== typed[0]) continue;
      if (word.length <= typed.length + most && !lacksMore(others, has, most)) {
        const whole = editDistance(typed, word, most);
        if (whole <= most) {
          guesses.set(word, { word, stem, slips: whole, beginning: false });
          continue;
        }
      }
      if (!unfinished || typed.length <= BEGINNING_FROM || first !== typed[0]) continue;
      const { beginning } = editDistances(typed, word.slice(0, typed.length + 1), 1);
      if (beginning <= 1) guesses.set(word, { word, stem, slips: beginning, beginning: true });
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
