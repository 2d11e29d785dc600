/** What an article tells of, in a story or a record, is no stranger to it. */
import type { Location } from '../../../diagnostics/diagnostic.ts';
import type { Language } from '../../language/language.ts';
import { type Passage, whereIs } from '../text/passage.ts';
import type { Candidate } from './candidates.ts';

/** A thing that is named and not in the box. */
export interface Stranger extends Pick<Candidate, 'field' | 'phrase'> {
  readonly at: Location;
}

/** A title and a summary explain nothing of what they name themselves. */
const ASKED: ReadonlySet<string> = new Set<Candidate['field']>(['title', 'summary']);

/**
 * The candidates whose last word stands nowhere else in the article. `passages` are its cycle's, in which the records of
 * all items stand too; `besides` are texts that are no part of it.
 */
export const untoldAmong = (
  candidates: readonly Candidate[],
  passages: readonly Passage[],
  besides: readonly string[],
  language: Language,
): readonly Candidate[] => {
  const told = passages.filter(({ field }) => field === undefined || !ASKED.has(field));
  const words = [...told.flatMap((passage) => passage.words), ...besides.flatMap(language.words)];
  const keys = new Set(words.map(({ key }) => key));
  return candidates.filter((candidate) => !keys.has(candidate.keys.at(-1) ?? ''));
};

/** A candidate at its place in the record. */
export const strangerAt = ({ field, phrase, start }: Candidate, passages: readonly Passage[]): Stranger => {
  const text = passages.find((passage) => passage.field === field);
  const word = text?.words.find(({ end }) => end > start);
  if (!text || !word) throw new Error(`Expected \`${phrase}\` among the passages of the ${field}`);
  return { field, phrase, at: whereIs(text, word) };
};
