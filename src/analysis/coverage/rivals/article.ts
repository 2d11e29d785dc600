/** One article as the comparisons between articles read it. */
import type { Passage } from '../text/passage.ts';

export interface Article {
  /** The cycle's id, `2026-03`: as a string it sorts by age. */
  readonly cycle: string;
  readonly title: string;
  readonly passages: readonly Passage[];
  /** Cycles whose articles its own text links to already. */
  readonly linksTo: readonly string[];
}

/** Running text: paragraphs on the page, without the summary, which is read in a list of results. */
export const isRunning = ({ form, words }: Passage): boolean =>
  form === 'paragraph' && words[0]?.zone !== 'summary';
