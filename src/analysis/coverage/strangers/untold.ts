/** What an article tells of is no stranger to it, whatever its records say. */
import type { Location } from '../../../diagnostics/diagnostic.ts';
import { type Passage, whereIs } from '../text/passage.ts';
import type { Candidate } from './candidates.ts';

/** A thing that is named and not in the box. */
export interface Stranger extends Pick<Candidate, 'field' | 'phrase'> {
  readonly at: Location;
}

/** A title and a summary explain nothing of what they name themselves. */
const ASKED: ReadonlySet<string> = new Set<Candidate['field']>(['title', 'summary']);

/** The candidates whose last word stands nowhere else in the article. `passages` are its cycle's. */
export const untoldAmong = (
  candidates: readonly Candidate[],
  passages: readonly Passage[],
): readonly Candidate[] => {
  if (candidates.length === 0) return [];
  const told = new Set(
    passages
      .filter(({ field }) => field === undefined || !ASKED.has(field))
      .flatMap(({ words }) => words.map(({ key }) => key)),
  );
  return candidates.filter(({ keys }) => !told.has(keys.at(-1) ?? ''));
};

/** A candidate at its place in the record. */
export const strangerAt = ({ field, phrase, start }: Candidate, passages: readonly Passage[]): Stranger => {
  const text = passages.find((passage) => passage.field === field);
  const word = text?.words.find(({ end }) => end > start);
  if (!text || !word) throw new Error(`Expected \`${phrase}\` among the passages of the ${field}`);
  return { field, phrase, at: whereIs(text, word) };
};
